/** A case that falls over when what hangs on it is opened, as long as nothing holds it: told where it is opened. */
import { centroid } from "../../../geometry/index.ts";
import { toNumber } from "../../../units/rational.ts";
import { type AxisIndex, faceOf } from "../../design/space.ts";
import type { Pose } from "../../design.ts";
import type { BuiltMotion } from "../model/motion.ts";
import { moveOf } from "../motions/move.ts";
import { hangsOn, onPins } from "../order/links.ts";
import { boxOf, lowestOf } from "./box-of.ts";
import { definite, type StepDraft, series, type Work } from "./draft.ts";
import { STANDING } from "./lying.ts";
import { ON_BENCH } from "./resting.ts";
import { afterAction, type Bodies } from "./touched.ts";
import { theBody } from "./words/bodies.ts";
import { movingName } from "./words/moving.ts";

/** The weight lies so far inside of what it stands on, of the depth of that: opened with a jerk it still stands. Common practice, no source. */
const SAFE = 0.15;

/** Steps in the order of work, those that open it with a caution each, but for one right after another. */
export function withCautionsOpen(work: Work, drafts: readonly StepDraft[]): readonly StepDraft[] {
  const swinging = work.motions.filter(({ kind }) => kind !== "slide");
  let bodies: Bodies = [];
  let before: readonly string[] = [];
  let held = false;
  return drafts.map((draft) => {
    bodies = draft.actions.reduce(afterAction, bodies);
    // From then on it is tied to its wall or hangs there.
    held ||= draft.inTheRoom === true;
    if (held || draft.up[2] !== 1) return draft;
    const told = bodies.flatMap((each): readonly string[] => {
      const body = [...each];
      const own = swinging.filter(({ moves }) => moves.some((id) => each.has(id)));
      const side = own.some((motion) => opens(draft, motion, body)) ? fallsTo(work, body, own) : null;
      return side === null ? [] : [textOf(work, body, own, side)];
    });
    const now = told.filter((each) => !before.includes(each));
    before = told;
    return now.length === 0 ? draft : { ...draft, cautions: [...now, ...draft.cautions] };
  });
}

/** Whether something that moves is hung in a step, or something is fixed in what it shuts. */
function opens({ actions }: StepDraft, { moves }: BuiltMotion, body: readonly string[]): boolean {
  const others = body.filter((id) => !moves.includes(id));
  return actions.some(
    (action) =>
      (action.do === "add" &&
        action.parts.some((id) => moves.includes(id)) &&
        action.to.some((id) => others.includes(id))) ||
      (action.do === "fit" && others.length > 0 && action.to.some((id) => others.includes(id))),
  );
}

/** The side to which the weight of some parts lies beyond what they stand on, all open that is there; null where it stays. */
function fallsTo(work: Work, ids: readonly string[], open: readonly BuiltMotion[]): string | null {
  const lowest = toNumber(lowestOf(work, ids, STANDING));
  const feet = ids.map((id) => boxOf(work.part(id))).filter(({ low }) => toNumber(low[2]) < lowest + ON_BENCH);
  const kg = ids.reduce((so, id) => so + work.mass(id), 0);
  for (const i of [1, 0] as const) {
    const low = Math.min(...feet.map((box) => toNumber(box.low[i])));
    const high = Math.max(...feet.map((box) => toNumber(box.high[i])));
    const safe = SAFE * (high - low);
    const shut = ids.reduce((so, id) => so + work.mass(id) * centroid(work.part(id).solid)[i], 0) / kg;
    // Each where it pulls the most to that side.
    const pulled = (most: (...values: number[]) => number): number =>
      open.reduce(
        (so, motion) => so + most(...motion.poses.map((pose) => shift(work, ids, motion, pose, i))) / kg,
        shut,
      );
    if (pulled(Math.min) < low + safe) return faceOf(i, false);
    if (pulled(Math.max) > high - safe) return faceOf(i, true);
  }
  return null;
}

/** By how much the weight of what moves is shifted along an axis, in kg and units of length. */
function shift(work: Work, ids: readonly string[], { moves }: BuiltMotion, pose: Pose, i: AxisIndex): number {
  const open = moveOf(pose);
  return ids
    .filter((id) => moves.includes(id))
    .reduce((so, id) => {
      const middle = centroid(work.part(id).solid);
      return so + work.mass(id) * (open.point(middle)[i] - middle[i]);
    }, 0);
}

function textOf(work: Work, body: readonly string[], open: readonly BuiltMotion[], side: string): string {
  const names = open.map(({ moves }) => {
    const ids = work.design.parts.map(({ id }) => id).filter((id) => moves.includes(id));
    const words = movingName(work, ids);
    return words === null ? definite(work, ids) : theBody(words);
  });
  const until = work.design.joints.some(hangsOn)
    ? ", until it hangs on its wall"
    : work.design.fittings.some(({ hardware: [first] }) => first?.item.kind === "wall strap")
      ? ", until it is tied to its wall"
      : "";
  const is = names.length > 1 ? "they are" : "it is";
  // What lies on pins would fall.
  const laid = body.some((id) => onPins(work.design).has(id)) ? "" : "lay it on its back, ";
  return `With ${series(names)} open a touch tips the case over to the ${side}${until}: ${laid}clamp it to the bench${laid ? "," : ""} or let a second person hold it before ${is} opened.`;
}
