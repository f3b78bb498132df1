/** Promise 5: what a hole is bored with can be bought, and the drilling table has every stage of every hole as it is. */
import { type Model, near } from "./model.ts";
import type { DrillRow, Fastener, Hole } from "./record.ts";
import { type Violations, violation } from "./violation.ts";

export function* drills({ record }: Model): Violations {
  const { holes, drilling, units, jigs, fasteners } = record;
  // A bit that a jig guides passes that first; of scrap nobody knows how thick it is.
  const passedJig = ({ jig }: DrillRow): number => jigs.find(({ id }) => id === jig)?.thickness ?? 0;
  for (const hole of holes)
    if (!isSold(hole, units)) yield violation("drills are sold", hole.part, `the hole for ${hole.for}`);
  for (const [i, hole] of holes.entries()) {
    const rows = drilling.filter((row) => row.holes.includes(i));
    // The stepped bit of a pocket bores both of its stages.
    const bored = hole.kind === "pocket" ? hole.stages.slice(0, 1) : hole.stages;
    const told = bored.every((stage) =>
      rows.some((row) => tells(row, stage, passed(hole, holes, fasteners) + passedJig(row))),
    );
    if (rows.length !== bored.length || !told)
      yield violation("drilling table has every hole", hole.part, `the hole for ${hole.for}`);
  }
}

/** The record has six decimals of a millimetre: a sum of four of them. */
const SUM = 4e-6;

/** A bore goes in as deep as the table says, behind what is passed first; a cone and a hole right through need no stop. */
const tells = ({ diameter, depth }: DrillRow, stage: Hole["stages"][number], before: number): boolean =>
  near(diameter, stage.diameter, 1e-6) && (typeof depth === "string" || near(depth, stage.depth + before, SUM));

/**
 * What lies between the mouth of a hole that is bored in place and the mouth of the foremost that guides it: the stop counts from there. A fastener that
 * passes no part holds a button or clip, which lies under its head.
 */
export function passed(
  { at, direction, part, for: of, atBench }: Hole,
  holes: readonly Hole[],
  fasteners: readonly Pick<Fastener, "id" | "through" | "head">[],
): number {
  const square = direction.some((c) => Math.abs(Math.abs(c) - 1) < 1e-9);
  if (atBench || of === null || !square) return 0;
  const behind = (other: Pick<Hole, "at">): number =>
    direction.reduce((so, c, i) => so + c * ((at[i] ?? 0) - (other.at[i] ?? 0)), 0);
  // A recess opens on the other side: no bit comes through it.
  const guides = ({ for: own, part: there, kind, direction: way }: Hole): boolean =>
    own === of && there !== part && kind !== "pilot" && direction.every((c, i) => Math.abs(c - (way[i] ?? 0)) < 1e-9);
  const heads = fasteners.filter(({ id, through }) => id === of && through.length === 0).map(({ head }) => head);
  return Math.max(0, ...holes.filter(guides).map(behind), ...heads.map(behind));
}

/** Kinds of which the drill is as wide as what goes in, and may be one of the other unit. */
const FITTING = ["dowel", "pin", "nut", "cup", "pocket"];

/** The last stage: sixty-fourths of an inch (ASME B94.11M, from memory), or tenths of a millimetre (ISO 235, from memory). */
function isSold({ stages, kind, for: of }: Hole, units: string): boolean {
  const diameter = stages.at(-1)?.diameter ?? 0;
  const [inch, metric] = [isWhole((diameter * 64) / 25.4), isWhole(diameter * 10)];
  return of === null || FITTING.includes(kind) ? inch || metric : units === "inch" ? inch : metric;
}

const isWhole = (n: number): boolean => Math.abs(n - Math.round(n)) < 1e-4;
