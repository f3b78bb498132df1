/** The frames at the ends of a deep one that are closed with it: the two sides of a table between its legs. */
import { toNumber } from "../../../units/rational.ts";
import { type AxisIndex, enclosing, faceOf, INDICES } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import type { Work } from "./draft.ts";
import { isClosed, type Square, squareOf } from "./square.ts";

/** Those that were closed in none of the `bodies` that are joined; not what is seen along `thin`, nor what lies on the bench. */
export function endFrames(
  work: Work,
  { bodies, after }: { readonly bodies: readonly (readonly string[])[]; readonly after: readonly string[] },
  { thin, up }: { readonly thin: AxisIndex; readonly up: Direction },
): readonly Square[] {
  const { low, high } = after.map((id) => work.part(id).body).reduce(enclosing);
  return INDICES.filter((axis) => axis !== thin).flatMap((axis) => {
    const middle = (toNumber(low[axis]) + toNumber(high[axis])) / 2;
    return [false, true].flatMap((far): readonly Square[] => {
      const isIn = (id: string): boolean => {
        const { body } = work.part(id);
        return far ? toNumber(body.low[axis]) > middle : toNumber(body.high[axis]) < middle;
      };
      if (up[axis] !== 0 && up[axis] > 0 !== far) return [];
      if (bodies.some((own) => isClosed(work, own.filter(isIn), axis))) return [];
      const square = squareOf(work, after.filter(isIn), { up, anyway: true, along: [axis], far });
      return square ? [{ ...square, on: faceOf(axis, far) }] : [];
    });
  });
}
