/** How a part goes in that no straight way lets in. */

import type { Leg } from "../../../build.ts";
import { faceOf, INDICES } from "../../../design/space.ts";
import { tiltOf } from "../../order/tilt.ts";

/** `along`: how it comes in at first. */
export function tiltText(legs: readonly Leg[], what: string): readonly string[] {
  const tilt = tiltOf(legs);
  const first = legs.find((leg) => "along" in leg && leg.distance === null);
  if (!tilt || !first || !("along" in first)) return [];
  const axis = INDICES.find((i) => Math.abs(first.along[i]) > 0.7) ?? 1;
  const side = faceOf(axis, first.along[axis] < 0);
  const lower = tilt.lift > 0 ? ", and lower it into its place" : "";
  const aside = tilt.aside ? " beside what stands in its way, move it behind that" : "";
  return [
    `No straight way lets ${what} in. Raise one end until it slopes about ${Math.round(tilt.degrees)}°, pass it in from the ${side}${aside}, level it${lower}. It comes out the same way.`,
  ];
}
