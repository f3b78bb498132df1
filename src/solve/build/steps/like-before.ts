/** What is done again as it was a few steps before is not told again word for word. */
import type { StepDraft } from "./draft.ts";

/** Farther back a reader has turned several pages. */
const BACK = 6;
/** Sentences that have to be the same. */
const SAME = 0.6;

/** Counts are told in each: so many fasteners are at hand for it. */
const COUNTS = /(?:^|[.,] )(?:Drive|Push in|Turn in|Use|Staple|Glue in) \d+ /u;

/** Steps in the order of work: what differs from the first of them that is like it, and what is counted. */
export function likeBefore(drafts: readonly StepDraft[]): readonly StepDraft[] {
  return drafts.map((draft, i) => {
    const place = firstLike(drafts, i);
    if (place === null) return draft;
    const before = drafts[place] as StepDraft;
    const own = draft.text.filter((text) => !before.text.includes(text) || COUNTS.test(text));
    return {
      ...draft,
      text: [own.length > 0 ? `Do as in step ${place + 1}, but for this:` : `Do as in step ${place + 1}.`, ...own],
      reminders: draft.reminders.filter((text) => !before.reminders.includes(text)),
    };
  });
}

function firstLike(drafts: readonly StepDraft[], i: number): number | null {
  const draft = drafts[i] as StepDraft;
  const found = drafts.findIndex(
    (other, k) =>
      k < i && k >= i - BACK && other.title === draft.title && other.kind === draft.kind && isLike(other, draft),
  );
  return found < 0 ? null : found;
}

const isLike = ({ text: before }: StepDraft, { text }: StepDraft): boolean =>
  // A list belongs to the sentence above it.
  !text.some((each) => each.startsWith("– ")) &&
  text.length > 1 &&
  text.filter((each) => before.includes(each)).length >= SAME * text.length;
