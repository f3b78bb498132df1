/** The gaps round what is set into an opening. */
import type { Length } from "../../../../units/length.ts";
import { min, subtract } from "../../../../units/rational.ts";
import { partsAt } from "../../../design/making/neighbours.ts";
import { facePosition } from "../../../design/space.ts";
import type { Face } from "../../../design.ts";
import type { Work } from "../draft.ts";

/** Null where nothing is near. */
export interface Gaps {
  readonly below: Length | null;
  readonly beside: Length | null;
}

/** Of a front as it stands in the piece: to what is next below it, and the smaller of those to its left and right. */
export function gapsOf(work: Work, id: string): Gaps {
  const part = work.part(id);
  const at = (face: Face, from: Face): Length | null => {
    const here = facePosition(part.body, face);
    const gaps = partsAt(face, part, work.design.parts).map(({ body }) => {
      const there = facePosition(body, from);
      return face === "bottom" || face === "left" || face === "front" ? subtract(here, there) : subtract(there, here);
    });
    const open = gaps.filter(({ n }) => n > 0n);
    return open.length > 0 ? open.reduce(min) : null;
  };
  const [left, right] = [at("left", "right"), at("right", "left")];
  const beside = left && right ? min(left, right) : (left ?? right);
  return { below: at("bottom", "top"), beside };
}
