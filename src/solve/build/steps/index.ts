import type { Step } from "../../build.ts";
import type { StepDraft, Work } from "./draft.ts";
import { joiningSteps, stepToken } from "./joining.ts";
import { makingSteps } from "./making.ts";
import { pluggingSteps } from "./plugging.ts";
import { toolsFor } from "./tools.ts";

export type { Work } from "./draft.ts";

/** The steps, numbered, each knowing what must be done before it; and the tools that they use. */
export function stepsOf(work: Work): { readonly steps: readonly Step[]; readonly tools: ReturnType<typeof toolsFor> } {
  const drafts = withoutRepeats([...makingSteps(work), ...joiningSteps(work), ...pluggingSteps(work)]);
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
  const done = steps.map((step, i) => ({ ...step, after: after[i] ?? [] }));
  return { steps: done, tools: toolsFor(work, done) };
}

/** A caution stands where a kind of work begins, not again in each step of a run. */
const withoutRepeats = (drafts: readonly StepDraft[]): readonly StepDraft[] =>
  drafts.map((draft, i) => {
    const before = drafts[i - 1]?.cautions ?? [];
    return { ...draft, cautions: draft.cautions.filter((caution) => !before.includes(caution)) };
  });

function partsOf(work: Work, step: StepDraft): ReadonlySet<string> {
  const blanks = new Map(work.blanks.map((blank) => [blank.id, blank.part]));
  return new Set(
    step.actions.flatMap((action): readonly string[] => {
      if (action.do === "make") return action.blanks.flatMap((id) => blanks.get(id) ?? []);
      if (action.do === "machine") return [action.part];
      return action.do === "add" ? [...action.parts, ...action.to] : [];
    }),
  );
}
