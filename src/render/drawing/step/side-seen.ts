/** Which side of the piece faces the reader, where that is not its front as it stands. */
import type { View } from "../../../geometry/picture/index.ts";
import type { Vec } from "../../../geometry/types.ts";
import { dot } from "../../../geometry/vec.ts";

/**
 * `ceiling`: which way of the finished piece points up while it is worked on. Null: upright, seen from the front right and above.
 * Of what lies, the side is told too that is turned to the reader, since it could be either.
 */
export function sideSeen({ towards, name }: View, ceiling: Vec): string | null {
  const [x, y, z] = ceiling;
  const below = dot(towards, ceiling) < 0;
  if (z > 0) return below || towards[1] > 0 || towards[0] < 0 ? `Seen from ${name}` : null;
  const from = below ? ", seen from below" : "";
  const [side, end] = [towards[1] < 0 ? "front" : "back", towards[2] < 0 ? "bottom" : "top"];
  if (z < 0) return `Upside down${side === "back" ? ", back towards you" : ""}${from}`;
  // The side that is up lies across from the one that it lies on.
  const under = x !== 0 ? (x < 0 ? "right side" : "left side") : y < 0 ? "back" : "front";
  return `Lying on its ${under}, ${x !== 0 ? side : end} towards you${from}`;
}
