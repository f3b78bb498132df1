/** Holes for the screws of hinges, and the screws themselves as they are bought. */
import type { Units } from "../../../parse/draft.ts";
import { type Length, millimetres } from "../../../units/length.ts";
import { min, subtract, ZERO } from "../../../units/rational.ts";
import type { Hole, Item, Point } from "../../design.ts";
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

/** Screws of a hinge, so many, as printed. */
export function screwsOf(
  item: Item,
  count: number,
  context: { readonly units: Units; readonly printItem: (length: Length) => string },
): readonly string[] {
  const gauge = numberOf(item, "gauge");
  const size = context.units === "inch" ? `#${gauge}` : String(gauge);
  return Array(count).fill(`wood screw ${size} × ${context.printItem(measureOf(item, "screw"))}, countersunk`);
}

/** The two screws of a plate, by the holes that are bored for them: makers thread them alike, and say so on the packet. */
export function plateScrews(
  item: Item,
  context: { readonly printItem: (length: Length) => string },
): readonly [string, string] {
  const [wide, deep] = [measureOf(item, "plate hole"), measureOf(item, "plate hole deep")].map(context.printItem);
  const one = `screw for a hinge plate, for holes ${wide} across and ${deep} deep`;
  return [one, one];
}
