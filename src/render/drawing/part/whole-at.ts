/** Where a part is drawn whole at a smaller scale rather than broken. */
import { heightOf, widthOf } from "../fit.ts";
import type { Scale } from "../scale.ts";
import type { Arranged } from "./arrange.ts";
import type { Sheet } from "./sheet.ts";

/** So many times as long as wide; and the share of the scale at which it would be broken. */
const SLENDER = 4;
const LEAST_WHOLE = 0.6;

/** Whole at a smaller scale a part is shown better than broken: a slender one at the next, others while it is not much smaller. */
export function wholeAt(
  { face }: Sheet,
  scales: readonly Scale[],
  broken: Arranged,
  at: (scale: Scale) => Arranged | null,
): Arranged | null {
  const slender = widthOf(face.extent) > SLENDER * heightOf(face.extent);
  const near = scales.filter(({ points }, i) => i === 0 || (!slender && points >= LEAST_WHOLE * broken.scale.points));
  for (const scale of near) {
    const set = at(scale);
    if (set && set.along.breaks.length === 0) return set;
  }
  return null;
}
