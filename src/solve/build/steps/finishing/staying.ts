/** Halves of slides that stay where they were set while the piece is finished: what carries them stays bare there. */
import { less } from "../../../../units/rational.ts";
import { faceOf, INDICES } from "../../../design/space.ts";
import type { Face, Hardware, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";

/** What a screw in a slot holds is not found again once it is out. */
export function staysOn(work: Work, { joint: id }: Hardware): boolean {
  const joint = work.design.joints.find((each) => each.id === id);
  if (joint?.method !== "slides" || work.finishing.length === 0) return false;
  const [side, wall] = joint.parts.map(work.part) as [Part, Part];
  return isBare(work, side, facing(side, wall)) && isBare(work, wall, facing(wall, side));
}

/** The face of a part that looks at another beside it; null where none does. */
function facing(part: Part, other: Part): Face | null {
  const axis = INDICES.find(
    (i) => !less(other.body.low[i], part.body.high[i]) || !less(part.body.low[i], other.body.high[i]),
  );
  return axis === undefined ? null : faceOf(axis, !less(other.body.low[axis], part.body.high[axis]));
}

const isBare = (work: Work, { id }: Part, face: Face | null): boolean =>
  work.finishing.every(
    ({ parts, bareFaces = [] }) =>
      !parts.includes(id) ||
      bareFaces.some(
        ({ part, sides }) => part === id && (sides.length === 0 || (face !== null && sides.includes(face))),
      ),
  );
