import type { Jig } from "../model/jig.ts";
import { type StepDraft, series, type Work, withArticle } from "./draft.ts";
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

function text(jig: Jig, work: Work): readonly string[] {
  const { what, laid, width, length, holes, from } = jig;
  const { print } = work;
  const wood = from === null ? "scrap" : `an offcut of ${from}`;
  if (laid === "on the end")
    return [
      `For ${what}: cut a strip of ${wood} to ${print(width)} × ${print(length)}, mark its lower end, and draw a line along its middle.`,
      `On this line bore ${withArticle(print(holes[0]?.diameter ?? width))} hole at ${series(holes.map(({ y }) => print(y)))} from the lower end, square to the face, right through.`,
      "While a side lies flat, clamp the strip on it with its line over that of the holes and its lower end flush with the lower end of the side. Set the stop on the drill to the depth of the holes and the thickness of the strip.",
    ];
  const places = holes.map(({ x, y }) => `${print(x)} and ${print(y)}`);
  return [
    `For ${what}: cut a piece of ${wood} to ${print(width)} × ${print(length)}, and mark two edges that meet square.`,
    `From these two edges bore ${withArticle(print(holes[0]?.diameter ?? width))} hole at ${series(places)}, square to the face, right through.`,
    `Screw a strip along both edges as a fence. Hold the fences against the edges of the part and bore through the template; turn it over for the other hand.`,
  ];
}
