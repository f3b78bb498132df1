import type { Relaxed } from "../bounds/columns.ts";
import type { Kind } from "../bounds/kinds.ts";
import type { Pattern } from "../bounds/knapsack.ts";
import { RowKnapsack } from "../bounds/row-knapsack.ts";
import { Filler, PER_PART } from "./fill.ts";
import type { Packed, Problem } from "./problem.ts";
import { inRow, type Row, rowOf } from "./rows.ts";
import type { Steps } from "./steps.ts";

/** What bins are filled with: parts that are left, by their kinds, and what one of each kind is worth. */
export interface Wanted {
  readonly left: readonly (readonly number[])[];
  readonly prices: readonly number[];
  /** What a bin of each type costs: only bins that are worth more are of use. */
  readonly costs: readonly number[];
}

/** Finds bins that are worth more than they cost. */
export interface Finder {
  /** When it finds nothing there is nothing. */
  readonly exact: boolean;
  /** With fewer steps it comes to nothing. */
  readonly least: number;
  /** Bins to begin with, from what bounded the cost of all parts. */
  readonly first: (relaxed: Relaxed, kinds: readonly (readonly number[])[], steps: Steps) => readonly Packed[];
  readonly find: (wanted: Wanted, steps: Steps) => readonly Packed[];
}

/** Values are whole numbers of this part of the dearest bin's cost, so that sums are exact. */
const FINENESS = 2 ** 30;
/** How much more than it costs a bin must be worth, as a share. */
const SMALL = 1e-6;
/** How often a bin is changed each time. */
const TURNS = 500;
/** Bins are sought so often before mixtures of them are any good. */
const ENOUGH = 100;

export function finderFor(problem: Problem): Finder {
  const row = rowOf(problem);
  return row === null ? inSheets(problem) : inRows(problem, row);
}

function inSheets(problem: Problem): Finder {
  const filler = new Filler(problem, 1);
  const values = problem.parts.map(() => 0);
  const find = ({ left, prices, costs }: Wanted, steps: Steps): readonly Packed[] => {
    for (const [kind, parts] of left.entries()) for (const part of parts) values[part] = prices[kind] ?? 0;
    const parts = left.flatMap((some, kind) => ((prices[kind] ?? 0) > 0 ? some : []));
    return costs.flatMap((cost, type) =>
      Number.isFinite(cost) ? filler.fill(type, parts, values, cost * (1 + SMALL), TURNS, steps) : [],
    );
  };
  const costs = problem.bins.map((bin) => bin.cost);
  const least = ENOUGH * TURNS * PER_PART * problem.parts.length;
  return { exact: false, least, first: ({ prices }, left, steps) => find({ left, prices, costs }, steps), find };
}

/** Where parts lie in rows the best row is found exactly. */
function inRows(problem: Problem, row: Row): Finder {
  const binOf = ({ type, counts }: Pattern, kinds: readonly (readonly number[])[]): Packed => {
    const parts = [...counts].flatMap(([kind, count]) => kinds[kind]?.slice(0, count) ?? []);
    return inRow(problem, row, type, parts);
  };
  let last: { left: Wanted["left"]; kinds: readonly (Kind & { kind: number })[]; knapsack: RowKnapsack } | null = null;
  const knapsackFor = (left: Wanted["left"], steps: Steps) => {
    if (last?.left === left) return last;
    const kinds = left.flatMap((parts, kind) => (parts.length > 0 ? [{ kind, parts }] : []));
    last = { left, kinds, knapsack: new RowKnapsack(row, kinds) };
    steps.left -= last.knapsack.work;
    return last;
  };
  const find = ({ left, prices, costs }: Wanted, steps: Steps): readonly Packed[] => {
    if (left.every((parts) => parts.length === 0)) return [];
    const { kinds, knapsack } = knapsackFor(left, steps);
    steps.left -= knapsack.work;
    const scale = FINENESS / Math.max(1, ...costs.filter(Number.isFinite));
    const most = knapsack.solve(kinds.map(({ kind }) => Math.floor((prices[kind] ?? 0) * scale)));
    return most.flatMap((value, type) => {
      if (value <= (costs[type] ?? 0) * scale * (1 + SMALL)) return [];
      return [
        binOf(
          knapsack.pattern(type),
          kinds.map(({ parts }) => parts),
        ),
      ];
    });
  };
  const first: Finder["first"] = ({ patterns }, kinds) => patterns.map((pattern) => binOf(pattern, kinds));
  return { exact: true, least: 0, first, find };
}
