/** The table of fasteners: kind by kind, by length. */
import { compare } from "../../../units/rational.ts";
import type { Fastener, Stock } from "../../design.ts";
import type { FastenerRow } from "../model/drilling.ts";
import { groupedBy } from "../steps/wishes/own-key.ts";
import { type Drilled, servedBy } from "./drilling.ts";
import { leadHole, type Nailed } from "./lead-holes.ts";
import { sitsAt } from "./sits-at.ts";
import { stepOf } from "./step-of.ts";

/** Kinds in the order in which they first come; each from short to long. */
export function fastenerTable({ design, plan, steps, mark }: Drilled): readonly FastenerRow[] {
  const { part, stock } = servedBy({ design, plan });
  const nailed = { design, plan, part, stock: (name: string) => stock(name) as Stock };
  const at = stepOf(steps, { joints: design.joints, fasteners: plan.fasteners });
  const kinds = [...new Set(plan.fasteners.map(({ kind }) => kind))];
  const groups = groupedBy(plan.fasteners, ({ item, with: more = [] }) => [item, ...more].join("\n"));
  return groups
    .map((list): FastenerRow => {
      const { kind, item, length, with: more = [] } = list[0] as Fastener;
      // What is held by a button or a clip passes through no part: there it is told at which part that sits.
      const heldAt = (one: Fastener): readonly string[] => sitsAt(design.joints, one).map(mark);
      const ways = groupedBy(list, (each) =>
        [...each.through.map(mark), "at", ...heldAt(each), mark(each.into)].join("\n"),
      );
      return {
        ...{ kind, item, length, with: more, fasteners: list.map(({ id }) => id) },
        lead: leadOf(
          nailed,
          groupedBy(list, (each) => String(at.fastener(each))),
        ),
        ways: ways.map((own) => {
          const first = own[0] as Fastener;
          return {
            through: first.through.map(mark),
            ...{ at: heldAt(first), into: mark(first.into), count: own.length },
          };
        }),
        steps: [...new Set(list.flatMap((each) => at.fastener(each) ?? []))].sort((a, b) => a - b),
      };
    })
    .toSorted((a, b) => kinds.indexOf(a.kind) - kinds.indexOf(b.kind) || compare(a.length, b.length));
}

/** What those of each step that need it are bored for first, and how many those are. */
function leadOf(nailed: Nailed, bySteps: readonly (readonly Fastener[])[]): FastenerRow["lead"] {
  const [first, ...rest] = bySteps.flatMap((list) => {
    const hole = leadHole(nailed, list);
    return hole ? [{ ...hole, count: list.length }] : [];
  });
  return first ? { ...first, count: rest.reduce((so, { count }) => so + count, first.count) } : null;
}
