import type { Jumps } from "../solve/jumps/index.ts";
import { type PrintOptions, sayLength } from "../units/print-length.ts";

/** Lines for people: the ranges, and under each what is otherwise above which mark. */
export function sayJumps(all: readonly Jumps[], units: PrintOptions["units"]): readonly string[] {
  if (all.length === 0) return ["No size and no stock of the plan has a range."];
  return all.flatMap(({ of, jumps }) => [
    jumps.length === 0 ? `${of}: no count, length or purchase changes over its range` : `${of}:`,
    ...jumps.map(({ last, first, what, before, after }) => {
      const from = `  above ${sayLength(last, { units })} (from ${sayLength(first, { units })} on)`;
      return `${from} ${what}: ${after ?? "none"} in place of ${before ?? "none"}`;
    }),
  ]);
}
