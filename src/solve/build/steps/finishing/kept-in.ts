/** Loose shelves that the finished piece does not let out one after another: they have their coats before they go in. */
import { fastIds, onPins } from "../../order/links.ts";
import type { StepDraft, Work } from "../draft.ts";

type Known = Pick<Work, "design" | "plan">;

/** Ids of what lies on pins and stays in, with what is fixed to it. */
export function keptIn({ design, plan }: Known): ReadonlySet<string> {
  const off = new Set(plan.removable.flatMap(({ parts }) => parts));
  const pinned = onPins(design);
  return new Set(
    fastIds(design)
      .filter((ids) => ids.some((id) => pinned.has(id) && !off.has(id)))
      .flat(),
  );
}

/** Ids of the pins that are in when the piece is finished: their holes are shut. */
export function pinsIn({ design, plan }: Known): ReadonlySet<string> {
  const shelves = keptIn({ design, plan });
  const joints = design.joints.filter(({ method, parts: [id] }) => method === "shelf pins" && shelves.has(id));
  return new Set(joints.flatMap(({ id }) => plan.chosen.get(id)?.fasteners ?? []).map(({ id }) => id));
}

/** Those of them that a step brings to something else. */
export function goingIn(work: Known, { actions }: Pick<StepDraft, "actions">): readonly string[] {
  const shelves = keptIn(work);
  const ids = actions.flatMap((action) => (action.do === "add" ? [...action.parts, ...action.to] : []));
  return ids.every((id) => shelves.has(id)) ? [] : ids.filter((id) => shelves.has(id));
}
