/** What comes off the finished piece or goes on again, and what is finished beside the rest before it is put to it. */
import type { Vec } from "../../../geometry/types.ts";
import { dot, times } from "../../../geometry/vec.ts";
import type { Build, Step } from "../../../solve/build.ts";
import type { Group } from "./groups.ts";

type Action = Step["actions"][number];
type Moving = Extract<Action, { readonly do: "add" | "remove" }>;

/** Bodies that come off the finished piece, or go on again: on which way they go, and which way is out. */
export function goingsOf(build: Build, { actions, number }: Step) {
  const here = new Set(
    build.steps.filter((each) => each.number < number).flatMap(({ actions: all }) => all.flatMap(off)),
  );
  return actions.flatMap((action) => {
    const leaves = action.do === "remove";
    if (!leaves && !(action.do === "add" && action.parts.every((id) => here.has(id)))) return [];
    const along = wayOf(action);
    return along ? [{ parts: action.parts, along, leaves, out: leaves ? along : times(along, -1) }] : [];
  });
}

const off = (action: Action): readonly string[] => (action.do === "remove" ? action.parts : []);

function wayOf({ legs }: Moving): Vec | null {
  const straight = legs.flatMap((leg) => ("along" in leg ? [leg] : []));
  return (straight.find(({ distance }) => distance === null) ?? straight[0])?.along ?? null;
}

/** As the hands move it: from what the work lies on the rest is lifted. `all`: the ids of what is drawn. */
export function inHand({ parts, along, leaves }: Group, all: readonly string[], ceiling: Vec): Group {
  if (!leaves || dot(along, ceiling) > -LIES) return { parts, along, leaves };
  return { parts: all.filter((id) => !parts.includes(id)), along: times(along, -1), leaves };
}

/** From this on, the cosine of its angle to the plumb line, a way goes down. */
const LIES = 0.9;

/** Which way new parts are drawn off what they are not put to before a later step, though they are treated together; null where they are not. */
export function besideYet({ steps }: Build, { kind, number, shows: { fresh, present } }: Step): Vec | null {
  if (kind !== "finish" || fresh.length === 0 || present.length === 0) return null;
  const isApart = (some: readonly string[], others: readonly string[]): boolean =>
    some.every((id) => !others.includes(id));
  for (const action of steps.filter((each) => each.number > number).flatMap(({ actions }) => actions)) {
    const along = action.do === "add" ? wayOf(action) : null;
    if (action.do !== "add" || !along) continue;
    if (isApart(present, action.parts) && fresh.every((id) => action.parts.includes(id))) return times(along, -1);
    if (isApart(fresh, action.parts) && present.every((id) => action.parts.includes(id))) return along;
  }
  return null;
}
