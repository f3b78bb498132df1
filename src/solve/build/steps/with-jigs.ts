/** Each step names the jigs and patterns that it uses. */
import { equal } from "../../../units/rational.ts";
import { acrossGap } from "../../design/joinery/touch.ts";
import type { Jig, Uses } from "../model/jig.ts";
import type { Pattern } from "../model/pattern.ts";
import { capital, listed, type StepDraft, type Work } from "./draft.ts";
import { tells, wordsOf } from "./sentence.ts";

export function withJigs(work: Work, drafts: readonly StepDraft[]): readonly StepDraft[] {
  const { jigs, patterns } = work;
  if (jigs.length + patterns.length === 0) return drafts;
  return drafts.map((draft) => {
    const uses = usedIn(draft);
    const holds = (jig: Jig): boolean => jig.laid !== "between" || keptApart(work, jig, draft) !== null;
    const [made, traced] = [
      jigs.filter((jig) => uses(jig.uses) && holds(jig)),
      patterns.filter((pattern) => uses(pattern.uses)),
    ];
    if (made.length + traced.length === 0) return draft;
    const untold = made.filter(
      ({ id }) => !draft.text.some((text) => new RegExp(`\\b${id}\\b`, "i").test(wordsOf(text))),
    );
    const [apart, others] = [true, false].map((is) =>
      untold.filter(({ laid }) => (laid === "between") === is).map((jig) => jigText(work, jig, draft)),
    ) as [string[], string[]];
    // A spacer is laid between when the part is placed, before anything is driven.
    const at = draft.text.findLastIndex((text) => tells(text, "brings")) + 1 || draft.text.length;
    return {
      ...draft,
      jigs: [...made, ...traced].map(({ id }) => id),
      text: [...draft.text.slice(0, at), ...apart, ...draft.text.slice(at), ...others, ...traced.flatMap(patternText)],
    };
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

function jigText(work: Work, jig: Jig, draft: StepDraft): string {
  const { id, what, laid, width } = jig;
  const apart = laid === "between" ? keptApart(work, jig, draft) : null;
  return apart
    ? `Leave ${work.print(width)} between ${listed(work, apart)}: ${id} is as thick.`
    : `${capital(id)} sets out the holes for ${what}.`;
}

/** Of what a spacer holds apart: a part that comes in this step and one that stands beside it by then, as far from it as the spacer is thick; else null. */
function keptApart(work: Work, { uses, width }: Jig, { actions, shows }: StepDraft): readonly [string, string] | null {
  const come = actions.flatMap((action) => (action.do === "add" ? action.parts : []));
  const there = [...shows.present, ...shows.fresh, ...come];
  const beside = (a: string, b: string): boolean => {
    const touch = a === b ? null : acrossGap(work.part(a).body, work.part(b).body);
    return touch?.kind === "faces" && equal(touch.gap, width);
  };
  const among = (ids: readonly string[]): readonly string[] => uses.parts.filter((id) => ids.includes(id));
  for (const id of among(come)) {
    const mate = among(there).find((other) => beside(id, other));
    if (mate) return [id, mate];
  }
  return null;
}

/** Holes that are not in their true size stand with their measures in the drawing of the part as well: that is beside the step. */
const patternText = (pattern: Pattern): readonly string[] => {
  const { id, full } = pattern;
  if (pattern.of === "curve" && pattern.outline.every(({ is }) => is === "line"))
    return [full ? `${capital(id)} is the taper in its true size.` : `What a taper jig is set to stands with ${id}.`];
  if (pattern.of === "curve")
    return [full ? `${capital(id)} is the curve in its true size, to trace.` : `Points of the curve stand with ${id}.`];
  return full ? [`${capital(id)} has the holes for the ${pattern.kind} in their true size.`] : [];
};
