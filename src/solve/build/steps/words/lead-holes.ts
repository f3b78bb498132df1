/** Holes that keep wood from splitting: how they are bored is told once, and what changes each time. */
import type { Length } from "../../../../units/length.ts";
import type { Fastener } from "../../../design.ts";
import { leadHole } from "../../drilling/lead-holes.ts";
import type { StepDraft, Work } from "../draft.ts";
import { type Facts, reworded, type Sentence, sentence, tells, wordsOf } from "../sentence.ts";
import { groupedBy } from "../wishes/own-key.ts";

type Lead = NonNullable<Facts["lead"]>;

/** `known`: why, and that it is tried, was told before; `on`: how one goes on where the bit is too short. */
function wordsFor({ kind, size }: Lead, known: boolean, on: string): string {
  const [why, tried] = known ? ["", ""] : [", or the wood splits", "; try it in an offcut"];
  return `For each ${kind} bore a lead hole first, ${size}${why}${on}${tried}.`;
}

/** One as thick as what is driven would leave it no hold. */
const further = ({ kind, whole, short }: Lead): string =>
  short ? `, and go on to ${whole} with a thinner ${kind} in the chuck, its head nipped off: the bit is too short` : "";

/** "For each nail bore a lead hole first, 5/64 in across and 1 3/4 in deep, or the wood splits; try it in an offcut." */
export function leadText(work: Work, list: readonly Fastener[]): readonly Sentence[] {
  const hole = leadHole(work, list);
  if (!hole) return [];
  const { kind } = list[0] as Fastener;
  const size = `${work.drill(hole.diameter)} across and ${work.print(hole.depth)} deep`;
  const lead = { kind, size, whole: work.print(hole.whole), short: hole.short };
  return [sentence(wordsFor(lead, false, further(lead)), { lead, drives: "holes" })];
}

/** The bits for them. */
export const leadBits = (work: Work): readonly Length[] =>
  groupedBy(work.plan.fasteners, ({ item }) => item).flatMap((list) => leadHole(work, list)?.diameter ?? []);

/** Steps in the order of work, as they are numbered: what the first one tells of a lead hole, and how one goes on with a nail, later ones refer to. */
export function leadsToldOnce(drafts: readonly StepDraft[]): readonly StepDraft[] {
  const told = new Set<string>();
  let nipped: number | null = null;
  return drafts.map((draft, i) => ({
    ...draft,
    text: draft.text.map((text) => {
      const lead = tells(text, "lead");
      if (lead === null) return text;
      const known = told.has(wordsOf(text));
      told.add(wordsOf(text));
      if (!lead.short) return known ? reworded(text, () => wordsFor(lead, known, "")) : text;
      nipped ??= i;
      if (nipped === i && !known) return text;
      const where = nipped === i ? "" : ` as in step ${nipped + 1}`;
      return reworded(text, () =>
        wordsFor(lead, known, `, and go on to ${lead.whole} with a thinner ${lead.kind} in the chuck${where}`),
      );
    }),
  }));
}
