/** Which steps a wish or note is about. */
import type { Action } from "../../../build.ts";
import type { Subject } from "../../../design/model/wish.ts";
import type { StepDraft, Work } from "../draft.ts";
import { PUT_ON_AGAIN } from "../finishing/taking-off.ts";
import { BOARDS } from "../making-step.ts";
import { SHAPES } from "./own-key.ts";

type Test = (work: Work, draft: StepDraft, has: (id: string) => boolean) => boolean;

const does = (draft: StepDraft, test: (action: Action) => boolean): boolean => draft.actions.some(test);

/** Parts that a step is about, or of which it shows the first. */
export const shown = (work: Work, { of, shows }: StepDraft): readonly string[] =>
  of ?? shows.fresh.flatMap((id) => work.line(id).parts);

const cuts =
  (kinds: readonly string[]): Test =>
  (work, draft, has) =>
    does(
      draft,
      (action) =>
        action.do === "machine" &&
        has(action.part) &&
        ((kinds.includes("hole") && action.holes.length > 0) ||
          action.features.some((i) => kinds.includes(work.part(action.part).features[i]?.kind ?? ""))),
    );

const joins: Test = (_, draft, has) => does(draft, (action) => action.do === "add" && action.parts.some(has));

const VERBS: Readonly<Record<NonNullable<Subject["verb"]>, Test>> = {
  glue: (work, draft, has) => draft.kind === "glue-up" && shown(work, draft).some(has),
  cut: (work, draft, has) =>
    does(
      draft,
      (action) =>
        action.do === "make" &&
        work.blanks.some(
          ({ id, part, alsoParts = [] }) => action.blanks.includes(id) && [part, ...alsoParts].some(has),
        ),
    ),
  // The boards of a slab are not yet the slab.
  plane: (work, draft, has) => draft.kind === "mill" && !draft.unit.endsWith(BOARDS) && shown(work, draft).some(has),
  drill: (work, draft, has) => cuts(["hole"])(work, draft, has),
  join: joins,
  fit: (work, draft, has) =>
    (draft.kind === "fit" && shown(work, draft).some(has)) ||
    does(draft, (action) => action.do === "fit" && action.to.some(has)),
  finish: (_, draft, has) => does(draft, (action) => action.do === "finish" && action.parts.some(has)),
  shape: (work, draft, has) => cuts(SHAPES)(work, draft, has),
  band: (_, draft, has) => does(draft, (action) => action.do === "band" && has(action.part)),
};

/** Places of the steps, in their order; of a part that is put on twice only the first. */
export function stepsAbout(
  work: Work,
  drafts: readonly StepDraft[],
  { verb, cuts: kinds, parts }: Subject,
): readonly number[] {
  const ids = parts && new Set(parts);
  const has = (id: string): boolean => ids === null || ids.has(id);
  const test = kinds ? cuts(kinds) : verb ? VERBS[verb] : joins;
  const found = drafts.flatMap((draft, i) => (test(work, draft, has) ? [i] : []));
  return test === joins ? found.filter((i) => drafts[i]?.unit !== PUT_ON_AGAIN) : found;
}
