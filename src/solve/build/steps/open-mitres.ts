/** Mitres whose other part is not there yet: their points are thin, and nothing may bear on them. */
import { less } from "../../../units/rational.ts";
import { type AxisIndex, faceOf, indexOf, middle } from "../../design/space.ts";
import type { Direction, Face, Part } from "../../design.ts";
import { listed, type Work } from "./draft.ts";
import { isMitre, type Move, togetherAfter } from "./moves.ts";
import { groupedBy } from "./wishes/own-key.ts";

/** The ends of a part, by the side of the piece that they look to, at which an open mitre is while only some parts are there. */
export function openMitres(work: Work, id: string, present: readonly string[]): readonly Face[] {
  const part = work.part(id);
  const along = indexOf(part.axes.length);
  const mates = work.design.joints.flatMap((joint) =>
    isMitre(joint) && joint.parts.includes(id)
      ? joint.parts.filter((other) => other !== id && !present.includes(other))
      : [],
  );
  return [...new Set(mates.map((other) => faceOf(along, isHigher(work.part(other), part, along))))];
}

const isHigher = ({ body: one }: Part, { body: other }: Part, axis: AxisIndex): boolean =>
  less(middle(other, axis), middle(one, axis));

/** Whether a part ends below, as the work lies, in an open mitre. */
export function hasMitreBelow(work: Work, id: string, present: readonly string[], up: Direction): boolean {
  const along = indexOf(work.part(id).axes.length);
  return up[along] !== 0 && openMitres(work, id, present).includes(faceOf(along, up[along] < 0));
}

/** A mitre is clamped along both its parts: what is put under the jaw at the other end of one that is open there. Common practice, no source. */
export function mitreBlocks(work: Work, moves: readonly Move[]): readonly string[] {
  const all = togetherAfter(moves);
  const closed = moves.flatMap(({ work: own }) => own.filter(({ joint }) => isMitre(joint) && joint.glue));
  const ids = [...new Set(closed.flatMap(({ joint }) => joint.parts))];
  const ends = ids.flatMap((id) => openMitres(work, id, all).map((side) => ({ id, side })));
  return groupedBy(ends, ({ side }) => side).map((group) => {
    const side = group[0]?.side ?? "top";
    const several = group.length > 1;
    return `At the ${side} ${listed(
      work,
      group.map(({ id }) => id),
    )} ${several ? "end in open mitres, and a jaw would crush their points" : "ends in an open mitre, and a jaw would crush its point"}: saw ${several ? "blocks" : "a block"} of scrap to the same slope, hold ${several ? "them" : "it"} on the ${several ? "mitres" : "mitre"} with tape, and press there.`;
  });
}
