/** Wishes as what comes before what, where nothing that must be is against them. */
import type { Finding } from "../../../../findings/finding.ts";
import { namesNoStep } from "../../../../findings/rules/names-no-step.ts";
import { wishImpossible } from "../../../../findings/rules/wish-impossible.ts";
import type { Subject, Wish } from "../../../design/model/wish.ts";
import { saidOf } from "../../order/wishes.ts";
import type { StepDraft, Work } from "../draft.ts";
import { givesShape } from "../machining.ts";
import { type Before, lagOf } from "../precedence.ts";
import { stepsAbout } from "./about.ts";

interface Sequenced {
  readonly before: readonly Before[];
  readonly findings: readonly Finding[];
}

/** `before`: what must be; `touched`: the parts of each step. */
export function withWishes(
  work: Work,
  drafts: readonly StepDraft[],
  before: readonly Before[],
  touched: readonly ReadonlySet<string>[],
): Sequenced {
  const findings: Finding[] = [];
  let all = before;
  for (const wish of work.design.wishes ?? []) {
    const lost = subjectsOf(wish).filter((each) => stepsAbout(work, drafts, each).length === 0);
    findings.push(...lost.map(({ at, said }) => namesNoStep(at, { said })));
    const kept = keep(work, pairsOf(work, drafts, wish, all), drafts, all);
    if ("next" in kept) {
      const [first = "", next = ""] = wordsOf(wish);
      const parts = [...(touched[kept.next] ?? [])].filter((id) => touched[kept.first]?.has(id)).slice(0, 5);
      findings.push(wishImpossible(wish.at, { first, next, because: "needed", parts }));
    } else all = kept.before;
  }
  return { before: all, findings };
}

function subjectsOf(wish: Wish): readonly Subject[] {
  if (wish.kind === "before") return [...wish.first, ...wish.next];
  if (wish.kind === "first" || wish.kind === "last" || wish.kind === "one step") return wish.what;
  if (wish.kind === "own step") return [wish.what];
  return wish.kind === "title" ? [wish.step] : [];
}

function wordsOf(wish: Wish): readonly string[] {
  if (wish.kind === "before") return [saidOf(wish.first), saidOf(wish.next)];
  return wish.kind === "first" || wish.kind === "last" ? [saidOf(wish.what), "the rest"] : [];
}

type Pair = Omit<Before, "lag">;

/** What the wish wants to be before what. */
function pairsOf(work: Work, drafts: readonly StepDraft[], wish: Wish, before: readonly Before[]): readonly Pair[] {
  const about = (subjects: readonly Subject[]): readonly number[] => [
    ...new Set(subjects.flatMap((each) => stepsAbout(work, drafts, each))),
  ];
  if (wish.kind === "before") {
    const following = about(wish.next);
    return about(wish.first).flatMap((first) => following.flatMap((i) => (i === first ? [] : [{ first, next: i }])));
  }
  if (wish.kind !== "first" && wish.kind !== "last") return [];
  const own = about(wish.what);
  const early = wish.kind === "first";
  const bound = reached(own, before, early);
  const others = drafts.flatMap((_, i) => (bound.has(i) ? [] : [i]));
  return own.flatMap((a) => others.map((b) => (early ? { first: a, next: b } : { first: b, next: a })));
}

/** The steps and all that must come before them (or after). */
export function reached(from: readonly number[], before: readonly Before[], back: boolean): ReadonlySet<number> {
  const all = new Set(from);
  for (const i of all)
    for (const { first, next } of before) if ((back ? next : first) === i) all.add(back ? first : next);
  return all;
}

/** All pairs added; or the first that what must be is against, as the step that must come first and the one that comes right after it. */
function keep(
  work: Work,
  pairs: readonly Pair[],
  drafts: readonly StepDraft[],
  before: readonly Before[],
): { readonly before: readonly Before[] } | Pair {
  let all = before;
  for (const pair of pairs) {
    const { first, next } = pair;
    // Two cuts in one part may be made the other way round.
    const free = all.filter((each) => !(each.first === next && each.next === first && isSoft(work, drafts, each)));
    if (reached([next], free, false).has(first)) {
      const against = free.find((each) => each.first === next && reached([each.next], free, false).has(first));
      return against ?? { first: next, next: first };
    }
    const draft = drafts[first];
    const lag = draft ? lagOf(draft, drafts[next]) : 0;
    all = all.some((each) => each.first === first && each.next === next) ? free : [...free, { ...pair, lag }];
  }
  return { before: all };
}

/** Both are work on single parts at the bench, and neither gives a part the shape after which nothing can be set out. */
function isSoft(work: Work, drafts: readonly StepDraft[], { first, next }: Pair): boolean {
  const machines = (i: number): boolean => {
    const { actions } = drafts[i] as StepDraft;
    return actions.length > 0 && actions.every((action) => action.do === "machine" && !givesShape(work, action));
  };
  return machines(first) && machines(next);
}
