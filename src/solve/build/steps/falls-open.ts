/** A case that falls over when what hangs on it is opened, as long as nothing holds it: told where it is opened. */
import { centroid, type Vec } from "../../../geometry/index.ts";
import { toNumber } from "../../../units/rational.ts";
import { type AxisIndex, faceOf } from "../../design/space.ts";
import type { Pose } from "../../design.ts";
import type { BuiltMotion } from "../model/motion.ts";
import { moveOf } from "../motions/move.ts";
import { hangsOn } from "../order/links.ts";
import { boxOf, lowestOf } from "./box-of.ts";
import { definite, type StepDraft, type Work } from "./draft.ts";
import { STANDING } from "./lying.ts";
import { ON_BENCH } from "./resting.ts";
import { afterAction, type Bodies } from "./touched.ts";
import { bodyWords, movingWords, theBody } from "./words/bodies.ts";

/** The weight lies so far inside of what it stands on, of the depth of that: opened with a jerk it still stands. Common practice, no source. */
const SAFE = 0.1;

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
    const told = swinging.flatMap((motion) => {
      const body = [...(bodies.find((each) => motion.moves.some((id) => each.has(id))) ?? [])];
      const side = opens(draft, motion, body) ? fallsTo(work, body, motion) : null;
      return side === null ? [] : [textOf(work, motion, side)];
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

/** The side to which the weight of some parts lies beyond what they stand on, one of them open; null where it stays. */
function fallsTo(work: Work, ids: readonly string[], { moves, poses }: BuiltMotion): string | null {
  const lowest = toNumber(lowestOf(work, ids, STANDING));
  const feet = ids.map((id) => boxOf(work.part(id))).filter(({ low }) => toNumber(low[2]) < lowest + ON_BENCH);
  const kg = ids.reduce((so, id) => so + work.mass(id), 0);
  const weight = (pose: Pose, i: AxisIndex): number => {
    const open = moveOf(pose);
    const at = (id: string): Vec => {
      const middle = centroid(work.part(id).solid);
      return moves.includes(id) ? open.point(middle) : middle;
    };
    return ids.reduce((so, id) => so + work.mass(id) * at(id)[i], 0) / kg;
  };
  for (const i of [1, 0] as const) {
    const low = Math.min(...feet.map((box) => toNumber(box.low[i])));
    const high = Math.max(...feet.map((box) => toNumber(box.high[i])));
    const safe = SAFE * (high - low);
    const all = poses.map((pose) => weight(pose, i));
    if (Math.min(...all) < low + safe) return faceOf(i, false);
    if (Math.max(...all) > high - safe) return faceOf(i, true);
  }
  return null;
}

function textOf(work: Work, { moves }: BuiltMotion, side: string): string {
  const ids = work.design.parts.map(({ id }) => id).filter((id) => moves.includes(id));
  const words = bodyWords(ids) ?? movingWords(ids, work.design.joints);
  const what = words === null ? definite(work, ids) : theBody(words);
  const until = work.design.joints.some(hangsOn)
    ? ", until it hangs on its wall"
    : work.design.fittings.some(({ hardware: [first] }) => first?.item.kind === "wall strap")
      ? ", until it is tied to its wall"
      : "";
  return `With ${what} open the case tips over to the ${side}${until}: lay it on its back, clamp it to the bench, or let a second person hold it before ${what} is opened.`;
}
