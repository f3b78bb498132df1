import type { Kind } from "../bounds/kinds.ts";
import type { Pattern } from "../bounds/knapsack.ts";
import { division, leaf, type Packed, type Piece, type Problem } from "./problem.ts";

/** Whether no two parts fit side by side in any bin, and none may turn, so that all cutting is across. */
export function inRows({ bins, parts }: Problem): boolean {
  const widths = parts.map(({ ways: [way] }) => way?.width ?? 0).toSorted((a, b) => a - b);
  const room = Math.max(...bins.map((bin) => bin.width));
  return parts.every(({ ways }) => ways.length === 1) && 2 * (widths[0] ?? 0) > room;
}

/** The patterns that a mixture holds whole, as bins with parts in a row, and the parts that remain. Null where parts do not lie in rows. */
export function rowsOf(
  problem: Problem,
  kinds: readonly Kind[],
  mixture: readonly { readonly pattern: Pattern; readonly times: number }[],
): { readonly bins: readonly Packed[]; readonly rest: readonly number[] } | null {
  if (!inRows(problem)) return null;
  const left = kinds.map(({ parts }) => [...parts]);
  const bins: Packed[] = [];
  for (const { pattern, times } of mixture)
    for (let n = 1; n <= Math.floor(times + 1e-6); n += 1) {
      const parts = [...pattern.counts].flatMap(([kind, count]) => left[kind]?.splice(0, count) ?? []);
      if (parts.length > 0) bins.push({ type: pattern.type, root: row(problem, pattern.type, parts) });
    }
  return { bins, rest: left.flat() };
}

function row({ bins, parts, stages }: Problem, type: number, chosen: readonly number[]): Piece {
  const { width = 0, length = 0 } = bins[type] ?? {};
  let used = 0;
  const kids = chosen.map((part): Piece => {
    const way = parts[part]?.ways[0] ?? { width: 0, length: 0 };
    used += way.length;
    const piece = leaf(part, 0, way.width, way.length);
    if (way.width === width || stages < 2) return piece;
    return division(true, width, way.length, way.width, [piece]);
  });
  return division(false, width, length, used, kids);
}
