import { dowelDoesNotFit } from "../../../findings/rules/dowel-does-not-fit.ts";
import type { Solid } from "../../../geometry/index.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, half, less, min, multiply, negate, rational, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Arrangement, Fastener, Hole } from "../../design.ts";
import { shift, unit } from "../space.ts";
import { DOWELS, SOLD_LENGTHS } from "./catalogue.ts";
import { depthAt, roundDepthAt } from "./line.ts";
import { placesOf } from "./places-of.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";

/**
 * Dowels half in each part, or less in one that is too thin for that; their holes together 1/8 in deeper than the dowel; at most half as
 * thick as the wood; one every 6 in, the first 2 in from the end (common practice, no source).
 */
export function dowels(site: Site, moved: RowShift, context: FasteningContext): readonly Arrangement[] {
  const { draft, head, hold, axis, sign } = site;
  const said = options(draft);
  const inch = context.units === "inch";
  const places = placesOf(site, moved, context, {
    spacing: inch ? inches(6) : millimetres(150),
    fromEnds: inch ? inches(2) : millimetres(50),
    count: null,
    twoFrom: inch ? inches(3, 2) : millimetres(38),
  });
  if (!places) return [];
  const thick = DOWELS[inch ? "inch" : "mm"].filter((d) => compare(d, places.contactEdge) <= 0).at(-1);
  const diameter = said.diameter ? context.measure(said.diameter) : thick;
  const slack = inch ? inches(1, 16) : millimetres(3, 2);
  // Where a far face slopes, the side of the dowel comes near it before its end does.
  const askew = head.askew || hold.askew;
  const depth = askew ? roundDepthAt(half(diameter ?? ZERO)) : depthAt;
  const roomIn = (solid: Solid, way: 1 | -1): Length =>
    places.points.map((at) => depth(solid, at, axis, way)).reduce((a, b) => min(a, b));
  const rooms: Two = [roomIn(head.solid, sign > 0 ? -1 : 1), roomIn(hold.solid, sign)];
  const most = rooms.map((room) => subtract(subtract(room, slack), REST[context.units])) as unknown as Two;
  const fits = (length: Length): boolean => reachesOf(length, most, context.units) !== null;
  const usual = SOLD_LENGTHS.dowel[inch ? "inch" : "mm"].filter(
    (length) => fits(length) && compare(length, inch ? inches(2) : millimetres(50)) <= 0,
  );
  const length = said.length ? context.measure(said.length) : usual.at(-1);
  if (diameter === null || length === null) return [];
  const reaches = length && reachesOf(length, most, context.units);
  if (!diameter || !length || !reaches || less(places.contactEdge, half(diameter))) {
    const fitting = usual.at(-1);
    const largest =
      thick && fitting ? { diameter: context.printItem(thick), length: context.printItem(fitting) } : null;
    context.report(
      dowelDoesNotFit(said.at ?? draft.at, {
        join: head.id,
        to: hold.id,
        room: context.print(min(...rooms)),
        wide: context.print(add(places.contactEdge, places.contactEdge)),
        largest,
      }),
    );
    return [];
  }
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  for (const [number, at] of places.points.entries()) {
    const id = `${site.joint}.${number + 1}`;
    const direction = unit(axis, sign);
    fasteners.push({
      id,
      joint: site.joint,
      kind: "dowel",
      item: `dowel ${context.printItem(diameter)} × ${context.printItem(length)}`,
      length,
      rod: diameter,
      head: { at: shift(at, axis, sign > 0 ? negate(reaches[0]) : reaches[0]), diameter, height: ZERO, seat: "sunk" },
      direction,
      through: [head.id],
      into: hold.id,
      travelsWith: head.id,
    });
    for (const [i, part, way] of [
      [0, head.id, -sign],
      [1, hold.id, sign],
    ] as const) {
      const deep = add(reaches[i], slack);
      holes.push({
        part,
        kind: "dowel",
        at,
        direction: unit(axis, way),
        stages: [{ diameter, depth: deep }],
        through: false,
        for: id,
        keep: { edge: ZERO, end: ZERO, under: askew ? ZERO : subtract(rooms[i], deep) },
        atBench: true,
      });
    }
  }
  return [{ fasteners, holes }];
}

/** Something of both parts: the joined one, and the other. */
type Two = readonly [Length, Length];

/** Left under a blind hole: less gives way when the dowel is tapped in, and the point of the bit comes through (common practice, no source). */
const REST = { inch: inches(1, 8), mm: millimetres(3) } as const;

/**
 * How far a dowel reaches into both parts: half and half; or into a thin one as far as it may, to the mark, and farther into the other, at
 * least a third of the dowel each. Null where it is too long.
 */
function reachesOf(length: Length, most: Two, units: FasteningContext["units"]): Two | null {
  const even = half(length);
  if (most.every((room) => compare(even, room) <= 0)) return [even, even];
  const thin = less(most[0], most[1]) ? 0 : 1;
  const short = roundTo(most[thin], units === "inch" ? inches(1, 16) : millimetres(1), "down");
  const long = subtract(length, short);
  if (less(multiply(short, rational(3)), length) || less(most[1 - thin] as Length, long)) return null;
  return thin === 0 ? [short, long] : [long, short];
}
