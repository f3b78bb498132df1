/** Wishes that several steps become one, where nothing has to come between them. */
import type { Finding } from "../../../../findings/finding.ts";
import { notOneStep } from "../../../../findings/rules/not-one-step.ts";
import type { Wish } from "../../../design/model/wish.ts";
import type { StepDraft, Work } from "../draft.ts";
import type { Before } from "../precedence.ts";
import { stepsAbout } from "./about.ts";
import { reached } from "./sequence.ts";

interface Merged {
  readonly drafts: readonly StepDraft[];
  readonly before: readonly Before[];
  readonly findings: readonly Finding[];
}

type OneStep = Extract<Wish, { readonly kind: "one step" }>;

/** `touched`: the parts of each step. What names no step was told before. */
export function inOneStep(
  work: Work,
  drafts: readonly StepDraft[],
  before: readonly Before[],
  touched: readonly ReadonlySet<string>[],
): Merged {
  let all = { drafts, before, touched };
  const findings: Finding[] = [];
  for (const wish of work.design.wishes ?? []) {
    if (wish.kind !== "one step") continue;
    const own = [...new Set(wish.what.flatMap((each) => stepsAbout(work, all.drafts, each)))];
    const against = inTheWay(own, all, wish);
    if (against) findings.push(against);
    else if (own.length > 0) all = merged(own, all, wish);
  }
  return { drafts: all.drafts, before: all.before, findings };
}

interface All {
  readonly drafts: readonly StepDraft[];
  readonly before: readonly Before[];
  readonly touched: readonly ReadonlySet<string>[];
}

function inTheWay(own: readonly number[], { drafts, before, touched }: All, wish: OneStep): Finding | null {
  const what = wish.what.map(({ said }) => said);
  const shared = (a: number, b: number): readonly string[] =>
    [...(touched[a] ?? [])].filter((id) => touched[b]?.has(id)).slice(0, 5);
  const [later, sooner] = [reached(own, before, false), reached(own, before, true)];
  const between = drafts.findIndex((_, i) => !own.includes(i) && later.has(i) && sooner.has(i));
  if (between >= 0) {
    const parts = [...(touched[between] ?? [])].slice(0, 5);
    return notOneStep(wish.at, { what, because: "step", between: titleOf(drafts[between]), parts });
  }
  const wait = before.find(({ first, next, lag }) => lag > 0 && own.includes(first) && own.includes(next));
  if (!wait) return null;
  const dries = drafts[wait.first]?.waits.filter(({ minutes }) => minutes <= wait.lag).at(-1)?.for ?? "";
  return notOneStep(wish.at, { what, because: "wait", between: dries, parts: shared(wait.first, wait.next) });
}

/** Without the number that a step has only later. */
const titleOf = (draft: StepDraft | undefined): string => (draft?.title ?? "").replace(/ from \{step of [^}]*\}/g, "");

function merged(own: readonly number[], { drafts, before, touched }: All, wish: OneStep): All {
  const order = inTurn(own, before);
  const [first = 0] = order;
  const one = together(
    order.flatMap((i) => drafts[i] ?? []),
    wish.title,
  );
  // The others make room, and what came before or after one of them does so with the whole.
  const kept = drafts.flatMap((_, i) => (i !== first && own.includes(i) ? [] : [i]));
  const place = (i: number): number => kept.indexOf(own.includes(i) ? first : i);
  const pairs = new Map<string, Before>();
  for (const each of before) {
    const pair = { first: place(each.first), next: place(each.next), lag: each.lag };
    const known = pairs.get(`${pair.first} ${pair.next}`);
    if (pair.first !== pair.next && (known === undefined || known.lag < pair.lag))
      pairs.set(`${pair.first} ${pair.next}`, pair);
  }
  return {
    drafts: kept.map((i) => (i === first ? one : (drafts[i] as StepDraft))),
    before: [...pairs.values()],
    touched: kept.map((i) =>
      i === first ? new Set(own.flatMap((j) => [...(touched[j] ?? [])])) : (touched[i] ?? new Set()),
    ),
  };
}

/** As the wish lists them, but where one has to come before another. */
function inTurn(own: readonly number[], before: readonly Before[]): readonly number[] {
  const left = [...own];
  const order: number[] = [];
  while (left.length > 0) {
    const ready = left.findIndex((i) => !before.some(({ first, next }) => next === i && left.includes(first)));
    order.push(...left.splice(Math.max(0, ready), 1));
  }
  return order;
}

/** Of several kinds of work the one that asks most care. */
const KINDS: readonly StepDraft["kind"][] = ["glue-up", "join", "fit", "finish", "take-off", "make", "mill", "drill"];

function together(steps: readonly StepDraft[], title: string | undefined): StepDraft {
  const [first, ...more] = steps as [StepDraft, ...StepDraft[]];
  const each = <T>(of: (step: StepDraft) => readonly T[]): readonly T[] => [...new Set(steps.flatMap(of))];
  const fresh = each(({ shows }) => shows.fresh);
  return {
    ...first,
    title: title ?? titles(steps.map((step) => step.title)),
    kind: KINDS.find((kind) => steps.some((step) => step.kind === kind)) ?? first.kind,
    ...(steps.some(({ of }) => of) && { of: each(({ of, shows }) => of ?? shows.fresh) }),
    also: more.flatMap(({ unit, also = [] }) => [unit, ...also]),
    copies: more.every(({ copies }) => copies === first.copies) ? first.copies : 1,
    bench: steps.reduce((so, { bench }) => so + bench, 0),
    waits: each(({ waits }) => waits),
    ...(steps.some(({ clamps }) => clamps) && { clamps: steps.flatMap(({ clamps = [] }) => clamps) }),
    ...(steps.some(({ hands }) => hands) && { hands: 2 as const }),
    ...(steps.some(({ strains }) => strains) && { strains: true as const }),
    ...(steps.some(({ inTheRoom }) => inTheRoom) && { inTheRoom: true as const }),
    text: steps.flatMap(({ text }) => text),
    cautions: each(({ cautions }) => cautions),
    reminders: each(({ reminders }) => reminders),
    actions: steps.flatMap(({ actions }) => actions),
    shows: {
      fresh,
      present: each(({ shows }) => shows.present).filter((id) => !fresh.includes(id)),
      travel: steps.flatMap(({ shows }) => shows.travel),
      fasteners: each(({ shows }) => shows.fasteners),
      ...(first.shows.as && steps.every(({ shows }) => shows.as) && { as: first.shows.as }),
    },
  };
}

/** "Shape two legs (A) and four legs (B)": what begins with the same word says it once. */
function titles(all: readonly string[]): string {
  const [first = "", ...more] = all;
  const verb = /^\S+ /u.exec(first)?.[0] ?? "";
  const rest = more.map((title) =>
    verb !== "" && title.startsWith(verb) ? title.slice(verb.length) : title.charAt(0).toLowerCase() + title.slice(1),
  );
  return [first, ...rest].join(", then ").replace(/, then ([^,]*)$/u, more.length === 1 ? " and $1" : ", then $1");
}
