import type { CuttingEffort } from "../ask.ts";
import { binsByPatterns, type Relaxed } from "../bounds/columns.ts";
import { binsByArea } from "../bounds/dual-feasible.ts";
import { cheapestBins } from "./fewest.ts";
import { division, leaf, type Packed, type Piece, type Problem, partsIn } from "./problem.ts";

/** Counted, so that every machine stops at the same plan. About 0.05, 0.5 and 3 seconds for a hard list. */
const EFFORT: Readonly<Record<CuttingEffort, { readonly search: number; readonly patterns: number }>> = {
  quick: { search: 11_000_000, patterns: 60_000_000 },
  normal: { search: 90_000_000, patterns: 3_000_000_000 },
  thorough: { search: 700_000_000, patterns: 12_000_000_000 },
};

export const stepsOf = (effort: CuttingEffort): number => EFFORT[effort].search;

export interface Solved {
  readonly bins: readonly Packed[];
  /** No fewer bins will do. */
  readonly bound: number;
  readonly method: "area" | "patterns";
}

/** Bins of one size for all parts, and how few there could be at best. A little search first: most lists are easy, and the bound shows it. */
export function fewestBins(problem: Problem, effort: CuttingEffort): Solved {
  const [bin, ...others] = problem.bins;
  if (bin === undefined || others.length > 0) throw new Error("bins of several sizes have no bound by number");
  const { search, patterns } = EFFORT[effort];
  const area = Math.max(problem.parts.length > 0 ? 1 : 0, binsByArea(problem.parts, bin.width, bin.length));
  const first = cheapestBins(problem, area * bin.cost, { left: Math.ceil(search * BEGIN) });
  if (first.length <= area) return { bins: first, bound: area, method: "area" };
  const { relaxed, kindOf } = relaxation(problem, first, patterns);
  const bound = Math.max(area, relaxed.bound);
  const method = relaxed.bound > area ? "patterns" : "area";
  if (first.length <= bound) return { bins: first, bound, method };
  const rounded = isOneWide(problem) ? roundedDown(problem, relaxed, kindOf, bound, search) : null;
  const start = rounded && rounded.length < first.length ? rounded : first;
  const bins = start.length <= bound ? start : cheapestBins(problem, bound * bin.cost, { left: search }, start);
  return { bins, bound, method };
}

/** Parts that lie one behind the other. */
const isOneWide = ({ parts, bins }: Problem): boolean =>
  parts.every(
    ({ ways: [way, ...others] }) => others.length === 0 && way !== undefined && 2 * way.width > (bins[0]?.width ?? 0),
  );

/** The whole bins of the linear programme, and what they leave out packed for itself: good where there are many of each kind. */
function roundedDown(
  problem: Problem,
  { patterns }: Relaxed,
  kindOf: readonly number[],
  bound: number,
  steps: number,
): readonly Packed[] {
  const [{ width, length, cost }] = problem.bins as [Problem["bins"][number]];
  const left = new Map<number, number[]>();
  for (const [part, kind] of kindOf.entries()) left.set(kind, [...(left.get(kind) ?? []), part]);
  const whole: Packed[] = [];
  for (const { counts, amount } of patterns.toSorted((a, b) => b.amount - a.amount))
    for (let n = Math.floor(amount + 1e-6); n > 0; n -= 1) {
      const parts = Array.from(counts).flatMap((count, kind) => left.get(kind)?.splice(0, count) ?? []);
      if (parts.length === 0) continue;
      const kids = parts.map((part) => {
        const [way] = problem.parts[part]?.ways ?? [];
        return leaf(part, 0, way?.width ?? 0, way?.length ?? 0);
      });
      whole.push({
        type: 0,
        root: division(
          false,
          width,
          length,
          kids.reduce((so, kid) => so + kid.length, 0),
          kids,
        ),
      });
    }
  const rest = [...left.values()].flat();
  if (rest.length === 0) return whole;
  const smaller = { ...problem, parts: rest.map((part) => problem.parts[part] as Problem["parts"][number]) };
  const packed = cheapestBins(smaller, Math.max(0, bound - whole.length) * cost, { left: steps });
  return [...whole, ...packed.map(({ type, root }) => ({ type, root: renumbered(root, rest) }))];
}

const renumbered = (piece: Piece, numbers: readonly number[]): Piece =>
  piece.part >= 0
    ? { ...piece, part: numbers[piece.part] as number }
    : { ...piece, kids: piece.kids.map((kid) => renumbered(kid, numbers)) };
const BEGIN = 0.1;

/** Over all edge-to-edge patterns, begun with those that were found; and which kind each part is of. */
function relaxation(
  { parts, bins: [bin] }: Problem,
  found: readonly Packed[],
  effort: number,
): { readonly relaxed: Relaxed; readonly kindOf: readonly number[] } {
  if (bin === undefined) return { relaxed: { bound: 0, patterns: [] }, kindOf: [] };
  const kinds: { ways: (typeof parts)[number]["ways"]; count: number }[] = [];
  const places = new Map<string, number>();
  const kindOf = parts.map(({ ways }) => {
    const key = ways
      .map((way) => `${way.width} ${way.length}`)
      .sort()
      .join();
    const place = places.get(key) ?? kinds.length;
    places.set(key, place);
    const kind = kinds[place];
    if (kind) kind.count += 1;
    else kinds.push({ ways, count: 1 });
    return place;
  });
  const known = found.map(({ root }) => {
    const counts = kinds.map(() => 0);
    for (const part of partsIn(root)) counts[kindOf[part] as number] = (counts[kindOf[part] as number] ?? 0) + 1;
    return counts;
  });
  return { relaxed: binsByPatterns(kinds, bin.width, bin.length, known, effort), kindOf };
}
