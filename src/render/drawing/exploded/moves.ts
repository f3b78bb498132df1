/** How the piece came together: which parts moved into which, and along what. */
import type { Vec } from "../../../geometry/types.ts";
import type { Build, Step } from "../../../solve/build.ts";

export interface Move {
  readonly parts: readonly string[];
  readonly into: readonly string[];
  /** Unit vector of the way home. */
  readonly along: Vec;
}

/** In the order of the work. Where a step writes its actions out they count, since they tell of every copy. */
export function movesOf({ steps }: Pick<Build, "steps">): readonly Move[] {
  const bodies = new Map<string, Set<string>>();
  const bodyOf = (ids: readonly string[]): Set<string> => {
    const body = new Set(ids.flatMap((id) => [...(bodies.get(id) ?? [id])]));
    for (const id of body) bodies.set(id, body);
    return body;
  };
  return steps.flatMap((step) => {
    const written = step.actions.flatMap((action): Move[] => {
      if (action.do !== "add") return [];
      // What was taken off and comes again.
      if (action.to.some((id) => bodies.get(id)?.has(action.parts[0] ?? ""))) return [];
      const moving = [...bodyOf(action.parts)];
      const into = action.to.length === 0 ? [] : [...bodyOf(action.to)];
      bodyOf([...moving, ...into]);
      const straight = action.legs.flatMap((each) => ("along" in each ? [each] : []));
      const leg = straight.find(({ distance }) => distance === null) ?? straight[0];
      return leg && into.length > 0 ? [{ parts: moving, into, along: leg.along }] : [];
    });
    return written.length > 0 ? written : shown(step.shows);
  });
}

/** From what the step's picture shows: each group travels into what was there and the groups before it. */
export function shown(shows: Step["shows"]): Move[] {
  const travelling = new Set(shows.travel.flatMap(({ parts }) => parts));
  const there = [...shows.present, ...shows.fresh].filter((id) => !travelling.has(id));
  return shows.travel.flatMap(({ parts, along }): Move[] => {
    const into = there.filter((id) => !parts.includes(id));
    there.push(...parts);
    return into.length > 0 ? [{ parts, into, along }] : [];
  });
}
