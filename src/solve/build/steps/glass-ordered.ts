/** Glass is ordered as soon as the rabbets that it goes into can be measured: it takes days to come. */
import { glazingOf, panesOf } from "../order/glazing.ts";
import { listed, type StepDraft, series, type Work } from "./draft.ts";
import { type Sentence, sentence } from "./sentence.ts";
import { firstTogether } from "./touched.ts";
import { groupedBy } from "./wishes/own-key.ts";

/** Steps of joining in the order of work; those after which a frame stands say so. */
export function withGlassOrdered(work: Work, drafts: readonly StepDraft[]): readonly StepDraft[] {
  const ready = glassReady(work, drafts);
  return drafts.map((draft, i) => {
    const panes = ready.flatMap(({ pane, place }) => (place === i ? [pane] : []));
    return panes.length === 0 ? draft : { ...draft, text: [...draft.text, orderText(work, panes)] };
  });
}

/** The place of the step after which the frame of each pane stands. */
export function glassReady(work: Work, steps: readonly Pick<StepDraft, "actions">[]) {
  const glazing = new Set(glazingOf(work.design));
  return [...panesOf(work.design)].map((pane) => ({ pane, place: firstTogether(frameOf(work, pane, glazing), steps) }));
}

/** What the rabbets of a pane are cut in. */
const frameOf = ({ design }: Work, pane: string, glazing: ReadonlySet<string>): readonly string[] =>
  design.joints
    .filter(({ method, parts }) => method === "glazed" && parts.includes(pane))
    .flatMap(({ parts }) => parts.filter((id) => id !== pane && !glazing.has(id)));

/** Each pane is ordered by itself, also where the rest is done as in another step. */
function orderText(work: Work, panes: readonly string[]): Sentence {
  const sizes = groupedBy(panes, (id) => work.line(id).mark).map(([id = ""]) => {
    const { width, length } = work.line(id);
    return `${work.print(width)} × ${work.print(length)}`;
  });
  const words = `Now order the glass, for it takes days: ${listed(work, panes)}, ${series(sizes)}. Cut a stick to each size first, and try it in the rabbets at both ends: it should have a little play. Where it has none or too much, order by what the rabbets say.`;
  return sentence(words, { everyTime: "last" });
}
