/** What a part comes tight between. */
import { type Length, less, subtract } from "../../units/index.ts";
import { absolute, equal } from "../../units/rational.ts";
import { indexOf } from "../design/space.ts";
import type { Between, Box, Part } from "../design.ts";
import { boxOfPiece, lieBeside, NEAR } from "./steps/bounding.ts";

/** The sizes that are cut at a bench. */
export const SIZES = ["length", "width"] as const;

/** Which parts of a body meet both ends of a part in a direction, where it is let into neither. */
export function tightIn(part: Part, size: Between["size"], body: readonly Part[]): Between | null {
  const axis = indexOf(part.axes[size]);
  const [low, high] = ([false, true] as const).map((isHigh) => {
    const [side, other] = isHigh ? (["high", "low"] as const) : (["low", "high"] as const);
    const at = part.blank[side][axis];
    if (!equal(at, part.body[side][axis])) return undefined;
    const ends = boxesOf(part).filter((box) => isNear(box[side][axis], at));
    const meets = (face: Box): boolean =>
      isNear(face[other][axis], at) && ends.some((end) => lieBeside(end, face, axis));
    return body.find((each) => boxesOf(each).some(meets));
  });
  return low && high && low !== high ? { size, parts: [low.id, high.id] } : null;
}

const boxesOf = ({ solid }: Part): readonly Box[] => solid.pieces.map(boxOfPiece);

export const isNear = (a: Length, b: Length): boolean => !less(NEAR, absolute(subtract(a, b)));
