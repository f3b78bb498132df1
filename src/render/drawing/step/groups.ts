/** What travels side by side needs one arrow. */
import type { Vec } from "../../../geometry/types.ts";
import { dot } from "../../../geometry/vec.ts";
import type { Bounds } from "../exploded/spread.ts";

/** A box around parts that move, as they are drawn, and the unit vector of their way. */
export interface Group {
  readonly box: Bounds;
  readonly along: Vec;
  /** It comes off. */
  readonly leaves?: boolean;
}

/** Joins the groups of one way that lie no farther apart than `near`, until none are left to join. */
export function together(groups: readonly Group[], near: number): readonly Group[] {
  for (const [i, a] of groups.entries())
    for (const b of groups.slice(i + 1)) {
      if (dot(a.along, b.along) < 1 - 1e-9 || !isNear(a.box, b.box, near)) continue;
      const rest = groups.filter((group) => group !== a && group !== b);
      return together([{ ...a, box: around(a.box, b.box) }, ...rest], near);
    }
  return groups;
}

const isNear = (a: Bounds, b: Bounds, near: number): boolean =>
  ([0, 1, 2] as const).every((i) => a.low[i] <= b.high[i] + near && b.low[i] <= a.high[i] + near);

const around = (a: Bounds, b: Bounds): Bounds => ({
  low: [Math.min(a.low[0], b.low[0]), Math.min(a.low[1], b.low[1]), Math.min(a.low[2], b.low[2])],
  high: [Math.max(a.high[0], b.high[0]), Math.max(a.high[1], b.high[1]), Math.max(a.high[2], b.high[2])],
});
