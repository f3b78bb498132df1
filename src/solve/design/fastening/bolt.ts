import { holeRunsIntoCut } from "../../../findings/rules/hole-runs-into-cut.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, less, negate, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Arrangement, Fastener, Hole, Point } from "../../design.ts";
import { shift, unit } from "../space.ts";
import { boltLengthFor, boltSizeFor } from "./bolt-size.ts";
import { passage } from "./driven-screw.ts";
import type { BoltSize } from "./hardware.ts";
import { runAt } from "./line.ts";
import { placesOf } from "./places-of.ts";
import type { RowPlan } from "./row.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";

/** One under 4 in, then one every 4 in, the first 1 1/4 in from the end (common practice, no source). */
export const boltRow = (inch: boolean): RowPlan => ({
  spacing: inch ? inches(4) : millimetres(100),
  fromEnds: inch ? inches(5, 4) : millimetres(32),
  count: null,
  twoFrom: inch ? inches(4) : millimetres(100),
});

/** A bolt's hole is 1/16 in (1 mm) wider than the bolt, so that it can be taken out and put back. */
export const boltHole = ({ rod }: BoltSize, inch: boolean): Length => add(rod, inch ? inches(1, 16) : millimetres(1));

/** Sunk where asked: a counterbore that takes the washer. */
export function sinkFor(site: Site, size: BoltSize, context: FasteningContext) {
  const said = options(site.draft).counterbore;
  const depth = said ? context.measure(said) : ZERO;
  if (depth === null) return null;
  const inch = context.units === "inch";
  const diameter = roundTo(
    add(size.washer.diameter, inch ? inches(1, 16) : millimetres(1)),
    inch ? inches(1, 8) : millimetres(1),
    "up",
  );
  return { depth, stages: depth.n > 0n ? [{ diameter, depth }] : [] };
}

export const boltHead = (site: Site, at: Point, through: Length, size: BoltSize, sunk: boolean): Fastener["head"] => ({
  at: shift(at, site.axis, site.sign > 0 ? negate(through) : through),
  diameter: size.head,
  height: size.headHeight,
  seat: sunk ? "sunk" : "proud",
});

const washerItem = (size: BoltSize, { printItem }: FasteningContext): string =>
  `washer ${printItem(size.washer.diameter)} wide for a ${size.name} bolt`;

export const boltItem = (size: BoltSize, length: Length, { printItem }: FasteningContext): string =>
  `bolt ${size.name} × ${printItem(length)}, hexagon head`;

export const boltWith = (size: BoltSize, context: FasteningContext, nut: string, washers: 1 | 2): readonly string[] => [
  ...Array.from({ length: washers }, () => washerItem(size, context)),
  nut,
];

/** A bolt before its washers and nut: `at` where the parts meet, `through` what it passes up to there. */
export function boltAt(
  site: Site,
  { number, at, through, size, sunk, length }: BoltPlace,
  context: FasteningContext,
): Omit<Fastener, "with" | "nut"> {
  const { joint, head, hold, axis, sign } = site;
  return {
    ...{ id: `${joint}.${number + 1}`, joint, kind: "bolt", item: boltItem(size, length, context) },
    ...{ length, rod: size.rod, head: boltHead(site, at, through, size, sunk), direction: unit(axis, sign) },
    ...{ through: [head.id], into: hold.id, travelsWith: null },
  };
}

interface BoltPlace {
  readonly number: number;
  readonly at: Point;
  readonly through: Length;
  readonly size: BoltSize;
  /** Its head lies in a counterbore. */
  readonly sunk: boolean;
  readonly length: Length;
}

/** Bolts right through both parts, with a washer under the head and under the nut. */
export function bolts(site: Site, moved: RowShift, context: FasteningContext): readonly Arrangement[] {
  const { draft, head, hold, axis, sign } = site;
  const inch = context.units === "inch";
  const places = placesOf(site, moved, context, boltRow(inch));
  const size = boltSizeFor(site, context);
  const sink = size && sinkFor(site, size, context);
  if (!places || !size || !sink) return [];
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  for (const [number, at] of places.points.entries()) {
    const [passed, beyond] = [runAt(head.solid, at, axis, sign > 0 ? -1 : 1), runAt(hold.solid, at, axis, sign)];
    const bad =
      passed.interrupted || passed.depth.n === 0n ? head : beyond.interrupted || beyond.depth.n === 0n ? hold : null;
    if (bad || !less(sink.depth, passed.depth)) {
      context.report(holeRunsIntoCut(draft.at, { part: (bad ?? head).id, hole: "bolt", cut: "cut" }));
      return [];
    }
    const through = add(subtract(passed.depth, sink.depth), size.washer.thick);
    const least = [beyond.depth, size.washer.thick, size.nutHeight].reduce(add, through);
    const length = boltLengthFor(site, least, `${head.id}, ${hold.id}, two washers and the nut`, context);
    if (!length) return [];
    const id = `${site.joint}.${number + 1}`;
    const far = add(beyond.depth, size.washer.thick);
    const bolt = boltAt(site, { number, at, through, size, sunk: sink.depth.n > 0n, length }, context);
    fasteners.push({
      ...bolt,
      with: boltWith(size, context, `nut ${size.name}`, 2),
      nut: {
        at: shift(at, axis, sign > 0 ? far : negate(far)),
        direction: unit(axis, -sign),
        diameter: size.head,
        height: size.nutHeight,
      },
    });
    const bored = boltHole(size, inch);
    holes.push(
      passage(site, { number, at }, passed.depth, {
        kind: "bolt",
        stages: [...sink.stages, { diameter: bored, depth: passed.depth }],
      }),
      {
        ...{ part: hold.id, kind: "bolt", at, direction: unit(axis, sign), through: true, for: id, atBench: true },
        stages: [{ diameter: bored, depth: beyond.depth }],
        keep: { edge: ZERO, end: ZERO, under: ZERO },
      },
    );
  }
  return [{ fasteners, holes }];
}
