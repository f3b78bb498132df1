/** A row of dowels that goes into several parts at once: those were marked one by one, and are glued to each other before it comes. */
import { markedFrom } from "./dowelled.ts";
import { called, type Work } from "./draft.ts";
import { type Move, togetherAfter } from "./moves.ts";
import { groupedBy } from "./wishes/own-key.ts";

/** What is tried in a body while that is dry, in the step in which the last of the parts that its row goes into comes. */
export function rowsTried(work: Work, moves: readonly Move[]): readonly string[] {
  const [first] = moves;
  if (!first || !moves.some((move) => move.work.some(({ joint }) => joint.glue))) return [];
  const fresh = new Set([...(first.starts ? first.present : []), ...moves.flatMap(({ arriving }) => arriving)]);
  const body = new Set(togetherAfter(moves));
  const own = markedFrom(work).filter(({ measured, met }) => body.has(met) && !body.has(measured));
  return groupedBy(own, ({ measured }) => measured).flatMap((row) => {
    const met = [...new Set(row.map((each) => each.met))];
    const measured = row[0]?.measured ?? "";
    if (met.length < 2 || !met.some((id) => fresh.has(id))) return [];
    return [
      `While it is dry, and before it is laid down for its glue, turn the holes for the ${called(work, measured)} uppermost, put its dowels into them, sanded thin so that they come out again, and try it too: its row goes into ${met.length === 2 ? "two" : "several"} of these parts at once. Shift the parts until it goes home; where one hole is off, plug it with a glued dowel and bore it anew.`,
    ];
  });
}
