import { columnBound, type Relaxed } from "../bounds/columns.ts";
import { kindsOf } from "../bounds/kinds.ts";
import type { Packed, Problem } from "./problem.ts";
import { inRow, rowOf } from "./rows.ts";
import type { Steps } from "./steps.ts";

/** Shares of a pattern from which on it is cut whole at once. */
const NEARLY = 0.95;

/** Among so many patterns a later turn chooses. */
const CHOICES = 3;

export interface Dive {
  /** With so many parts left it ends. */
  readonly few: number;
  /** In turn 0 the nearest pattern is cut; in others now and then another, so that they differ. */
  readonly turn: number;
}

/** Bins that are filled already, and the parts that remain. */
export interface Begun {
  readonly bins: readonly Packed[];
  readonly rest: readonly number[];
}

/**
 * Bins with parts in a row from a mixture of patterns: those that are in it whole are cut, or else the one that is nearest to it, and what remains is
 * mixed anew, until no more than `few` parts remain or the steps are spent. Null where parts do not lie in rows.
 */
export function dive(problem: Problem, relaxed: Relaxed, { few, turn }: Dive, steps: Steps): Begun | null {
  const row = rowOf(problem);
  if (row === null) return null;
  const costs = problem.bins.map((bin) => bin.cost);
  const bins: Packed[] = [];
  let rest: readonly number[] = problem.parts.map((_, i) => i);
  let { mixture } = relaxed;
  while (rest.length > few && mixture.length > 0 && steps.left > 0) {
    const now = rest;
    const kinds = kindsOf({ ...problem, parts: now.map((part) => problem.parts[part] ?? { ways: [] }) });
    const left = kinds.map(({ parts }) => parts.map((i) => now[i] as number));
    const most = Math.max(...mixture.map(({ times }) => times));
    const whole = mixture.filter(({ times }) => times >= NEARLY);
    const nearest = mixture.toSorted((a, b) => b.times - a.times)[turn === 0 ? 0 : (turn + bins.length) % CHOICES];
    for (const { pattern, times } of most < NEARLY
      ? [nearest ?? mixture[0]].filter((each) => each !== undefined)
      : whole)
      for (let n = 0; n < Math.max(1, Math.floor(times + 1 - NEARLY)); n += 1) {
        const enough = [...pattern.counts].every(([kind, count]) => (left[kind]?.length ?? 0) >= count);
        if (!enough) break;
        const parts = [...pattern.counts].flatMap(([kind, count]) => left[kind]?.splice(0, count) ?? []);
        bins.push(inRow(problem, row, pattern.type, parts));
      }
    const remaining = new Set(left.flat());
    if (remaining.size === now.length) break;
    rest = now.filter((part) => remaining.has(part));
    if (rest.length <= few) break;
    const used = (type: number): number => bins.filter((bin) => bin.type === type).length;
    const smaller: Problem = {
      ...problem,
      bins: problem.bins.map((bin, type) => ({ ...bin, most: bin.most - used(type) })),
      parts: rest.map((part) => problem.parts[part] ?? { ways: [] }),
    };
    // Patterns that can still be cut are a good beginning; kinds are numbered anew.
    const place = new Map(rest.map((part, i) => [part, i]));
    const again = kindsOf(smaller);
    const kindOf = new Map(again.flatMap(({ parts }, kind) => parts.map((i) => [i, kind] as const)));
    const kept = mixture.flatMap(({ pattern }) => {
      const counts = [...pattern.counts].map(([kind, count]): [number, number] => {
        const [part] = left[kind] ?? [];
        const enough = (left[kind]?.length ?? 0) >= count;
        return [(enough && part !== undefined ? kindOf.get(place.get(part) ?? -1) : undefined) ?? -1, count];
      });
      return counts.every(([kind]) => kind >= 0) ? [{ type: pattern.type, counts: new Map(counts) }] : [];
    });
    mixture = columnBound(smaller, costs, { known: 0, wanted: Number.POSITIVE_INFINITY }, kept, steps).mixture;
  }
  return { bins, rest };
}
