/** Holes for the screws of hinges, and the screws themselves as they are bought. */
import type { Units } from "../../../parse/draft.ts";
import { type Length, millimetres } from "../../../units/length.ts";
import { absolute, add, equal, less, min, subtract, ZERO } from "../../../units/rational.ts";
import type { Hole, Item, Point } from "../../design.ts";
import { INCH_SCREWS, METRIC_SCREWS, type ScrewSize, SOLD_LENGTHS } from "../fastening/catalogue.ts";
import { measureOf, numberOf } from "../hardware/items.ts";
import { extent, unit } from "../space.ts";
import type { Hung, Way } from "./lie.ts";

/** What stays whole under a hole. Common practice, no source. */
const UNDER = millimetres(1);

interface Bored {
  readonly part: Hung & { readonly id: string };
  readonly at: Point;
  readonly way: Way;
  readonly diameter: Length;
  readonly deep: Length;
  /** Id of its hardware. */
  readonly for: string;
  readonly kind?: "cup" | "pilot";
}

/** A hole for a screw, or a cup; a screw's hole ends before it comes out on the other side. */
export function bore({ part, at, way, diameter, deep, kind = "pilot", for: id }: Bored): Hole {
  const wood = subtract(extent(part.body, way.axis), UNDER);
  return {
    ...{ part: part.id, kind, at, direction: unit(way.axis, way.sign), through: false, for: id },
    stages: [{ diameter, depth: kind === "cup" ? deep : min(deep, wood) }],
    keep: { edge: ZERO, end: ZERO, under: ZERO },
    atBench: true,
  };
}

interface Printing {
  readonly units: Units;
  readonly printItem: (length: Length) => string;
}

/** Screws of a hinge, so many, as printed. */
export function screwsOf(item: Item, count: number, context: Printing): readonly string[] {
  const gauge = numberOf(item, "gauge");
  const size = context.units === "inch" ? `#${gauge}` : `${gauge} mm`;
  return Array(count).fill(woodScrew(size, measureOf(item, "screw"), context));
}

const woodScrew = (size: string, long: Length, { printItem }: Printing): string =>
  `wood screw ${size} × ${printItem(long)}, countersunk`;

/** What a plate is thick under the heads of its screws. Common practice, no source. */
const PLATE = millimetres(2);
/** Screws with a thread of 6.3 mm for holes of 5 mm, and the lengths they are sold in: pages of hinge makers, from memory. */
const SYSTEM = { hole: millimetres(5), thread: millimetres(63, 10), sold: [11, 13, 16].map((n) => millimetres(n)) };

/**
 * The two screws of a plate, for the holes that are bored for them, the shortest sold that come to the end of those; wood that is thinner takes
 * the longest that stay in it.
 */
export function plateScrews(item: Item, wood: Length, context: Printing): readonly string[] {
  const wide = measureOf(item, "plate hole");
  const most = add(subtract(wood, UNDER), PLATE);
  const wanted = min(add(measureOf(item, "plate hole deep"), PLATE), most);
  const longOf = (sold: readonly Length[]): Length => {
    const room = sold.filter((each) => !less(most, each));
    return room.find((each) => !less(each, wanted)) ?? room.at(-1) ?? wanted;
  };
  const sizes = context.units === "inch" ? INCH_SCREWS : METRIC_SCREWS;
  const off = ({ pilot }: ScrewSize): Length => absolute(subtract(pilot.hardwood, wide));
  const size = sizes.reduce((best, each) => (less(off(each), off(best)) ? each : best));
  const isWood = sizes.some(({ pilot }) => !less(pilot.hardwood, wide));
  const print = context.printItem;
  if (isWood) return Array(2).fill(woodScrew(size.name, longOf(SOLD_LENGTHS.screw[context.units]), context));
  const thread = equal(wide, SYSTEM.hole) ? `${print(SYSTEM.thread)} × ` : "";
  const long = print(longOf(SYSTEM.sold));
  return Array(2).fill(
    `screw for a hinge plate ${thread}${long}${thread === "" ? " long" : ""}, countersunk, for holes ${print(wide)} across`,
  );
}
