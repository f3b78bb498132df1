import type { Length } from "../../../units/length.ts";
import { half, max, min, negate } from "../../../units/rational.ts";
import { pinOf } from "../fastening/pin.ts";
import { measureOf } from "../hardware/items.ts";
import { faceAxis, faceOf, isHigh, moveFace, setFace } from "../space.ts";
import type { Bench, JoineryContext, Joining } from "./work.ts";

/** Cuts a shelf that rests on pins short of the side that it would touch. Gives the gap; null: reported. */
export function shortenShelf(joining: Joining, bench: Bench, context: JoineryContext): Length | null {
  const { draft, touch } = joining;
  const item = pinOf(draft, context.items);
  const gap = draft.gap ? context.measure(draft.gap) : item && half(measureOf(item, "play"));
  if (touch.kind !== "faces" || gap === null) return null;
  const face = faceOf(touch.axis, touch.sign > 0);
  const axis = faceAxis(face);
  const piece = bench.piece(joining.join.id);
  const wanted = moveFace(piece.body, face, negate(gap));
  const at = isHigh(face)
    ? min(piece.grown.high[axis], wanted.high[axis])
    : max(piece.grown.low[axis], wanted.low[axis]);
  bench.grow(joining.join.id, setFace(piece.grown, face, at));
  return gap;
}
