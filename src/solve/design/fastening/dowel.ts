import { dowelDoesNotFit } from "../../../findings/rules/dowel-does-not-fit.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, half, less, negate, subtract, ZERO } from "../../../units/rational.ts";
import type { Arrangement, Fastener, Hole } from "../../design.ts";
import { shift, unit } from "../space.ts";
import { DOWELS, SOLD_LENGTHS } from "./catalogue.ts";
import { depthAt, roundDepthAt } from "./line.ts";
import { placesOf } from "./places-of.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";

/**
 * Dowels half in each part, their holes together 1/8 in deeper than the dowel; at most half as thick as the wood; one every 6 in, the
 * first 2 in from the end (common practice, no source).
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
  const room = places.points
    .flatMap((at) => [depth(head.solid, at, axis, sign > 0 ? -1 : 1), depth(hold.solid, at, axis, sign)])
    .reduce((a, b) => (less(b, a) ? b : a));
  const fits = (length: Length): boolean => less(add(half(length), slack), room);
  const usual = SOLD_LENGTHS.dowel[inch ? "inch" : "mm"].filter(
    (length) => fits(length) && compare(length, inch ? inches(2) : millimetres(50)) <= 0,
  );
  const length = said.length ? context.measure(said.length) : usual.at(-1);
  if (diameter === null || length === null) return [];
  if (!diameter || !length || !fits(length) || less(places.contactEdge, half(diameter))) {
    context.report(
      dowelDoesNotFit(said.at ?? draft.at, {
        join: head.id,
        to: hold.id,
        room: context.print(room),
        wide: context.print(add(places.contactEdge, places.contactEdge)),
      }),
    );
    return [];
  }
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  for (const [number, at] of places.points.entries()) {
    const id = `${site.joint}.${number + 1}`;
    const reach = half(length);
    const direction = unit(axis, sign);
    fasteners.push({
      id,
      joint: site.joint,
      kind: "dowel",
      item: `dowel ${context.printItem(diameter)} × ${context.printItem(length)}`,
      length,
      rod: diameter,
      head: { at: shift(at, axis, sign > 0 ? negate(reach) : reach), diameter, height: ZERO, seat: "sunk" },
      direction,
      through: [head.id],
      into: hold.id,
      travelsWith: head.id,
    });
    for (const [part, way] of [
      [head.id, -sign],
      [hold.id, sign],
    ] as const)
      holes.push({
        part,
        kind: "dowel",
        at,
        direction: unit(axis, way),
        stages: [{ diameter, depth: add(reach, slack) }],
        through: false,
        for: id,
        keep: { edge: ZERO, end: ZERO, under: askew ? ZERO : subtract(room, add(reach, slack)) },
        atBench: true,
      });
  }
  return [{ fasteners, holes }];
}
