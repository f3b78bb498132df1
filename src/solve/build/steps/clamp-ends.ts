/** On what a clamp presses at its two ends: how far behind the outside of the whole that lies, and what keeps off it what must not be pressed. */
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, less, max, rational, subtract, toNumber, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { type AxisIndex, enclosing, faceOf, otherAxes, triple } from "../../design/space.ts";
import type { Box, Face, Part } from "../../design.ts";
import type { Work } from "./draft.ts";
import type { Move } from "./moves.ts";
import { type Slope, slopeAt } from "./slopes.ts";

export interface ClampEnd {
  readonly part: string;
  /** Of the finished piece. */
  readonly side: Face;
  /** Behind what stands out farthest. */
  readonly back: Length;
  /** How long a tenon is that stands there for something that comes later; null where there is none. */
  readonly tenon: Length | null;
  /** How thick a block is that brings the clamp past it. */
  readonly block: Length;
  /** How the wood slopes there; null where it lies square to the clamp. */
  readonly slope: Slope | null;
}

/** No block is thicker; a block stands so far past what it is put for. Common practice, no source. */
const FAR = inches(4);
const PAST = { inch: inches(1, 8), mm: millimetres(5) } as const;

/** A wedge on what slopes, where it is thinnest, and what it is thicker in the middle. Common practice, no source. */
const WEDGE = inches(1, 2);

/** The clamp is as short as that it ends on the part itself. */
export const endsOnIt = ({ back, tenon, slope }: ClampEnd): boolean =>
  tenon === null && (slope !== null || less(FAR, back));

/** What is together after some moves, from side to side; null where that is nothing. */
export function wholeOf(work: Work, moves: readonly Move[]): Box | null {
  const [first, ...more] = partsOf(work, moves).map(boxOf);
  return first ? more.reduce(enclosing, first) : null;
}

/** All that is together after some moves. */
export const partsOf = (work: Work, moves: readonly Move[]): readonly Part[] =>
  [...new Set(moves.flatMap(({ present, arriving }) => [...present, ...arriving]))].map(work.part);

/** What a part takes up in the room. */
export const boxOf = ({ body, turned, solid: { low, high } }: Part): Box =>
  turned
    ? { low: triple((i) => rational(Math.round(low[i]))), high: triple((i) => rational(Math.round(high[i]))) }
    : body;

/** The two ends of a clamp that presses along an axis at a place across it; none where no part is there. */
export function clampEnds(
  work: Work,
  moves: readonly Move[],
  axis: AxisIndex,
  at: readonly Length[],
): readonly ClampEnd[] {
  const whole = wholeOf(work, moves);
  if (!whole) return [];
  const parts = partsOf(work, moves);
  const ids = new Set(parts.map(({ id }) => id));
  return [false, true].flatMap((high): readonly ClampEnd[] => {
    const met = parts.flatMap((part) => {
      const face = meets(part, axis, high, at);
      if (!face) return [];
      const back = high ? subtract(whole.high[axis], face.at) : subtract(face.at, whole.low[axis]);
      return [{ part, back, slope: face.slope }];
    });
    const [outer] = met.toSorted((a, b) => compare(a.back, b.back));
    if (!outer) return [];
    const { part, back, slope } = outer;
    const tenon = bareTenon(work, part, axis, high, ids);
    const block = roundTo(add(max(back, tenon ?? ZERO), PAST[work.design.units]), PAST[work.design.units], "up");
    return [{ part: part.id, side: faceOf(axis, high), back, tenon, block, slope }];
  });
}

/** How far a part reaches along an axis at a place across it, and how it slopes there; null where it is not there. */
function meets(part: Part, axis: AxisIndex, high: boolean, at: readonly Length[]) {
  const { body, turned, features } = part;
  const sloping = turned || features.some(({ kind }) => kind === "angled end" || kind === "taper");
  const face = sloping ? slopeAt(part.solid, axis, high, at.map(toNumber)) : null;
  if (turned || face?.slope) return face;
  const others = otherAxes(axis);
  const there = others.every((i, k) => !less(at[k] as Length, body.low[i]) && !less(body.high[i], at[k] as Length));
  return there ? { at: (high ? body.high : body.low)[axis], slope: null } : null;
}

/** A tenon whose mate is not among these parts. */
function bareTenon(
  { design }: Work,
  { features }: Part,
  axis: AxisIndex,
  high: boolean,
  ids: ReadonlySet<string>,
): Length | null {
  const long = features.flatMap((each) => {
    if (each.kind !== "tenon" || (high ? each.into[axis] < 0.99 : each.into[axis] > -0.99)) return [];
    const joint = design.joints.find(({ id }) => id === each.for);
    return joint?.parts.every((id) => ids.has(id)) ? [] : [each.size[2]];
  });
  return long.length === 0 ? null : long.reduce(max);
}

/** How far the jaws of a clamp stand past the whole, both together: less than nothing where they end behind it. */
export const pastTheWhole = (ends: readonly ClampEnd[]): Length =>
  ends
    .map((end) =>
      endsOnIt(end)
        ? subtract(end.slope ? WEDGE : ZERO, end.back)
        : end.tenon === null
          ? ZERO
          : subtract(end.block, end.back),
    )
    .reduce(add, ZERO);
