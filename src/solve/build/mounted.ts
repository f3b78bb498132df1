/** What hardware is on the piece before a step and after it. */

import { once } from "../../geometry/index.ts";
import type { Build, Step } from "../build.ts";
import { afterAction, type Bodies } from "./steps/touched.ts";

type Of = Pick<Build, "steps" | "hardware" | "joints">;

interface State {
  readonly bodies: Bodies;
  /** Ids of hardware. */
  readonly on: ReadonlySet<string>;
}

const BARE: State = { bodies: [], on: new Set() };

/**
 * Ids. What makes a joint is screwed on when its parts come together, and taken off with the part that comes off, but for the halves of
 * slides, each of which stays on its own; what is only fixed to a part is on from the step that says so, or for as long as it is put on for now.
 */
export function mountedAt(
  build: Of,
  step: Step,
): { readonly before: ReadonlySet<string>; readonly after: ReadonlySet<string> } {
  const start = statesOf(build).findLast(({ number }) => number < step.number)?.state ?? BARE;
  return { before: start.on, after: afterStep(build, start, step).on };
}

const statesOf = once((build: Of) => {
  let state = BARE;
  return build.steps.map((step) => {
    state = afterStep(build, state, step);
    return { number: step.number, state };
  });
});

function afterStep({ hardware, joints }: Of, before: State, { actions, forNow }: Step): State {
  const slides = new Set<string | null>(joints.flatMap(({ id, method }) => (method === "slides" ? [id] : [])));
  const partsOf = new Map<string | null, readonly string[]>(joints.map(({ id, parts }) => [id, parts]));
  const on = new Set(before.on);
  let { bodies } = before;
  for (const action of actions) {
    if (action.do === "fit") for (const id of action.hardware) on.add(id);
    if (action.do !== "add" && action.do !== "remove") continue;
    bodies = afterAction(bodies, action);
    const moved = new Set(action.parts);
    for (const { id, joint } of hardware) {
      const parts = partsOf.get(joint) ?? [];
      if (!parts.some((part) => moved.has(part))) continue;
      if (bodies.some((body) => parts.every((part) => body.has(part)))) on.add(id);
      else if (action.do === "remove" && !slides.has(joint)) on.delete(id);
    }
  }
  for (const id of forNow?.on ?? []) on.add(id);
  for (const id of forNow?.off ?? []) on.delete(id);
  return { bodies, on };
}
