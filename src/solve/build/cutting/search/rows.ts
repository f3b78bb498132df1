import { division, leaf, type Packed, type Piece, type Problem, type Way } from "./problem.ts";

/** A problem of one dimension: all parts of a bin lie one behind the other, or side by side. */
export interface Row {
  /** Side by side: rips part them. */
  readonly rip: boolean;
  /** What each part takes of the row, and the way it lies to take the least. */
  readonly sizes: readonly number[];
  readonly ways: readonly number[];
  /** Of each bin. */
  readonly rooms: readonly number[];
}

/** The row that a problem comes down to, if no two parts fit beside each other the other way in any bin. */
export function rowOf(problem: Problem): Row | null {
  if (problem.carry !== undefined || problem.parts.some(({ group }) => group !== undefined)) return null;
  return along(problem, false) ?? along(problem, true);
}

function along({ bins, parts }: Problem, rip: boolean): Row | null {
  const across = (way: Way): number => (rip ? way.length : way.width);
  const size = (way: Way): number => (rip ? way.width : way.length);
  const [least = 0, next = least] = parts.map(({ ways }) => Math.min(...ways.map(across))).toSorted((a, b) => a - b);
  const alone = parts.length > 1 && least + next > Math.max(...bins.map(across));
  // Where bins are not equally wide, a part might fit some of them only.
  if (!alone || new Set(bins.map(across)).size > 1) return null;
  const room = across(bins[0] ?? { width: 0, length: 0 });
  const best = parts.map(({ ways }) => {
    const fits = ways.flatMap((way, i) => (across(way) <= room ? [i] : []));
    return fits.toSorted((a, b) => size(ways[a] as Way) - size(ways[b] as Way))[0] ?? 0;
  });
  const sizes = parts.map(({ ways }, i) => size(ways[best[i] ?? 0] as Way));
  return { rip, sizes, ways: best, rooms: bins.map(size) };
}

/** A bin with parts in a row. */
export function inRow({ bins, parts }: Problem, row: Row, type: number, chosen: readonly number[]): Packed {
  const { width = 0, length = 0 } = bins[type] ?? {};
  let used = 0;
  const kids = chosen.map((part): Piece => {
    const number = row.ways[part] ?? 0;
    const way = parts[part]?.ways[number] ?? { width: 0, length: 0 };
    const piece = leaf(part, number, way.width, way.length);
    used += row.rip ? way.width : way.length;
    if (row.rip ? way.length === length : way.width === width) return piece;
    return row.rip
      ? division(false, way.width, length, way.length, [piece])
      : division(true, width, way.length, way.width, [piece]);
  });
  return { type, root: division(row.rip, width, length, used, kids) };
}
