import type { Action } from "../../build.ts";
import type { Drive } from "../order/plan.ts";

/** Fasteners of one tool are driven together. */
export function drivings(drives: readonly Drive[]): readonly Action[] {
  const groups = new Map<string, Drive[]>();
  for (const drive of drives) {
    const key = `${drive.tool} ${drive.axis?.join() ?? ""}`;
    groups.set(key, [...(groups.get(key) ?? []), drive]);
  }
  return [...groups.values()].map((group) => ({
    do: "drive",
    fasteners: group.map(({ fastener }) => fastener.id),
    tool: (group[0] as Drive).tool,
    axis: (group[0] as Drive).axis,
  }));
}
