/** What is done again as it was a few steps before, or as its mirror image, is not told again word for word. */
import type { CutLine } from "../../build.ts";
import { type StepDraft, series } from "./draft.ts";
import { isEven, type Likeness, likenessOf, MIRRORS, type Mirror, withoutNames } from "./likeness.ts";
import { reworded, type Sentence, tells, wordsOf } from "./sentence.ts";
import { MIDWAY } from "./words/measured.ts";

/** Farther back a reader has turned several pages. */
const BACK = 6;
/** Share of the sentences that have to be the same. */
const SAME = 0.6;
/** Where parts stand for others: share of the letters that this saves, and how many at least. */
const HALF = 0.45;
const WORTH = 160;

/** Steps in the order of work: what differs from one told in full that is like it, and what is counted. */
export function likeBefore(
  drafts: readonly StepDraft[],
  lines: readonly Pick<CutLine, "mark" | "name">[] = [],
  shownMirrored: Shown = () => null,
): readonly StepDraft[] {
  const bare = withoutNames(lines);
  const names = new Map(
    lines.map(({ mark, name }) => [mark, `the ${name.charAt(0).toLowerCase()}${name.slice(1)} (${mark})`]),
  );
  const sort = new Map(lines.map(({ mark, name }) => [mark, name.toLowerCase().split(" ").at(-1)]));
  const kin = (mark: string, other: string): boolean => sort.get(mark) === sort.get(other);
  const inFull = new Set<number>();
  const told = drafts.map((draft, i): StepDraft => {
    const found = firstLike(drafts, i, { inFull, bare, kin, shownMirrored });
    if (found === null) {
      inFull.add(i);
      return draft;
    }
    const { place, like } = found;
    const before = drafts[place] as StepDraft;
    const other = like.own.flat();
    const always = (when: "first" | "last") =>
      draft.text.filter((text) => tells(text, "everyTime") === when && !other.includes(text));
    const own = [...always("first"), ...other, ...always("last")];
    const head = `${isSame(like) ? "Do as in" : "As"} step ${place + 1}${instead(like, names, before.text)}`;
    return {
      ...draft,
      like: place + 1,
      text: [`${head}.${like.differs ? " The rest of this step tells what is not the same here." : ""}`, ...own],
      reminders: draft.reminders.filter((text) => !before.reminders.includes(text)),
    };
  });
  return told.map((draft) => ({
    ...draft,
    text: draft.text.map((text) => reworded(text, (words) => words.replaceAll(MIDWAY, ""))),
  }));
}

/** ", mirrored (left and right change places), with the right side (H) in place of the left side (G); the back (F) as there" */
function instead(like: Likeness, names: ReadonlyMap<string, string>, text: readonly Sentence[]): string {
  if (isSame(like)) return "";
  const called = (mark: string): string => names.get(mark) ?? mark;
  const others = [...like.pairs].filter(([from, to]) => from !== to);
  const isSwap = ([from, to]: readonly [string, string]): boolean => like.pairs.get(to) === from;
  const told = others.flatMap((pair) => {
    const [from, to] = pair;
    if (isSwap(pair)) return from < to ? [`${called(from)} and ${called(to)} in each other's place`] : [];
    return [`${called(to)} in place of ${called(from)}`];
  });
  // What is told in every step names its parts by itself.
  const alike = text.filter((each) => !tells(each, "everyTime"));
  const words = alike.map(wordsOf).join(" ").replaceAll(CUT_FOR, "");
  const same = [...like.pairs]
    .filter(([from, to]) => from === to && words.includes(`(${from})`))
    .map(([mark]) => called(mark));
  const sides = like.mirror ? `, mirrored (${like.mirror.join(" and ")} change places)` : "";
  const parts = told.length > 0 ? `, with ${told.join(", ")}` : "";
  return `${sides}${parts}${same.length > 0 ? `${told.length > 0 ? ";" : ","} ${series(same)} as there` : ""}`;
}

/** By what a cut is named: that is not there yet. */
const CUT_FOR = / for (?:the|two|three|four) [^()]*\([A-Z]+\)/gu;

const isSame = ({ mirror, pairs }: Likeness): boolean =>
  mirror === null && [...pairs].every(([from, to]) => from === to);

/** Whether a step is the mirror image of another, what is in the other's place told by `pairs` of their marks. */
type Shown = (before: StepDraft, now: StepDraft, pairs: ReadonlyMap<string, string>) => Mirror;

interface Looking {
  readonly inFull: ReadonlySet<number>;
  readonly bare: ReturnType<typeof withoutNames>;
  /** Whether a part is of the same sort as another, by their marks. */
  readonly kin: (mark: string, other: string) => boolean;
  readonly shownMirrored: Shown;
}

function firstLike(
  drafts: readonly StepDraft[],
  i: number,
  { inFull, bare, kin, shownMirrored }: Looking,
): { readonly place: number; readonly like: Likeness } | null {
  const { kind, title, text } = drafts[i] as StepDraft;
  const all = text.map(wordsOf).join(" ").length;
  for (let place = Math.max(0, i - BACK); place < i; place++) {
    const before = drafts[place] as StepDraft;
    if (before.kind !== kind || !inFull.has(place) || text.length < 2) continue;
    const likes = MIRRORS.flatMap((mirror) => likenessOf(before, { title, text }, mirror, bare) ?? []);
    const [found] = likes.sort((a, b) => b.saved - a.saved);
    if (!found) continue;
    const like = inMirror(found, before, { title, text }, bare, () =>
      shownMirrored(before, drafts[i] as StepDraft, found.pairs),
    );
    const enough = isSame(like)
      ? title === before.title && like.share >= SAME
      : like.saved >= WORTH && like.saved >= HALF * all && [...like.pairs].every(([from, to]) => kin(from, to));
    if (enough) return { place, like };
  }
  return null;
}

/** Words that name no side, or both alike, are the same in the mirror. */
function inMirror(
  like: Likeness,
  before: Pick<StepDraft, "title" | "text">,
  now: Pick<StepDraft, "title" | "text">,
  bare: Looking["bare"],
  shown: () => Mirror,
): Likeness {
  if (like.mirror !== null) return like;
  const mirror = shown();
  const words = [...before.text, ...now.text].map((text) => bare(wordsOf(text)).words);
  return mirror !== null && words.every((text) => isEven(text, mirror)) ? { ...like, mirror } : like;
}
