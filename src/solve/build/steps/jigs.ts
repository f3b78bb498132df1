import type { Jig } from "../model/jig.ts";
import { type StepDraft, series, type Work } from "./draft.ts";
import { ROUTER_CAUTION, step } from "./making-step.ts";
import { JIGS } from "./precedence.ts";

/** Minutes to make one (common practice, no source). */
const MINUTES = 10;

/** Templates are made before the first part is bored by them. */
export function jigSteps(work: Work): readonly StepDraft[] {
  const { jigs } = work;
  if (jigs.length === 0) return [];
  const title = jigs.length === 1 ? "Make the template" : "Make the templates";
  const more = { unit: JIGS, bench: MINUTES * jigs.length, cautions: [ROUTER_CAUTION], fresh: [] };
  return [
    step(
      "make",
      title,
      jigs.flatMap((jig) => text(jig, work)),
      [],
      more,
    ),
  ];
}

function text({ what, width, length, holes, from }: Jig, { print }: Work): readonly string[] {
  const wood = from === null ? "scrap" : `an offcut of ${from}`;
  const places = holes.map(({ x, y }) => `${print(x)} and ${print(y)}`);
  return [
    `For ${what}: cut a piece of ${wood} to ${print(width)} × ${print(length)}, and mark two edges that meet square.`,
    `From these two edges bore a ${print(holes[0]?.diameter ?? width)} hole at ${series(places)}, square to the face, right through.`,
    `Screw a strip along both edges as a fence. Hold the fences against the edges of the part and bore through the template; turn it over for the other hand.`,
  ];
}
