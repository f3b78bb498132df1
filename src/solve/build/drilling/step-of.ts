/** In which step a hole is bored, and a fastener driven. */
import type { Step } from "../../build.ts";
import type { Fastener, Hole, Joint } from "../../design.ts";

export interface StepOf {
  /** By index of `Build.holes`; null where no step tells it. */
  readonly hole: (hole: Hole, i: number) => number | null;
  readonly fastener: (fastener: Fastener) => number | null;
}

/** The first step counts: what is taken out and driven again keeps its hole. */
export function stepOf(
  steps: readonly Step[],
  { joints, fasteners }: { readonly joints: readonly Joint[]; readonly fasteners: readonly Fastener[] },
): StepOf {
  const bored = new Map<number, number>();
  const driven = new Map<string, number>();
  const fitted = new Map<string, number>();
  const note = <K>(map: Map<K, number>, keys: readonly K[], number: number): void => {
    for (const key of keys) if (!map.has(key)) map.set(key, number);
  };
  for (const { number, actions } of steps)
    for (const action of actions) {
      if (action.do === "machine") note(bored, action.holes, number);
      if (action.do === "drive") note(driven, action.fasteners, number);
      if (action.do === "fit") note(fitted, action.hardware, number);
    }
  const together = joining(steps);
  const joined = new Map(joints.map(({ id, parts }) => [id, together(parts)]));
  const fastener = ({ id, joint }: Fastener): number | null => driven.get(id) ?? joined.get(joint) ?? null;
  const byId = new Map(fasteners.map((each) => [each.id, each]));
  return {
    fastener,
    hole: ({ for: id }, i) => {
      const own = id === null ? undefined : byId.get(id);
      return bored.get(i) ?? (own ? fastener(own) : null) ?? (id === null ? null : (fitted.get(id) ?? null));
    },
  };
}

/** The first step after which parts are of one body. */
function joining(steps: readonly Step[]): (parts: readonly string[]) => number | null {
  const adds = steps.flatMap(({ number, actions }) =>
    actions.flatMap((action) => (action.do === "add" ? [{ number, parts: [...action.parts, ...action.to] }] : [])),
  );
  return (wanted) => {
    const bodies: Set<string>[] = [];
    for (const { number, parts } of adds) {
      const met = bodies.filter((body) => parts.some((id) => body.has(id)));
      const body = new Set([...parts, ...met.flatMap((each) => [...each])]);
      for (const each of met) bodies.splice(bodies.indexOf(each), 1);
      bodies.push(body);
      if (wanted.every((id) => body.has(id))) return number;
    }
    return null;
  };
}
