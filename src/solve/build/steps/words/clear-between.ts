/** What is held only by something that leans is proved by no square and has no diagonals: the room between its arms is the same at both ends. */
import { equal, less, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, INDICES, indexOf } from "../../../design/space.ts";
import type { Joint, Part } from "../../../design.ts";
import { isHeld, jointsAmong } from "../case-sides.ts";
import { definite, type Work } from "../draft.ts";

/** `joints`: those of a glue-up; `ids`: all that is together after it. */
export function clearTexts(work: Work, joints: readonly Joint[], ids: readonly string[]): readonly string[] {
  const glued = joints.filter(({ glue }) => glue);
  const leaning = [...new Set(glued.flatMap(({ parts }) => parts))].map(work.part).filter(({ turned }) => turned);
  return leaning.flatMap(({ id }) => {
    const arms = glued
      .filter(({ parts }) => parts.includes(id))
      .map(({ parts }) => work.part(parts.find((each) => each !== id) ?? id));
    return arms.flatMap((a, i) => arms.slice(i + 1).flatMap((b) => clearText(work, a, b, ids)));
  });
}

function clearText(work: Work, a: Part, b: Part, ids: readonly string[]): readonly string[] {
  const along = indexOf(a.axes.length);
  if (a.turned || b.turned || indexOf(b.axes.length) !== along || isHeld(a, b, jointsAmong(work, ids))) return [];
  const apart = INDICES.find((i) => i !== along && roomAlong(a, b, i).n > 0n);
  if (apart === undefined) return [];
  const size = work.print(roomAlong(a, b, apart));
  const inLine = equal(a.body.low[along], b.body.low[along]) && equal(a.body.high[along], b.body.high[along]);
  return [
    `Before the clamps go on cut two sticks ${size} long, and hold one between ${definite(work, [a.id, b.id])} at each end: pressed on what leans, they turn. Set a clamp beside each joint.`,
    `Measure between them at both ends: ${size}, the same at both${inLine ? ", and the ends of the two in line" : ""}. Shift them until it is so, before the glue grabs.`,
  ];
}

const roomAlong = ({ body: one }: Part, { body: other }: Part, axis: AxisIndex) =>
  less(one.low[axis], other.low[axis])
    ? subtract(other.low[axis], one.high[axis])
    : subtract(one.low[axis], other.high[axis]);
