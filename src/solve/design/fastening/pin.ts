import { pinNeedsWood } from "../../../findings/rules/pin-needs-wood.ts";
import type { JointDraft } from "../../../parse/draft.ts";
import { add, half, less, min, multiply, negate, rational, subtract, ZERO } from "../../../units/rational.ts";
import type { Arrangement, Fastener, Hole, Item, Point } from "../../design.ts";
import { type Items, measureOf, withMeasure } from "../hardware/items.ts";
import { shift, unit } from "../space.ts";
import { PIN } from "./hardware.ts";
import { depthAt } from "./line.ts";
import { placesOf } from "./places-of.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";

/** The pins of a joint; null: reported. */
export const pinOf = ({ hardware }: JointDraft, items: Items): Item | null =>
  items.find(hardware, ["shelf pin", "shelf pin with a plate"]);

/**
 * Pins in the sides under the ends of a shelf, two at each end, 1 1/2 in (37 mm) in from its edges. The joined part is the shelf. Pins are put
 * into their holes before the shelf comes, and stay there.
 */
export function shelfPins(site: Site, moved: RowShift, context: FasteningContext): readonly Arrangement[] {
  const { draft, head: shelf, hold: side, axis, sign } = site;
  const said = options(draft);
  const pin = PIN[context.units === "inch" ? "inch" : "mm"];
  const named = pinOf(draft, context.items);
  if (!named) return [];
  const hole = said.diameter ? context.measure(said.diameter) : measureOf(named, "across");
  const whole = said.length ? context.measure(said.length) : measureOf(named, "long");
  const deep = draft.deep ? context.measure(draft.deep) : measureOf(named, "deep");
  const places = placesOf(site, moved, context, {
    spacing: pin.fromEdge,
    fromEnds: pin.fromEdge,
    count: 2,
    twoFrom: ZERO,
  });
  if (!hole || !whole || !deep || !places || moved.turned) return [];
  const apart = said.apart ? context.measure(said.apart) : pin.apart;
  const spare = said.spare ? context.count(said.spare) : 0;
  if (!apart || spare === null) return [];
  const { low, high } = side.body;
  const [lowest, highest] = [add(low[2], pin.ends), subtract(high[2], pin.ends)];
  /** Above and below, as far as there is wood that is as deep, and a shelf would be of use. */
  const spareOf = (at: Point): readonly Point[] =>
    Array.from({ length: 2 * spare }, (_, i) => multiply(apart, rational(i < spare ? i - spare : i - spare + 1)))
      .map((by) => shift(at, 2, by))
      .filter((place) => !less(place[2], lowest) && !less(highest, place[2]))
      .filter((place) => !less(depthAt(side.solid, place, axis, sign), add(deep, pin.least)));
  const rod = subtract(hole, pin.loose);
  const out = subtract(whole, deep);
  const print = context.printItem;
  const item = withMeasure(withMeasure(named, "across", hole, print), "long", whole, print);
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  for (const [number, place] of places.points.entries()) {
    // The shelf lies on top of the pins.
    const at = shift([place[0], place[1], shelf.body.low[2]], 2, negate(half(hole)));
    const wood = depthAt(side.solid, at, axis, sign);
    const under = subtract(wood, deep);
    if (under.n <= 0n) {
      context.report(pinNeedsWood(draft.at, { part: side.id, wood: context.print(wood), deep: context.print(deep) }));
      return [];
    }
    const id = `${site.joint}.${number + 1}`;
    const direction = unit(axis, sign);
    fasteners.push({
      id,
      joint: site.joint,
      kind: "shelf pin",
      item: item.label,
      ...(item.price !== null && { price: item.price }),
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
        stages: [{ diameter: hole, depth: deep }],
        keep: { edge: ZERO, end: ZERO, under: min(under, pin.least) },
      });
  }
  return [{ fasteners, holes }];
}
