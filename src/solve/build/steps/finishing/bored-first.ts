/** Holes of what is put on at the wall that are bored on the bench: while the wood is bare, before it has its finish and its hardware. */
import type { Action } from "../../../build.ts";
import type { StepDraft } from "../draft.ts";

/** What is told of them is told in the step of finishing that comes first of those of the same part; where none does it stays where it is. */
export function boredFirst(drafts: readonly StepDraft[]): readonly StepDraft[] {
  const all = [...drafts];
  for (const [i, { ahead, ...rest }] of drafts.entries()) {
    const bored = rest.actions.filter(isAhead);
    const at = all.findIndex(
      (each, j) => j < i && each.kind === "finish" && bored.some(({ part }) => treats(each, part)),
    );
    const first = all[at];
    if (!ahead || !first) continue;
    all[at] = {
      ...first,
      ...{ text: [ahead.before, ...first.text], actions: [...bored, ...first.actions] },
      bench: first.bench + MINUTES * bored.reduce((sum, { holes }) => sum + holes.length, 0),
    };
    const [text, actions] = [
      rest.text.filter((each) => each !== ahead.now),
      rest.actions.filter((each) => !isAhead(each)),
    ];
    all[i] = { ...rest, text, actions };
  }
  return all;
}

/** To bore a hole. Common practice, no source. */
const MINUTES = 3;

type Machine = Extract<Action, { readonly do: "machine" }>;
const isAhead = (action: Action): action is Machine => action.do === "machine" && action.ahead !== undefined;

/** Whether a part is sanded or gets its coats in a step. */
const treats = ({ of = [], actions }: StepDraft, part: string): boolean =>
  of.includes(part) || actions.some((action) => action.do === "finish" && action.parts.includes(part));
