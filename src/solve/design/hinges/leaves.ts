/** Butt hinges and continuous hinges: two leaves on a pin. */
import type { JointDraft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { add, compare, half, max, subtract, ZERO } from "../../../units/rational.ts";
import type { Box, Item, Point } from "../../design.ts";
import type { Items } from "../hardware/items.ts";
import { measureOf } from "../hardware/items.ts";
import { common, triple } from "../space.ts";
import { barrelPlane, boxOf, endOf, gapMiddle, type Lie, onward, turned, type Way } from "./lie.ts";

export type Side = "door" | "hold";

/** The butt or continuous hinge that a joint names, or the usual one. Null: told. */
export const leafHinge = (draft: JointDraft, items: Items): Item | null =>
  items.find(draft.hardware, [draft.with.value === "butt hinges" ? "butt hinge" : "continuous hinge"]);

export const fitOf = (item: Item): string => item.words.get("fit") ?? "mortised";

/**
 * How deep each leaf is let in: half of what both leaves are thicker than the gap, nothing where they fold into it. (closed − gap) / 2: instructions
 * of hinge makers, and arithmetic.
 */
export const letIn = (item: Item, { gap }: Lie): Length =>
  fitOf(item) === "mortised" ? max(half(subtract(measureOf(item, "closed"), gap)), ZERO) : ZERO;

/** Across the gap from its middle to a side. */
export const wayTo = ({ apart }: Lie, side: Side): Way => (side === "door" ? apart : turned(apart));

/** A leaf between the places where it begins and ends along the pin, shut. */
export function leafBox(item: Item, lie: Lie, side: Side, [from, to]: readonly [Length, Length]): Box {
  const { out, along, apart, gap } = lie;
  const way = wayTo(lie, side);
  const thick = half(measureOf(item, "closed"));
  const middle = gapMiddle(lie);
  if (fitOf(item) === "on the face") {
    const face = endOf(side === "door" ? lie.door : lie.hold, out);
    const start = onward(middle, way, half(measureOf(item, "barrel")));
    return boxOf(
      new Map([
        [apart.axis, [start, onward(start, way, measureOf(item, "leaf"))]],
        [out.axis, [face, onward(face, out, thick)]],
        [along, [from, to]],
      ]),
    );
  }
  const outer = onward(middle, way, add(half(gap), letIn(item, lie)));
  const plane = barrelPlane(lie);
  return boxOf(
    new Map([
      [apart.axis, [outer, onward(outer, turned(way), thick)]],
      [out.axis, [plane, onward(plane, turned(out), measureOf(item, "leaf"))]],
      [along, [from, to]],
    ]),
  );
}

/** What is cut out of a part for a leaf; null where nothing is. */
export function leafMortise(item: Item, lie: Lie, side: Side, ends: readonly [Length, Length], wood: Box): Box | null {
  if (compare(letIn(item, lie), ZERO) <= 0) return null;
  const room = common(leafBox(item, lie, side, ends), wood);
  return triple((i) => compare(room.low[i], room.high[i]) < 0).every(Boolean) ? room : null;
}

/** A point of the pin. */
export function pinOf(item: Item, lie: Lie, at: Length): Point {
  const { apart, out } = lie;
  const middle = gapMiddle(lie);
  const pin = onward(barrelPlane(lie), out, half(measureOf(item, "barrel")));
  return triple((i) => (i === apart.axis ? middle : i === out.axis ? pin : at));
}

/** Where each hinge begins and ends, from the middles of butt hinges; a continuous hinge is one, a little short of its door. */
export function stretches(item: Item, lie: Lie, spots: readonly Length[]): readonly (readonly [Length, Length])[] {
  const { door, hold, along } = lie;
  if (item.kind === "continuous hinge") {
    const both = common(door, hold);
    const short = measureOf(item, "short");
    return [[add(both.low[along], short), subtract(both.high[along], short)]];
  }
  const reach = half(measureOf(item, "long"));
  return spots.map((at) => [subtract(at, reach), add(at, reach)]);
}
