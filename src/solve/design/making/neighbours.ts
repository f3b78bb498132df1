/** What bounds a part: the parts that its faces meet, or nearly. */
import type { Face } from "../../../parse/draft.ts";
import { inches } from "../../../units/length.ts";
import { add, less, subtract } from "../../../units/rational.ts";
import type { Part } from "../../design.ts";
import { faceAxis, facePosition, INDICES, isHigh } from "../space.ts";

/** Two parts with no more than this between them are fitted to each other. Common practice, no source. */
export const FIT = inches(1, 4);

/** The parts at a face of a part's body, touching or with no more than a fit between. In the order given. */
export function partsAt(face: Face, part: Part, all: readonly Part[]): readonly Part[] {
  const axis = faceAxis(face);
  const at = facePosition(part.body, face);
  return all.filter((other) => {
    if (other.id === part.id) return false;
    const beside = INDICES.every(
      (i) => i === axis || (less(part.body.low[i], other.body.high[i]) && less(other.body.low[i], part.body.high[i])),
    );
    if (!beside) return false;
    const near = isHigh(face) ? other.body.low[axis] : other.body.high[axis];
    return isHigh(face)
      ? !less(near, at) && !less(add(at, FIT), near)
      : !less(at, near) && !less(near, subtract(at, FIT));
  });
}
