/** What is held only by something that leans is proved by no square and has no diagonals: the room between its arms is the same at both ends. */
import { equal, sign } from "../../../../units/rational.ts";
import type { Sticks } from "../../../build.ts";
import { INDICES, indexOf, roomAlong } from "../../../design/space.ts";
import type { Joint, Part } from "../../../design.ts";
import { isHeld, jointsAmong } from "../case-sides.ts";
import { definite, type Work } from "../draft.ts";

/** What is held apart while the glue sets. `joints`: those of a glue-up; `ids`: all that is together after it. */
export function sticksFor(work: Work, joints: readonly Joint[], ids: readonly string[]): readonly Sticks[] {
  const glued = joints.filter(({ glue }) => glue);
  const leaning = [...new Set(glued.flatMap(({ parts }) => parts))].map(work.part).filter(({ turned }) => turned);
  return leaning.flatMap(({ id }) => {
    const arms = glued
      .filter(({ parts }) => parts.includes(id))
      .map(({ parts }) => work.part(parts.find((each) => each !== id) ?? id));
    return arms.flatMap((a, i) => arms.slice(i + 1).flatMap((b) => sticksBetween(work, a, b, ids)));
  });
}

function sticksBetween(work: Work, a: Part, b: Part, ids: readonly string[]): readonly Sticks[] {
  const along = indexOf(a.axes.length);
  if (a.turned || b.turned || indexOf(b.axes.length) !== along || isHeld(a, b, jointsAmong(work, ids))) return [];
  const axis = INDICES.find((i) => i !== along && sign(roomAlong(a.body, b.body, i)) > 0);
  return axis === undefined ? [] : [{ between: [a.id, b.id], axis }];
}

/** What lies ready before there is glue. */
export const sticksText = (work: Work, { between, axis }: Sticks): string =>
  `Cut two sticks ${clearOf(work, between, axis)} long, which hold ${definite(work, between)} apart.`;

const clearOf = (work: Work, between: Sticks["between"], axis: Sticks["axis"]): string => {
  const [a, b] = between.map(work.part) as [Part, Part];
  return work.print(roomAlong(a.body, b.body, axis));
};

export function clearText(work: Work, { between, axis }: Sticks): readonly string[] {
  const [a, b] = between.map(work.part) as [Part, Part];
  const along = indexOf(a.axes.length);
  const size = clearOf(work, between, axis);
  const inLine = equal(a.body.low[along], b.body.low[along]) && equal(a.body.high[along], b.body.high[along]);
  return [
    `Before the clamps go on hold one of the two sticks between ${definite(work, between)} at each end: pressed on what leans, they turn. Set a clamp beside each joint.`,
    `Measure between them at both ends: ${size}, the same at both${inLine ? ", and the ends of the two in line" : ""}. Shift them until it is so, before the glue grabs.`,
  ];
}
