/**
 * Lines that coincide in a picture are drawn once: in a front view an edge of a shelf lies on the edge of its dado, and the
 * front edge of a box on its back edge.
 */
import type { Point2 } from "../types.ts";
import { type Interval, merge, without } from "./intervals.ts";

/** A run of ink. Of coinciding runs the one of lowest rank is drawn, and a run cut in two joins up again. */
export interface Run {
  readonly from: Point2;
  readonly to: Point2;
  readonly rank: number;
}

/** Directions that differ by less are one: the rounding of doubles, far below what 1 µm over a metre would make. */
const PARALLEL = 1e-9;

/** To 1/64 unit, so that the last bits do not tell by which way a point was computed. */
const onGrid = (x: number): number => Math.round(x * 64) / 64 + 0;

interface Line {
  /** Grows with the angle from −90° (excluded) to 90°: −1 to 1. */
  readonly slope: number;
  readonly run: Run;
}

/** Distances up to `near` (picture units) count as none. Sorted by rank, then by place; every run goes left to right, or up. */
export function drawnOnce(runs: readonly Run[], near: number): Run[] {
  const lines = runs.map((run): Line => ({ run, slope: slopeOf(run) }));
  return clusters(lines, (l) => l.slope, PARALLEL)
    .flatMap((parallel) => {
      const first = parallel[0]?.run;
      if (!first) return [];
      const along = unit(first);
      const offset = ({ run }: Line): number => along[0] * run.from[1] - along[1] * run.from[0];
      return clusters(parallel, offset, near).flatMap((line) => oneLine(line, along, near));
    })
    .sort(
      (a, b) =>
        a.rank - b.rank || a.from[0] - b.from[0] || a.from[1] - b.from[1] || a.to[0] - b.to[0] || a.to[1] - b.to[1],
    );
}

/** Runs of one line, rank by rank, each without what was drawn before. */
function oneLine(line: readonly Line[], along: Point2, near: number): Run[] {
  const out: Run[] = [];
  let covered: Interval[] = [];
  const place = (p: Point2): number => along[0] * p[0] + along[1] * p[1];
  const ranks = [...new Set(line.map((l) => l.run.rank))].sort((a, b) => a - b);
  for (const rank of ranks) {
    const own = line.filter((l) => l.run.rank === rank).map((l) => l.run);
    const base = own[0]?.from ?? [0, 0];
    const spans = merge(
      own.map(({ from, to }): Interval => {
        const [a, b] = [place(from), place(to)];
        return a < b ? [a, b] : [b, a];
      }),
      near,
    );
    const at = (x: number): Point2 => [
      onGrid(base[0] + (x - place(base)) * along[0]),
      onGrid(base[1] + (x - place(base)) * along[1]),
    ];
    for (const [a, b] of without(spans, covered)) if (b - a > near) out.push({ from: at(a), to: at(b), rank });
    covered = merge([...covered, ...spans], near);
  }
  return out;
}

/** Groups of neighbours: sorted by the measure, a new group where it jumps by more than `gap`. */
function clusters<T>(items: readonly T[], measure: (item: T) => number, gap: number): T[][] {
  const sorted = items.map((item) => ({ item, at: measure(item) })).sort((a, b) => a.at - b.at);
  const out: T[][] = [];
  let last = -Infinity;
  for (const { item, at } of sorted) {
    const group = out.at(-1);
    if (group && at - last <= gap) group.push(item);
    else out.push([item]);
    last = at;
  }
  return out;
}

/** Left to right; straight up where it is upright within rounding. */
function unit({ from, to }: Run): Point2 {
  const [u, v] = [to[0] - from[0], to[1] - from[1]];
  const size = Math.sqrt(u * u + v * v);
  if (Math.abs(u) < PARALLEL * size) return [0, 1];
  return u > 0 ? [u / size, v / size] : [-u / size, -v / size];
}

function slopeOf(run: Run): number {
  const [u, v] = unit(run);
  return v / (u + Math.abs(v));
}
