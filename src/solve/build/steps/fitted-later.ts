/** A tenon is fitted to its mortise, a tongue to its groove: where that is cut later, in a part whose size is not known before, it is fitted then. */
import type { Action } from "../../build.ts";
import type { Feature } from "../../design.ts";
import { listed, type StepDraft, type Work } from "./draft.ts";
import { wordsOf } from "./sentence.ts";
import { FITTING } from "./words/features.ts";

/** What goes into what, how both are called, and how it goes. */
const PAIRS = [
  { goes: "tenon", into: "mortise", these: "tenons", those: "mortises", so: "slide in with the push of a hand" },
  { goes: "tongue", into: "groove", these: "tongues", those: "grooves", so: "slide without force" },
  { goes: "tail", into: "dovetail housing", these: "tails", those: "housings", so: "slide in with the push of a hand" },
  { goes: "cheek", into: "bridle", these: "cheeks", those: "bridles", so: "slide in with the push of a hand" },
] as const;

interface Cut {
  readonly joint: string;
  readonly part: string;
}

/** Steps in the order of work. */
export function fittedLater(work: Work, drafts: readonly StepDraft[]): readonly StepDraft[] {
  return PAIRS.reduce<readonly StepDraft[]>((all, pair) => {
    const goes = all.map((draft) => cutIn(work, draft, pair.goes));
    const into = all.map((draft) => cutIn(work, draft, pair.into));
    const placeOf = new Map(into.flatMap((cuts, i) => cuts.map(({ joint }) => [joint, i] as const)));
    const waiting = goes.map((cuts, i) => cuts.filter(({ joint }) => (placeOf.get(joint) ?? i) > i));
    return all.map((draft, i) => {
      const own = waiting[i] ?? [];
      const waited = waiting.slice(0, i).flat();
      const receiving = (into[i] ?? []).filter(({ joint }) => waited.some((each) => each.joint === joint));
      return told(work, draft, {
        pair,
        left: own.length === 0 ? [] : into.flat().filter(({ joint }) => own.some((each) => each.joint === joint)),
        fitted: into.flat().filter(({ joint }) => holds(goes[i], joint) && !holds(own, joint)),
        comes: waited.filter(({ joint }) => receiving.some((each) => each.joint === joint)),
      });
    });
  }, drafts);
}

interface Told {
  readonly pair: (typeof PAIRS)[number];
  /** What is cut later to receive what is cut now. */
  readonly left: readonly Cut[];
  /** What was cut before to receive the rest of it. */
  readonly fitted: readonly Cut[];
  /** What was cut before, and is received by what is cut now. */
  readonly comes: readonly Cut[];
}

function told(work: Work, draft: StepDraft, { pair, left, fitted, comes }: Told): StepDraft {
  const parts = (cuts: readonly Cut[]): string => listed(work, [...new Set(cuts.map(({ part }) => part))]);
  const fits = FITTING[pair.goes] ?? [];
  const one = left.length === 1;
  const [them, they] = one ? ["it", "it is"] : ["them", "they are"];
  const receiving = one ? pair.into : pair.those;
  const cut = one ? "is cut" : "are cut";
  const all = fitted.length === 0;
  const waits = all
    ? `Leave ${them} a little thick: ${they} fitted when the ${receiving} in ${parts(left)} ${cut}.`
    : `Leave ${one ? "that" : "those"} for ${parts(left)} a little thick: ${they} fitted when the ${receiving} there ${cut}.`;
  const text =
    left.length === 0
      ? draft.text
      : draft.text.flatMap((each) =>
          fits.includes(wordsOf(each))
            ? all
              ? [waits]
              : [fitsOf(fitted.length, parts(fitted), wordsOf(each)), waits]
            : [each],
        );
  const few = comes.length === 1;
  const now = `Fit the ${few ? pair.goes : pair.these} of ${parts(comes)} to the ${few ? pair.into : pair.those} now: ${few ? "it" : "they"} should ${pair.so}.`;
  return comes.length === 0 ? { ...draft, text } : { ...draft, text: [...text, now] };
}

/** "Fit that for the leg (A): it should slide in": of some of what is cut, in the words for all of it. */
const fitsOf = (count: number, what: string, told: string): string => {
  const how = told.slice(told.indexOf(":") + 1).trim();
  return `Fit ${count === 1 ? `that for ${what}: ${how}` : `those for ${what}: ${how.replace(/^it /u, "each ")}`}`;
};

const holds = (cuts: readonly Cut[] | undefined, joint: string): boolean =>
  cuts?.some((each) => each.joint === joint) === true;

/** By joint, the features of a kind that a step cuts. */
const cutIn = (work: Work, { actions }: StepDraft, kind: Feature["kind"]): readonly Cut[] =>
  actions.flatMap((action: Action) =>
    action.do !== "machine"
      ? []
      : action.features.flatMap((i) => {
          const feature = work.part(action.part).features[i];
          return feature?.kind === kind && "for" in feature && feature.for !== null
            ? [{ joint: feature.for, part: action.part }]
            : [];
        }),
  );
