/** Doors and drawers are cut and put together when what they go into stands, so that its openings can be measured; so is a body of which a part is. */

import { isCutLater } from "../../design/making/plain.ts";
import type { StepDraft, Work } from "./draft.ts";
import { type Entering, enteringOf, type Opening, openingsOf } from "./openings.ts";
import { measuredElsewhere } from "./shut-between.ts";
import { addedIn, firstTogether } from "./touched.ts";
import type { Fitted } from "./words/opening.ts";

/** Parts that are cut together: of one thing that goes in, all that is put together before it does; what is put on it afterwards waits for that. */
export interface Group extends Fitted {
  readonly kind: Entering["kind"];
  /** Put on when it is in its opening: the front of a drawer. */
  readonly onIt: boolean;
}

/** In the order of work: the steps of joining, and the groups of parts that wait. */
export interface Ordered {
  readonly drafts: readonly StepDraft[];
  readonly groups: readonly Group[];
}

const partsOf = ({ actions }: Pick<StepDraft, "actions">): readonly string[] =>
  actions.flatMap((action) => (action.do === "add" ? [...action.parts, ...action.to] : []));

/** Steps that make something that goes into an opening are moved to right before the first that uses what they make. */
export function afterOpenings(work: Work, given: readonly StepDraft[]): Ordered {
  const entering = enteringOf(work).filter(({ kind }) => kind !== "rests");
  const moving = new Set([...entering.flatMap(({ moves }) => moves), ...measuredElsewhere(work).flat()]);
  const standing = new Set<string>();
  let held: readonly StepDraft[] = [];
  const moved = given.flatMap((draft) => {
    const ids = partsOf(draft);
    if (ids.every((id) => moving.has(id) && !standing.has(id))) {
      held = [...held, draft];
      return [];
    }
    const used = usedBy(ids, held);
    for (const id of [...ids, ...used.flatMap(partsOf)]) standing.add(id);
    held = held.filter((each) => !used.includes(each));
    return [...used, draft];
  });
  const drafts = [...moved, ...held];
  return { drafts, groups: groupsIn(work, drafts) };
}

/** Of the steps held back, those that make some parts, and what those are made of. */
function usedBy(ids: readonly string[], held: readonly StepDraft[]): readonly StepDraft[] {
  const wanted = new Set(ids);
  const used = new Set<StepDraft>();
  for (const draft of held.toReversed()) {
    const own = partsOf(draft);
    if (!own.some((id) => wanted.has(id))) continue;
    used.add(draft);
    for (const id of own) wanted.add(id);
  }
  return held.filter((draft) => used.has(draft));
}

/** By what goes in, and by whether a part is put on before or after it does. Steps in the order of work. */
export function groupsIn(
  work: Pick<Work, "design" | "motions" | "part">,
  steps: readonly Pick<StepDraft, "actions">[],
): readonly Group[] {
  const all = enteringOf(work);
  const loose = new Set(all.flatMap(({ moves }) => moves));
  const placeOf = new Map<string, number>();
  for (const [i, { actions }] of steps.entries())
    for (const id of addedIn(actions)) if (!placeOf.has(id)) placeOf.set(id, i);
  return all.flatMap((entering) => {
    const own = new Set(entering.moves);
    const goesIn = steps
      .map(partsOf)
      .findIndex((ids) => ids.some((id) => own.has(id)) && ids.some((id) => !loose.has(id)));
    const waiting = entering.moves.filter((id) => placeOf.has(id) && isCutLater(work.part(id)));
    const isOnIt = (id: string): boolean => goesIn >= 0 && (placeOf.get(id) ?? 0) > goesIn;
    return [false, true].flatMap((onIt): readonly Group[] => {
      const parts = waiting.filter((id) => isOnIt(id) === onIt).map(work.part);
      return parts.length === 0
        ? []
        : [{ kind: entering.kind, onIt, parts, openings: openingsOf(work, all, entering, { parts, onIt }) }];
    });
  });
}

/** The groups that are cut when some parts are needed: with theirs all alike whose openings can be measured by then. */
export function cutWith(
  ids: readonly string[],
  groups: readonly Group[],
  before: readonly StepDraft[],
): readonly Group[] {
  const open = groups.filter(({ openings }) => openings.length > 0);
  const own = open.filter(({ parts }) => parts.some(({ id }) => ids.includes(id)));
  const isAlike = ({ kind, onIt, openings }: Group): boolean =>
    kind !== "rests" &&
    own.some((one) => one.kind === kind && one.onIt === onIt) &&
    firstTogether(boundsOf(openings), before) !== null;
  return open.filter((group) => own.includes(group) || isAlike(group));
}

/** Ids of the parts that bound openings. */
export const boundsOf = (openings: readonly Opening[]): readonly string[] => [
  ...new Set(openings.flatMap(({ bounds }) => bounds)),
];
