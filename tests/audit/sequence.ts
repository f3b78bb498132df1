/** Promise 3: blanks, features, holes and glue, each once and in time. */
import { count, type Model } from "./model.ts";
import { type Replay, together } from "./moments.ts";
import type { Action, Part } from "./record.ts";
import { type Violations, violation } from "./violation.ts";

export function* sequence(model: Model, replay: Replay): Violations {
  const actions = replay.moments.map((moment) => moment.action);
  yield* order(model);
  yield* made(model, actions);
  for (const part of model.record.parts) yield* machined(model, part, actions);
  yield* glued(model, replay);
}

function* order({ record: { steps } }: Model): Violations {
  for (const [i, step] of steps.entries()) {
    const before = steps.slice(0, i).map((earlier) => earlier.number);
    if (
      before.some((number) => number >= step.number) ||
      ![...step.after, ...step.afterWait].every((n) => before.includes(n))
    )
      yield violation("steps are in order", `step ${step.number}`, `stands after ${before.join(" ")}`);
  }
}

/** The first action that does something to a part, past making its blank. */
const firstUse = (actions: readonly Action[], part: string): number =>
  actions.findIndex((action) =>
    action.do === "add"
      ? action.parts.includes(part)
      : (action.do === "machine" || action.do === "band") && action.part === part,
  );
const firstAdd = (actions: readonly Action[], part: string): number =>
  actions.findIndex((action) => action.do === "add" && action.parts.includes(part));

function* made({ record }: Model, actions: readonly Action[]): Violations {
  for (const blank of record.blanks) {
    const times = actions.flatMap((action, i) =>
      action.do === "make" ? action.blanks.map((id) => [id, i] as const) : [],
    );
    const when = times.filter(([id]) => id === blank.id).map(([, i]) => i);
    const uses = [blank.part, ...blank.alsoParts].map((part) => firstUse(actions, part)).filter((i) => i >= 0);
    if (when.length !== 1 || uses.some((use) => use < (when[0] ?? 0)))
      yield violation("blank is made once and first", blank.id, `is made ${when.length} times`);
  }
}

function* machined({ record }: Model, part: Part, actions: readonly Action[]): Violations {
  const done = actions.flatMap((action, i) =>
    action.do === "machine" && action.part === part.id ? [{ ...action, i }] : [],
  );
  const added = firstAdd(actions, part.id);
  const bench = (hole: number) => record.holes[hole]?.atBench === true;
  const inPlace = (i: number): boolean => {
    const feature = part.features[i];
    return feature !== undefined && "inPlace" in feature && feature.inPlace;
  };
  for (const { features, holes, i } of done)
    if (added >= 0 && i > added && (!features.every(inPlace) || holes.some(bench)))
      yield violation("part is machined before it is added", part.id, "is shaped or bored when it is built in");
  if (done.some(({ features, i }) => features.some(inPlace) && (added < 0 || i < added)))
    yield violation("part is machined before it is added", part.id, "is slotted in place before it is there");
  const [features, holes] = [done.flatMap((action) => action.features), done.flatMap((action) => action.holes)];
  for (const i of part.features.keys())
    if (count(features, i) !== 1)
      yield violation("features and holes are made once", part.id, `feature ${i} is made ${count(features, i)} times`);
  for (const [i, hole] of record.holes.entries())
    if (hole.part === part.id && count(holes, i) !== 1)
      yield violation("features and holes are made once", part.id, `hole ${i} is made ${count(holes, i)} times`);
}

/** Glue is spread in the step in which the joint closes: before it the parts are apart, after it together. */
function* glued({ record }: Model, { moments }: Replay): Violations {
  for (const joint of record.joints) {
    const times = moments.filter(({ action }) => action.do === "glue" && action.joints.includes(joint.id));
    const closes = times.every(({ step, later }) => {
      const first = moments.find((moment) => moment.step === step);
      return together(later, joint.parts) && !together(first?.bodies ?? [], joint.parts);
    });
    if (times.length !== (joint.glue ? 1 : 0) || !closes)
      yield violation("joint is glued once, in time", joint.id, `is glued ${times.length} times`);
    const held = moments.filter(({ action }) => action.do === "clamp" && action.joints.includes(joint.id));
    if (!held.every(({ later }) => together(later, joint.parts)))
      yield violation("joint is glued once, in time", joint.id, "is clamped before it is together");
  }
}
