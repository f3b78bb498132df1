/** Where the cup and the plate of a cup hinge lie. */
import type { JointDraft } from "../../../parse/draft.ts";
import { type Length, millimetres } from "../../../units/length.ts";
import { add, compare, half, max, min, subtract } from "../../../units/rational.ts";
import type { Item } from "../../design.ts";
import { type Items, measureOf, withMeasure } from "../hardware/items.ts";
import { extent } from "../space.ts";
import { endOf, type Hung, type Lie, onward, overlayOf, thicknessOf, turned } from "./lie.ts";

/** What is no deeper than this behind its front is a face frame, not a side. */
const FRAME_DEEP = millimetres(40);

const KINDS = ["cup hinge", "cup hinge for an inset door", "cup hinge for a face frame"] as const;

/** The cup hinge that a joint names, or the usual one for a door that lies so. Null: told. */
export function cupHingeOf(draft: JointDraft, lie: Lie, hold: Hung, items: Items): Item | null {
  const framed = compare(extent(hold.body, lie.opens.axis), FRAME_DEEP) <= 0;
  const usual = lie.inset ? KINDS[1] : framed ? KINDS[2] : KINDS[0];
  return items.find(draft.hardware, [usual, ...KINDS.filter((kind) => kind !== usual)]);
}

/** How far behind the door's back face its hinge may not lie for an inset door: "door thickness + 1.5 mm", added to the line of the plate. */
const INSET_MORE = millimetres(3, 2);

/** The hinge as it is bought for a door: where the plan names no overlay, the one of the door. */
export function suited(item: Item, lie: Lie, print: (length: Length) => string): Item {
  const own = item.measures.get("overlay");
  if (own === undefined || lie.inset || item.said.has("overlay")) return item;
  return withMeasure(item, "overlay", overlayOf(lie), print);
}

/**
 * From the edge of the door to that of the cup: overlay = fixed distance + distance of the cup − height of the plate (pages of hinge makers), so what the
 * door covers more than the hinge gives by itself, its cup lies further in; as far as its makers allow.
 */
function cupFromEdge(item: Item, lie: Lie): Length {
  const [own, gives] = [measureOf(item, "cup from edge"), item.measures.get("overlay")];
  const { low, high } = cupRange(item);
  return gives === undefined || lie.inset ? own : max(low, min(high, add(own, subtract(overlayOf(lie), gives))));
}

/** Where the cup may lie; a distance that the plan says is allowed. */
export function cupRange(item: Item): { readonly low: Length; readonly high: Length } {
  const [own, range] = [measureOf(item, "cup from edge"), item.ranges.get("cup between")];
  return { low: min(own, range?.low ?? own), high: max(own, range?.high ?? own) };
}

export interface CupPlace {
  /** The middle of the cup from the hinged edge of the door inwards, as a coordinate. */
  readonly cup: Length;
  /** The inner face of what it hangs on. */
  readonly inner: Length;
  /** The back face of the door. */
  readonly back: Length;
  /** The line of the plate. */
  readonly plate: Length;
}

/** Null: a formula of the maker's failed. */
export function cupPlace(
  draft: JointDraft,
  item: Item,
  lie: Lie,
  measure: (formula: NonNullable<JointDraft["setBack"]>) => Length | null,
): CupPlace | null {
  const { door, hold, edge, opens } = lie;
  const inwards = turned(edge);
  const own = measureOf(item, "plate set back");
  const usual = lie.inset ? add(add(own, thicknessOf(lie)), INSET_MORE) : own;
  const setBack = draft.setBack ? measure(draft.setBack) : usual;
  if (setBack === null) return null;
  const fromEdge = add(cupFromEdge(item, lie), half(measureOf(item, "cup")));
  return {
    cup: onward(endOf(door, edge), inwards, fromEdge),
    inner: endOf(hold, inwards),
    back: endOf(door, turned(opens)),
    plate: onward(endOf(hold, opens), turned(opens), setBack),
  };
}
