import type { Step } from "../../build.ts";
import { isCutLater } from "../../design/making/plain.ts";
import { bandingSteps } from "./banding.ts";
import { type CutAfter, cutAfter } from "./cut-after.ts";
import { type StepDraft, stepToken, type Work } from "./draft.ts";
import { fittingSteps, flushSteps, type Made } from "./fitting.ts";
import { flatteningSteps, gluingUpSteps } from "./gluing-up.ts";
import { hardwareSteps, inHandStep } from "./hardware.ts";
import { jigSteps } from "./jigs.ts";
import { joiningSteps } from "./joining.ts";
import { machiningSteps } from "./machining.ts";
import { millingSteps } from "./milling.ts";
import { pluggingSteps } from "./plugging.ts";
import { sawingSteps } from "./sawing.ts";
import { toolsFor } from "./tools.ts";

export type { Work } from "./draft.ts";

export interface Steps extends CutAfter {
  readonly steps: readonly Step[];
  readonly tools: ReturnType<typeof toolsFor>;
}

/** The steps, numbered, each knowing what must be done before it; and the tools that they use. */
export function stepsOf(work: Work): Steps {
  const drafts = withoutRepeats([
    ...inHandStep(work),
    ...makingSteps(work),
    ...puttingTogether(work),
    ...pluggingSteps(work),
    ...hardwareSteps(work),
  ]);
  const lastOf = new Map(drafts.map((draft, i) => [stepToken(draft.unit), `step ${i + 1}`]));
  const named = (text: string): string => text.replace(/\{step of [^}]*\}/g, (token) => lastOf.get(token) ?? token);
  const steps = drafts.map(
    (draft, i): Step => ({
      number: i + 1,
      ...draft,
      title: named(draft.title),
      text: draft.text.map(named),
      after: [],
    }),
  );
  const touched = steps.map((step) => partsOf(work, step));
  // The last earlier step that had any of the same parts in hand: what came before that is behind it.
  const after = steps.map((_, i) => {
    const last = new Map<string, number>();
    for (const [j, ids] of touched.slice(0, i).entries()) for (const id of ids) last.set(id, j + 1);
    return [...new Set([...(touched[i] ?? [])].flatMap((id) => last.get(id) ?? []))].sort((a, b) => a - b);
  });
  const fits = cutAfter(work, steps);
  const done = steps.map((step, i) => {
    const stands = fits.later.filter((cut) => cut.step === step.number).flatMap((cut) => cut.after ?? []);
    return { ...step, after: [...new Set([...(after[i] ?? []), ...stands])].sort((a, b) => a - b) };
  });
  return { steps: done, tools: toolsFor(work, done), ...fits };
}

/** From boards and sheets to finished parts, but for those that are cut to the piece. */
function makingSteps(work: Work): readonly StepDraft[] {
  const now = work.cutList.filter((line) => !isCutLater(work.part(line.parts[0] as string)));
  return [
    ...sawingSteps(work),
    ...gluingUpSteps(work),
    ...millingSteps(work),
    ...flatteningSteps(work),
    ...bandingSteps(work, now),
    ...jigSteps(work),
    ...machiningSteps(work, now),
  ];
}

/** Each step of joining, after what is cut for it and before what is trimmed. */
function puttingTogether(work: Work): readonly StepDraft[] {
  const made: Made = { parts: new Set(), blanks: new Set() };
  return joiningSteps(work).flatMap((step) => [...fittingSteps(work, step, made), step, ...flushSteps(work, step)]);
}

/** A caution stands where a kind of work begins, not again in each step of a run. */
const withoutRepeats = (drafts: readonly StepDraft[]): readonly StepDraft[] =>
  drafts.map((draft, i) => {
    const before = drafts[i - 1]?.cautions ?? [];
    return { ...draft, cautions: draft.cautions.filter((caution) => !before.includes(caution)) };
  });

function partsOf(work: Work, step: StepDraft): ReadonlySet<string> {
  const blanks = new Map(work.blanks.map((blank) => [blank.id, [blank.part, ...(blank.alsoParts ?? [])]]));
  if (step.actions.length === 0) return new Set(step.shows.fresh.flatMap((id) => work.line(id).parts));
  return new Set(
    step.actions.flatMap((action): readonly string[] => {
      if (action.do === "make") return action.blanks.flatMap((id) => blanks.get(id) ?? []);
      if (action.do === "machine" || action.do === "band") return [action.part];
      if (action.do === "fit") return action.to;
      return action.do === "add" ? [...action.parts, ...action.to] : [];
    }),
  );
}
