/** What the maker adds to the steps: dry fits, titles, and words for the reader. */
import type { Finding } from "../../../../findings/finding.ts";
import { namesNoStep } from "../../../../findings/rules/names-no-step.ts";
import type { Note, Wish } from "../../../design/model/wish.ts";
import { listed, type StepDraft, type Work } from "../draft.ts";
import { step } from "../making-step.ts";
import { bodyWords, theBody } from "../words/bodies.ts";
import { stepsAbout } from "./about.ts";

/** Minutes for each part of a dry fit (common practice, no source). */
const MINUTES = 3;

/** Steps with what the maker says of them; notes that no step is about are told. */
export function withWords(
  work: Work,
  drafts: readonly StepDraft[],
): { readonly drafts: readonly StepDraft[]; readonly findings: readonly Finding[] } {
  const { wishes = [], notes = [] } = work.design;
  const findings: Finding[] = [];
  const all = [...wishes.reduce((so, wish) => dryFitted(work, so, wish), drafts)];
  for (const { about, say, tip, caution } of notes) {
    const found = changed(work, all, about, (draft) => ({
      ...draft,
      text: [...draft.text, ...(say ? [say] : [])],
      reminders: [...draft.reminders, ...(tip ? [tip] : [])],
      cautions: [...draft.cautions, ...(caution ? [caution] : [])],
    }));
    if (!found) findings.push(namesNoStep(about.at, { said: about.said }));
  }
  return { drafts: all, findings };
}

/** The first step about something changed in its place; whether there is one. */
function changed(work: Work, all: StepDraft[], about: Note["about"], by: (draft: StepDraft) => StepDraft): boolean {
  const [place] = stepsAbout(work, all, about);
  const draft = place === undefined ? undefined : all[place];
  if (place !== undefined && draft !== undefined) all[place] = by(draft);
  return draft !== undefined;
}

/** Titles of the maker's, when it is known which steps there are. Those of no step were told before. */
export function withTitles(work: Work, drafts: readonly StepDraft[]): readonly StepDraft[] {
  const all = [...drafts];
  for (const wish of work.design.wishes ?? [])
    if (wish.kind === "title") changed(work, all, wish.step, (draft) => ({ ...draft, title: wish.title }));
  return all;
}

/** Right before the first step in which any of the parts is glued. */
function dryFitted(work: Work, drafts: readonly StepDraft[], wish: Wish): readonly StepDraft[] {
  if (wish.kind !== "dry fit") return drafts;
  const { parts, check } = wish;
  const at = drafts.findIndex(
    ({ kind, actions }) =>
      kind === "glue-up" &&
      actions.some((action) => action.do === "add" && action.parts.some((id) => parts.includes(id))),
  );
  if (at < 0) return drafts;
  const name = bodyWords(parts);
  const what = name === null ? listed(work, parts) : theBody(name);
  const dry = step(
    "check",
    `Try ${what} dry`,
    [
      `Put ${what} together without glue, with the clamps that the glue-up will need, and draw every joint up.`,
      ...(check ? [`Check: ${check.replace(/\.$/, "")}.`] : []),
      "Mark which joint belongs where, and take it apart again. What does not close now will not close with glue on it.",
    ],
    [],
    { unit: `dry fit ${parts[0]}`, bench: parts.length * MINUTES, cautions: [], fresh: parts },
  );
  return drafts.toSpliced(at, 0, dry);
}
