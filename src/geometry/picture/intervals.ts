/** Intervals of the real line. A list is *merged* when it is sorted and its intervals neither overlap nor touch. */
import type { Vec } from "../types.ts";
import { minus, plus, times } from "../vec.ts";

export type Interval = readonly [number, number];

/** The union, merged; gaps up to `slack` are closed. */
export function merge(intervals: readonly Interval[], slack = 0): Interval[] {
  const out: [number, number][] = [];
  for (const [low, high] of [...intervals].sort((a, b) => a[0] - b[0] || a[1] - b[1])) {
    const last = out.at(-1);
    if (last && low <= last[1] + slack) last[1] = Math.max(last[1], high);
    else out.push([low, high]);
  }
  return out;
}

/** What of the merged list `from` is not covered by the merged list `covered`. */
export function without(from: readonly Interval[], covered: readonly Interval[]): Interval[] {
  const out: Interval[] = [];
  for (const [low, high] of from) {
    let at = low;
    for (const [a, b] of covered) {
      if (b <= at || a >= high) continue;
      if (a > at) out.push([at, a]);
      at = Math.max(at, b);
    }
    if (at < high) out.push([at, high]);
  }
  return out;
}

/** The point at parameter t of the line from a (t = 0) to b (t = 1). */
export const between = (a: Vec, b: Vec, t: number): Vec => plus(a, times(minus(b, a), t));
