/** What a part comes tight between. */
import { compare, type Length, less, max, min, subtract } from "../../units/index.ts";
import { absolute, equal } from "../../units/rational.ts";
import { type AxisIndex, indexOf } from "../design/space.ts";
import type { Between, Box, Pair, Part } from "../design.ts";
import { boxOfPiece, lieBeside, NEAR } from "./steps/bounding.ts";

/** The sizes that are cut at a bench. */
export const SIZES = ["length", "width"] as const;

/** Which parts of a body meet both ends of a part in a direction: those across from each other, from its low side on. `letIn`: it may lie in them, as a back does in rabbets. */
export function tightIn(part: Part, size: Between["size"], body: readonly Part[], letIn = false): Between | null {
  const axis = indexOf(part.axes[size]);
  const [lows = [], highs = []] = ([false, true] as const).map((isHigh) => {
    const [side, other] = isHigh ? (["high", "low"] as const) : (["low", "high"] as const);
    const at = part.blank[side][axis];
    if (!letIn && !equal(at, part.body[side][axis])) return [];
    const ends = boxesOf(part).filter((box) => isNear(box[side][axis], at));
    const meets = (face: Box): boolean =>
      isNear(face[other][axis], at) && ends.some((end) => lieBeside(end, face, axis));
    return body.filter((each) => boxesOf(each).some(meets));
  });
  const across = indexOf(part.axes[size === "length" ? "width" : "length"]);
  const [first, ...also] = acrossEachOther(part, across, lows, highs);
  const isLetIn =
    !equal(part.blank.low[axis], part.body.low[axis]) || !equal(part.blank.high[axis], part.body.high[axis]);
  return first ? { size, parts: first, ...(also.length > 0 && { also }), ...(isLetIn && { letIn: true }) } : null;
}

/** Pairs that share a stretch of the part, in order along it; one that reaches over all of it alone. */
function acrossEachOther(
  { body }: Part,
  axis: AxisIndex,
  lows: readonly Part[],
  highs: readonly Part[],
): readonly Pair[] {
  const pairs = lows.flatMap((low) => highs.flatMap((high) => (low === high ? [] : [[low, high] as const])));
  const stretches = pairs.map(([low, high]) => ({
    ids: [low.id, high.id] as const,
    from: [body, low.body, high.body].map((box) => box.low[axis]).reduce(max),
    to: [body, low.body, high.body].map((box) => box.high[axis]).reduce(min),
  }));
  const shared = stretches.filter(({ from, to }) => less(from, to)).toSorted((a, b) => compare(a.from, b.from));
  const whole = shared.find(({ from, to }) => isNear(from, body.low[axis]) && isNear(to, body.high[axis]));
  return (whole ? [whole] : shared.length > 0 ? shared : stretches.slice(0, 1)).map(({ ids }) => ids);
}

const boxesOf = ({ solid }: Part): readonly Box[] => solid.pieces.map(boxOfPiece);

export const isNear = (a: Length, b: Length): boolean => !less(NEAR, absolute(subtract(a, b)));
