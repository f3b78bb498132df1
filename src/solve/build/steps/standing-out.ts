/** Dowels that a glue-up leaves standing out for a later one, just where clamps press. */

import type { Length } from "../../../units/length.ts";
import { less, max, subtract, ZERO } from "../../../units/rational.ts";
import { type AxisIndex, INDICES } from "../../design/space.ts";
import type { Work } from "./draft.ts";
import type { Move } from "./moves.ts";

/** How far they stand out at most along an axis when these moves are done; zero where there are none. */
export function standingOut(work: Work, moves: readonly Move[], axis: AxisIndex): Length {
  const body = new Set(moves.flatMap(({ present, arriving }) => [...present, ...arriving]));
  const open = work.design.joints.filter(
    ({ method, parts }) =>
      method === "dowels" && parts.some((id) => body.has(id)) && !parts.every((id) => body.has(id)),
  );
  return open
    .flatMap(({ id }) => work.plan.chosen.get(id)?.fasteners ?? [])
    .filter(({ travelsWith, direction }) => travelsWith !== null && body.has(travelsWith) && direction[axis] !== 0)
    .map(({ id, travelsWith, length }) => {
      const hole = work.plan.holes.find((each) => each.for === id && each.part === travelsWith);
      const past = subtract(length, hole?.stages.at(-1)?.depth ?? ZERO);
      return less(past, ZERO) ? ZERO : past;
    })
    .reduce(max, ZERO);
}

/** "Dowels stand out 15/16 in for what comes later": what the clamps press on then. */
export function blockText(work: Work, moves: readonly Move[]): readonly string[] {
  const past = INDICES.map((axis) => standingOut(work, moves, axis)).reduce(max, ZERO);
  return past.n === 0n
    ? []
    : [
        `Dowels stand out up to ${work.print(past)} for what comes later: clamp there over blocks that are thicker than that and have holes bored for them, so that nothing presses on a dowel.`,
      ];
}
