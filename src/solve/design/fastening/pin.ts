import { pinNeedsWood } from "../../../findings/rules/pin-needs-wood.ts";
import { add, half, less, min, multiply, negate, rational, subtract, ZERO } from "../../../units/rational.ts";
import type { Arrangement, Fastener, Hole, Point } from "../../design.ts";
import { shift, unit } from "../space.ts";
import { PIN } from "./hardware.ts";
import { depthAt } from "./line.ts";
import { placesOf } from "./places-of.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";

/**
 * Pins in the sides under the ends of a shelf, two at each end, 1 1/2 in (37 mm) in from its edges. The joined part is the shelf. Pins are put
 * into their holes before the shelf comes, and stay there.
 */
export function shelfPins(site: Site, moved: RowShift, context: FasteningContext): readonly Arrangement[] {
  const { draft, head: shelf, hold: side, axis, sign } = site;
  const said = options(draft);
  const pin = PIN[context.units === "inch" ? "inch" : "mm"];
  const hole = said.diameter ? context.measure(said.diameter) : pin.hole;
  const whole = said.length ? context.measure(said.length) : add(pin.deep, pin.out);
  const places = placesOf(site, moved, context, {
    spacing: pin.fromEdge,
    fromEnds: pin.fromEdge,
    count: 2,
    twoFrom: ZERO,
  });
  if (!hole || !whole || !places || moved.turned) return [];
  const apart = said.apart ? context.measure(said.apart) : pin.apart;
  const spare = said.spare ? context.count(said.spare) : 0;
  if (!apart || spare === null) return [];
  /** Above and below, as far as there is wood that is as deep. */
  const spareOf = (at: Point): readonly Point[] =>
    Array.from({ length: 2 * spare }, (_, i) => multiply(apart, rational(i < spare ? i - spare : i - spare + 1)))
      .map((by) => shift(at, 2, by))
      .filter((place) => !less(depthAt(side.solid, place, axis, sign), add(pin.deep, pin.least)));
  const rod = subtract(hole, subtract(pin.hole, pin.rod));
  const out = subtract(whole, pin.deep);
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  for (const [number, place] of places.points.entries()) {
    // The shelf lies on top of the pins.
    const at = shift([place[0], place[1], shelf.body.low[2]], 2, negate(half(hole)));
    const wood = depthAt(side.solid, at, axis, sign);
    const under = subtract(wood, pin.deep);
    if (under.n <= 0n) {
      context.report(
        pinNeedsWood(draft.at, { part: side.id, wood: context.print(wood), deep: context.print(pin.deep) }),
      );
      return [];
    }
    const id = `${site.joint}.${number + 1}`;
    const direction = unit(axis, sign);
    fasteners.push({
      id,
      joint: site.joint,
      kind: "shelf pin",
      item: `shelf pin ${context.printItem(hole)} × ${context.printItem(whole)}`,
      length: whole,
      rod,
      head: { at: shift(at, axis, sign > 0 ? negate(out) : out), diameter: rod, height: ZERO, seat: "proud" },
      direction,
      through: [],
      into: side.id,
      travelsWith: side.id,
    });
    for (const place of [at, ...spareOf(at)])
      holes.push({
        ...{ part: side.id, kind: "pin", at: place, direction, through: false, for: id, atBench: true },
        ...(place !== at && { spare: true }),
        stages: [{ diameter: hole, depth: pin.deep }],
        keep: { edge: ZERO, end: ZERO, under: min(under, pin.least) },
      });
  }
  return [{ fasteners, holes }];
}
