/** How a part that is mitred at both ends is cut to what it lies against, or to what it lies on when it is shut: no figure for its length is as good. */
import { less } from "../../../../units/rational.ts";
import { INDICES, unit } from "../../../design/space.ts";
import type { Between, Direction, Part } from "../../../design.ts";
import { called, type Work } from "../draft.ts";
import { calledAmong } from "./by-place.ts";

export function mitredText(work: Work, part: Part, { parts: [low, high], flush }: Between): string {
  const own = called(work, part.id);
  if (flush)
    return `Saw one mitre of the ${own}; lay it on the ${called(work, low)} as it lies there in the piece, the points of both flush, and mark its other point where that ends. Saw the other mitre there.`;
  const [from, to] =
    low === high
      ? [`one end of the ${called(work, low)}`, "its other end"]
      : [low, high].map((id) => `the outer face of the ${calledAmong(work, id, [low, high])}`);
  return `Saw one mitre; hold the piece in its place, the heel of that mitre (its inner corner) at ${from}, and mark the heel of the other where it comes to ${to}. Saw that mitre there.`;
}

/** From what a part ends flush with towards it: so the work lies while it is laid there; null for what is not cut so. */
export function flushUp({ part: partOf }: Work, part: Part, between: readonly Between[] = []): Direction | null {
  const own = between.find(({ flush }) => flush);
  if (!own) return null;
  const on = partOf(own.parts[0]);
  const axis = INDICES.find(
    (i) => !less(part.body.low[i], on.body.high[i]) || !less(on.body.low[i], part.body.high[i]),
  );
  return axis === undefined ? null : unit(axis, less(part.body.low[axis], on.body.high[axis]) ? -1 : 1);
}

/** How it is tried; null for what is not cut so. */
export function mitreTried(between: readonly Between[] = []): string | null {
  if (between.some(({ flush }) => flush))
    return "Saw the second mitre a little over at first, lay it on again, and take off what is left until it is flush at both points.";
  return between.some(({ round }) => round)
    ? "Saw the second mitre a little over at first, try the piece in its place, and take off what is left until the heels of both are where they should be."
    : null;
}
