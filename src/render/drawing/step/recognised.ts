/** Whether lines show a shape: a corner, a step or a tenon, not only what runs on to both sides. */
import { heading } from "../ink.ts";
import type { Segment } from "../plate.ts";

/** A body that is seen aslant shows its three directions; a corner of a face, two. */
export const [BODY, CORNER] = [3, 2];
/** Two are the same where they lie so near, as the sine of the angle between them. */
const SAME = 0.17;

/** Whether there are so many directions, and so much of each. */
export function isShape(lines: readonly Segment[], directions: number, least: number): boolean {
  const found: { readonly along: readonly [number, number]; length: number }[] = [];
  for (const line of lines) {
    const { along, distance } = heading(...line);
    const same = found.find((each) => Math.abs(each.along[0] * along[1] - each.along[1] * along[0]) < SAME);
    if (same) same.length += distance;
    else if (distance > 0) found.push({ along: [along[0], along[1]], length: distance });
  }
  return found.filter(({ length }) => length >= least).length >= directions;
}
