/** Which parts each step has in hand: those that it names, and all that hangs on them by then. */
import type { Action } from "../../build.ts";
import type { StepDraft, Work } from "./draft.ts";

export type Bodies = readonly ReadonlySet<string>[];

/** Parts that come to others, or begin a body. */
export const addedIn = (actions: readonly Action[]): readonly string[] =>
  actions.flatMap((action) => (action.do === "add" ? action.parts : []));

/** Bodies after an action. */
export function afterAction(bodies: Bodies, action: Action): Bodies {
  if (action.do === "remove") {
    const gone = new Set(action.parts);
    const left = bodies.map((body) => new Set([...body].filter((id) => !gone.has(id))));
    return [...left, gone].filter((body) => body.size > 0);
  }
  if (action.do !== "add") return bodies;
  const named = [...action.parts, ...action.to];
  const touched = bodies.filter((body) => named.some((id) => body.has(id)));
  const whole = new Set([...touched.flatMap((body) => [...body]), ...action.parts]);
  return [...bodies.filter((body) => !touched.includes(body)), whole];
}

/** The place of the first step after which some parts are in one body; null where none is. */
export function firstTogether(ids: readonly string[], steps: readonly Pick<StepDraft, "actions">[]): number | null {
  if (ids.length === 0) return null;
  let bodies: Bodies = [];
  for (const [place, { actions }] of steps.entries()) {
    bodies = actions.reduce(afterAction, bodies);
    if (bodies.some((body) => ids.every((id) => body.has(id)))) return place;
  }
  return null;
}

/** By step, in the order given. */
export function touchedBy(work: Work, drafts: readonly StepDraft[]): readonly ReadonlySet<string>[] {
  const blanks = new Map(work.blanks.map((blank) => [blank.id, [blank.part, ...(blank.alsoParts ?? [])]]));
  const named = (action: Action): readonly string[] => {
    if (action.do === "make") return action.blanks.flatMap((id) => blanks.get(id) ?? []);
    if (action.do === "machine" || action.do === "band") return [action.part];
    if (action.do === "fit") return action.to;
    if (action.do === "add") return [...action.parts, ...action.to];
    return action.do === "remove" || action.do === "finish" ? action.parts : [];
  };
  let bodies: Bodies = [];
  return drafts.map(({ actions, shows }) => {
    const seen = [...shows.present, ...shows.fresh];
    // Steps that are told for the first of several alike.
    const alike = actions.length === 0 && shows.present.length === 0 ? seen.flatMap((id) => work.line(id).parts) : seen;
    const ids = new Set([...alike, ...actions.flatMap(named)]);
    const held = (id: string): readonly string[] => [...(bodies.find((body) => body.has(id)) ?? [])];
    // Before the step and after it: what is taken off was in hand as well.
    const before = [...ids].flatMap(held);
    bodies = actions.reduce(afterAction, bodies);
    return new Set([...ids, ...before, ...[...ids].flatMap(held)]);
  });
}
