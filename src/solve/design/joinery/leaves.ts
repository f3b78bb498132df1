import { ZERO } from "../../../units/rational.ts";
import { leafHinge, leafMortise, type Side, stretches, wayTo } from "../hinges/leaves.ts";
import { lieOf } from "../hinges/lie.ts";
import { spotsOf } from "../hinges/spots.ts";
import { boxFeature } from "../shapes/workpiece.ts";
import type { Craft } from "./work.ts";

/** Cuts the mortises for the leaves of hinges, in the part that hangs and in what it hangs on. Nothing where they fold into the gap. */
export const beginLeaves: Craft = (joining, bench, context) => () => {
  const { draft, touch, join, to, id } = joining;
  const [door, hold] = [bench.piece(join.id), bench.piece(to.id)];
  const item = leafHinge(draft, context.items);
  const lie = item && lieOf(draft, { ...door, id: join.id }, { ...hold, id: to.id }, context.reaches);
  if (!item || !lie) return null;
  const spots = spotsOf(draft, join.id, lie, context);
  if (!spots) return null;
  // Strips on a slab are cut with it.
  const sides: readonly (readonly [Side, string])[] = [
    ...context
      .hangsWith(join.id)
      .filter((id) => bench.pieces.has(id))
      .map((id) => ["door", id] as const),
    ["hold", to.id],
  ];
  for (const ends of stretches(item, lie, spots))
    for (const [side, piece] of sides) {
      const room = leafMortise(item, lie, side, ends, bench.piece(piece).body);
      const feature = room && boxFeature("mortise", id, room, wayTo(lie, side), lie.along);
      if (room && feature) bench.cut(piece, { kind: "box", box: room, square: true }, feature);
    }
  return { joining, insertion: null, gap: touch.kind === "faces" ? touch.gap : ZERO };
};
