/** The table of fasteners: kind by kind, by length. */
import { compare } from "../../../units/rational.ts";
import type { Fastener } from "../../design.ts";
import type { FastenerRow } from "../model/drilling.ts";
import type { Drilled } from "./drilling.ts";
import { sitsAt } from "./sits-at.ts";
import { stepOf } from "./step-of.ts";

/** Kinds in the order in which they first come; each from short to long. */
export function fastenerTable({ design, plan, steps, mark }: Drilled): readonly FastenerRow[] {
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

function groupedBy(fasteners: readonly Fastener[], key: (fastener: Fastener) => string): readonly Fastener[][] {
  const groups = new Map<string, Fastener[]>();
  for (const each of fasteners) groups.set(key(each), [...(groups.get(key(each)) ?? []), each]);
  return [...groups.values()];
}
