/** Holes that keep wood from splitting: how they are bored is told once, and what changes each time. */
import type { Length } from "../../../../units/length.ts";
import type { Fastener } from "../../../design.ts";
import { leadHole } from "../../drilling/lead-holes.ts";
import type { StepDraft, Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";

const WHY = ", or the wood splits";
const TRIED = "; try it in an offcut";
const further = (kind: string): string =>
  `, and go on as far with a ${kind} in the chuck, its head nipped off: the bit is too short`;

/** "For each nail bore a lead hole first, 5/64 in across and 1 3/4 in deep, or the wood splits; try it in an offcut." */
export function leadText(work: Work, list: readonly Fastener[]): readonly string[] {
  const hole = leadHole(work, list);
  if (!hole) return [];
  const { kind } = list[0] as Fastener;
  return [
    `For each ${kind} bore a lead hole first, ${work.drill(hole.diameter)} across and ${work.print(hole.depth)} deep${WHY}${hole.short ? further(kind) : ""}${TRIED}.`,
  ];
}

/** The bits for them. */
export const leadBits = (work: Work): readonly Length[] =>
  groupedBy(work.plan.fasteners, ({ item }) => item).flatMap((list) => leadHole(work, list)?.diameter ?? []);

const LEAD = /^For each (\S+) bore a lead hole first, /u;

/** Steps in the order of work, as they are numbered: what the first one tells of a lead hole, and how one goes on with a nail, later ones refer to. */
export function leadsToldOnce(drafts: readonly StepDraft[]): readonly StepDraft[] {
  const told = new Set<string>();
  let nipped: number | null = null;
  return drafts.map((draft, i) => ({
    ...draft,
    text: draft.text.map((text) => {
      const kind = LEAD.exec(text)?.[1];
      if (kind === undefined) return text;
      const on = further(kind);
      const known = told.has(text);
      told.add(text);
      const short = known ? text.replace(WHY, "").replace(TRIED, "") : text;
      if (!text.includes(on)) return short;
      nipped ??= i;
      if (nipped === i && !known) return text;
      return short.replace(
        on,
        `, and go on with a ${kind} in the chuck${nipped === i ? "" : ` as in step ${nipped + 1}`}`,
      );
    }),
  }));
}
