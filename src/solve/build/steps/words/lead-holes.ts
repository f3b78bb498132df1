import type { Length } from "../../../../units/length.ts";
import type { Fastener } from "../../../design.ts";
import { leadHole } from "../../drilling/lead-holes.ts";
import type { Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";

/** "Bore a 5/64 in lead hole 1 3/4 in deep for each nail first, or the wood splits." */
export function leadText(work: Work, list: readonly Fastener[]): readonly string[] {
  const hole = leadHole(work, list);
  if (!hole) return [];
  const { kind } = list[0] as Fastener;
  const further = hole.short
    ? `, and go on as far with a ${kind} in the chuck, its head nipped off: the bit is too short`
    : "";
  return [
    `For each ${kind} bore a lead hole first, ${work.drill(hole.diameter)} across and ${work.print(hole.depth)} deep, or the wood splits${further}; try it in an offcut.`,
  ];
}

/** The bits for them. */
export const leadBits = (work: Work): readonly Length[] =>
  groupedBy(work.plan.fasteners, ({ item }) => item).flatMap((list) => leadHole(work, list)?.diameter ?? []);
