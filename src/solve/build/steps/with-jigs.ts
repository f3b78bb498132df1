/** Each step names the jigs and patterns that it uses. */
import type { Jig, Uses } from "../model/jig.ts";
import type { Pattern } from "../model/pattern.ts";
import { capital, type StepDraft, type Work } from "./draft.ts";

export function withJigs({ jigs, patterns }: Work, drafts: readonly StepDraft[]): readonly StepDraft[] {
  if (jigs.length + patterns.length === 0) return drafts;
  return drafts.map((draft) => {
    const uses = usedIn(draft);
    const [made, traced] = [jigs.filter((jig) => uses(jig.uses)), patterns.filter((pattern) => uses(pattern.uses))];
    if (made.length + traced.length === 0) return draft;
    const told = [
      ...made.filter(({ id }) => !draft.text.some((text) => new RegExp(`\\b${id}\\b`, "i").test(text))).map(jigText),
      ...traced.flatMap(patternText),
    ];
    return { ...draft, jigs: [...made, ...traced].map(({ id }) => id), text: [...draft.text, ...told] };
  });
}

/** Whether a step bores, cuts or places what something is for. */
const usedIn = ({ actions }: StepDraft) => {
  const holes = new Set<number>();
  const features = new Set<string>();
  const parts = new Set<string>();
  for (const action of actions) {
    if (action.do === "add") for (const id of action.parts) parts.add(id);
    if (action.do !== "machine") continue;
    for (const i of action.holes) holes.add(i);
    for (const i of action.features) features.add(`${action.part} ${i}`);
  }
  return (uses: Uses): boolean =>
    uses.holes.some((i) => holes.has(i)) ||
    uses.features.some((each) => features.has(each)) ||
    uses.parts.some((id) => parts.has(id));
};

const jigText = ({ id, what, laid }: Jig): string =>
  laid === "between" ? `${capital(id)} is as thick as the gap.` : `${capital(id)} sets out the holes for ${what}.`;

/** Holes that are not in their true size stand with their measures in the drawing of the part as well: that is beside the step. */
const patternText = (pattern: Pattern): readonly string[] => {
  const { id, full } = pattern;
  if (pattern.of === "curve" && pattern.outline.every(({ is }) => is === "line"))
    return [full ? `${capital(id)} is the taper in its true size.` : `What a taper jig is set to stands with ${id}.`];
  if (pattern.of === "curve")
    return [full ? `${capital(id)} is the curve in its true size, to trace.` : `Points of the curve stand with ${id}.`];
  return full ? [`${capital(id)} has the holes for the ${pattern.kind} in their true size.`] : [];
};
