/** What must be done before what. */
import type { Action } from "../../build.ts";
import { buttonsBetween } from "./buttons.ts";
import { markedFrom } from "./dowelled.ts";
import type { StepDraft, Work } from "./draft.ts";
import { firstTogether } from "./touched.ts";

/** Places of two steps, and the minutes that pass between them at least. */
export interface Before {
  readonly first: number;
  readonly next: number;
  readonly lag: number;
}

/** Every pair of steps of which the later in the given order cannot come first. */
export function precedence(
  work: Work,
  drafts: readonly StepDraft[],
  touched: readonly ReadonlySet<string>[],
): readonly Before[] {
  const marks = markedBefore(work, drafts);
  const rules: readonly ((first: number, next: number) => boolean)[] = [
    (i, j) => overlap(touched[i] ?? NONE, touched[j] ?? NONE),
    // Sizes follow from the hardware.
    (i) => drafts[i]?.kind === "buy",
    (i, j) => fromOneStock(work, drafts[i], drafts[j]),
    (i, j) => fittedTo(work, drafts[i], drafts[j]),
    marks,
    measuredFirst(drafts),
    // What can still be pushed out of square is not measured for doors.
    (i, j) => holdsAll(drafts[i]?.keeps, drafts[j]?.measures),
    (i, j) => drafts[i]?.unit === JIGS && bores(drafts[j]),
    // Templates are cut from what the layouts leave over.
    (i, j) =>
      drafts[j]?.unit === JIGS && madeOf(work, drafts[i]).some((stock) => work.jigs.some(({ from }) => from === stock)),
    // What is left of a rough board has its thickness when the parts have.
    (i, j) =>
      drafts[j]?.unit === JIGS && drafts[i]?.kind === "mill" && work.jigs.some(({ from }) => from === drafts[i]?.unit),
    (i, j) => buttonsBetween(work, drafts[i], drafts[j]),
    (i, j) => drafts[j]?.inTheRoom === true || drafts[i]?.inTheRoom === true,
  ];
  return drafts.flatMap((_, next) =>
    drafts
      .slice(0, next)
      .flatMap((before, first) =>
        rules.some((rule) => rule(first, next)) ? [{ first, next, lag: lagOf(before, drafts[next]) }] : [],
      ),
  );
}

const NONE: ReadonlySet<string> = new Set();
export const JIGS = "jigs";

const overlap = (a: ReadonlySet<string>, b: ReadonlySet<string>): boolean => [...a].some((id) => b.has(id));

const holdsAll = (body: readonly string[] | undefined, ids: readonly string[] | undefined): boolean =>
  body !== undefined && ids !== undefined && ids.length > 0 && ids.every((id) => body.includes(id));

/** A wait binds what has the same work in hand; that for the full strength of glue only what strains it. */
export function lagOf({ waits }: StepDraft, next: StepDraft | undefined): number {
  return waits.reduce(
    (so, { minutes, binds }) => (binds === undefined || next?.strains === true ? Math.max(so, minutes) : so),
    0,
  );
}

const madeOf = (work: Work, draft: StepDraft | undefined): readonly string[] => {
  const made = new Set(draft?.actions.flatMap((action) => (action.do === "make" ? action.blanks : [])));
  return work.blanks.flatMap(({ id, stock }) => (made.has(id) ? [stock] : []));
};

/** What is cut to fit comes from the sheets and boards that were sawn before. */
const fromOneStock = (work: Work, first: StepDraft | undefined, next: StepDraft | undefined): boolean => {
  const stocks = madeOf(work, first);
  return stocks.length > 0 && madeOf(work, next).some((stock) => stocks.includes(stock));
};

type Machine = Extract<Action, { readonly do: "machine" }>;
const machining = (draft: StepDraft | undefined): readonly Machine[] =>
  draft?.actions.flatMap((action) => (action.do === "machine" ? [action] : [])) ?? [];
const bores = (draft: StepDraft | undefined): boolean => machining(draft).some(({ holes }) => holes.length > 0);

/** Two halves of a joint are cut in the order given: the tenon is fitted to its mortise. */
function fittedTo(work: Work, first: StepDraft | undefined, next: StepDraft | undefined): boolean {
  const joints = (draft: StepDraft | undefined): readonly string[] =>
    machining(draft).flatMap(({ part, features }) => {
      const own = work.part(part).features;
      return features.flatMap((i) => {
        const feature = own[i];
        return feature && "for" in feature && feature.for !== null ? [feature.for] : [];
      });
    });
  const own = new Set(joints(first));
  return own.size > 0 && joints(next).some((id) => own.has(id));
}

/** Holes are bored before others are marked from them, and those are marked before dowels fill them. */
function markedBefore(work: Work, drafts: readonly StepDraft[]): (first: number, next: number) => boolean {
  const joints = new Map(work.plan.fasteners.map(({ id, joint }) => [id, joint]));
  const marked = new Map(markedFrom(work).map((each) => [each.joint.id, each]));
  const bored = drafts.map((draft) => {
    const holes = machining(draft).flatMap((action) => action.holes.flatMap((i) => work.plan.holes[i] ?? []));
    const own = holes.flatMap(({ part, for: id }) => {
      const mating = marked.get(joints.get(id ?? "") ?? "");
      return mating ? [{ joint: mating.joint.id, first: mating.measured === part }] : [];
    });
    const of = (first: boolean) => new Set(own.flatMap((each) => (each.first === first ? [each.joint] : [])));
    return { measured: of(true), met: of(false) };
  });
  const joined = drafts.map(
    ({ actions }) => new Set(actions.flatMap((each) => (each.do === "add" ? [...each.parts, ...each.to] : []))),
  );
  const fills = (next: number, joint: string): boolean => joined[next]?.has(marked.get(joint)?.measured ?? "") === true;
  return (first, next) =>
    overlap(bored[first]?.measured ?? NONE, bored[next]?.met ?? NONE) ||
    [...(bored[first]?.met ?? NONE)].some((joint) => fills(next, joint));
}

/** What is cut to an opening waits for the step in which what bounds that comes to stand together. */
function measuredFirst(drafts: readonly StepDraft[]): (first: number, next: number) => boolean {
  const ready = drafts.map(({ measures }) => (measures ? firstTogether(measures, drafts) : null));
  return (first, next) => ready[next] === first;
}
