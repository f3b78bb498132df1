/** Doors with glass are hung, fitted and taken off without it: it goes in on the bench when all is finished, in one round. */
import type { Action } from "../../../build.ts";
import { glazingOf } from "../../order/glazing.ts";
import type { StepDraft, Work } from "../draft.ts";
import { unitsOf } from "../moves.ts";

type Known = Pick<Work, "design" | "plan">;

/** Ids of panes, and of the beads over them, in what comes off for the finish, and in the piece where nothing but that comes after them. */
export function glazedLastOf({ design, plan }: Known): ReadonlySet<string> {
  const off = new Set(plan.removable.flatMap(({ parts }) => parts));
  const last = inThePieceLast({ design, plan }, off);
  return new Set(glazingOf(design).filter((id) => off.has(id) || last.has(id)));
}

/** Glass that goes into the piece when all that stays on it is on. */
function inThePieceLast({ design, plan }: Known, off: ReadonlySet<string>): ReadonlySet<string> {
  const glazing = new Set(glazingOf(design));
  const moves = unitsOf(plan).findLast(({ name }) => name === "piece")?.moves ?? [];
  const comesLast = ({ arriving }: (typeof moves)[number]): boolean =>
    arriving.every((id) => off.has(id) || glazing.has(id));
  const until = moves.findLastIndex((move) => !comesLast(move)) + 1;
  return new Set(moves.slice(until).flatMap(({ arriving }) => arriving.filter((id) => !off.has(id))));
}

export interface Glazed {
  /** The steps of joining without those that put the glass in: by what they show and do, it is not there yet. */
  readonly joined: readonly StepDraft[];
  /** The latter, which come when the finish is hard. */
  readonly glazing: readonly StepDraft[];
}

export function glazedLast(work: Work, drafts: readonly StepDraft[]): Glazed {
  const last = glazedLastOf(work);
  if (last.size === 0) return { joined: drafts, glazing: [] };
  const isGlazing = ({ actions }: StepDraft): boolean => {
    const added = actions.flatMap((action) => (action.do === "add" ? action.parts : []));
    return added.length > 0 && added.every((id) => last.has(id));
  };
  return {
    joined: drafts.filter((draft) => !isGlazing(draft)).map((draft) => without(last, draft)),
    glazing: drafts.filter(isGlazing),
  };
}

/** A step as it is while some parts are not there yet: they are made, but brought nowhere. */
export function without(ids: ReadonlySet<string>, draft: StepDraft): StepDraft {
  const rest = (all: readonly string[]): readonly string[] => all.filter((id) => !ids.has(id));
  const { actions, shows } = draft;
  const brings = actions.some((action) => action.do === "add" || action.do === "remove");
  const there = (action: Action): Action =>
    action.do === "add"
      ? { ...action, parts: rest(action.parts), to: rest(action.to) }
      : action.do === "remove"
        ? { ...action, parts: rest(action.parts), from: rest(action.from) }
        : action;
  return {
    ...draft,
    actions: actions.map(there),
    shows: {
      ...shows,
      present: rest(shows.present),
      ...(brings && {
        fresh: rest(shows.fresh),
        travel: shows.travel.map((each) => ({ ...each, parts: rest(each.parts) })),
      }),
    },
  };
}
