/** The step in which wooden buttons are made that are not bought. Common practice, no source. */
import { subtract } from "../../../units/rational.ts";
import { isButtoned } from "../buttons.ts";
import { capital, listed, type StepDraft, type Work } from "./draft.ts";
import { SAW_CAUTION, step } from "./making-step.ts";
import { BUTTONS, kindsOf, roomOf } from "./words/buttons.ts";

/** Minutes for the strips, and for each button (common practice, no source). */
const MINUTES = { strips: 10, each: 3 } as const;

export function buttonSteps(work: Work): readonly StepDraft[] {
  const kinds = kindsOf(work);
  const [first] = kinds;
  if (!first) return [];
  const { print, drill } = work;
  const { thick, wide, tongue, toScrew } = first.button;
  const below = subtract(subtract(thick, tongue.down), tongue.thick);
  const held = listed(work, [...new Set(kinds.flatMap(({ holds }) => holds))]);
  const room = roomOf(
    work,
    kinds.flatMap(({ fasteners }) => fasteners),
  );
  const count = kinds.reduce((so, { fasteners }) => so + fasteners.length, 0);
  return [
    step(
      "make",
      "Make the wooden buttons",
      [
        `They hold ${held}, and let the wood move. If you buy them in these sizes, only mark their tops and sort them.`,
        `Of hardwood offcuts plane strips ${print(thick)} thick and ${print(wide)} wide, the grain along them. Mark one broad face of each as the top: this side of a button will lie against the wood that it holds.`,
        `At the end of a strip saw away ${print(tongue.down)} from the top and ${print(below)} from below, so that a tongue ${print(tongue.thick)} thick is left between, as wide as the strip and as long as the drawing has it. Its root is the shoulder.`,
        ...kinds.map(
          ({ id, button, rails, fasteners }) =>
            `${capital(id)}, for ${listed(work, rails)}: ${fasteners.length}, ${print(button.long)} long with the tongue, which is ${print(button.tongue.long)} long.`,
        ),
        `Square to the top bore a hole ${drill(first.bit)} across, a little wider than the screw, right through: ${print(toScrew)} from the shoulder, in the middle of the width. Then saw the button off, and make the next from the new end. Hold the strip, never a short piece, while you saw and bore.`,
        `Try the first in its ${room}: its tongue goes in by hand, and with the tongue against that side of the ${room} that is nearer to the edge, the top of the button lies a little lower than the edge. So the screw draws tight.`,
        `Put ${count === 1 ? "it" : "them"} into a bag${kinds.length > 1 ? " for each kind" : ""}, and write on it ${kinds.length > 1 ? "which it is and " : ""}where ${count === 1 ? "it goes" : "they go"}.`,
      ],
      [],
      {
        ...{ unit: BUTTONS, bench: MINUTES.strips + MINUTES.each * count, cautions: [SAW_CAUTION], fresh: [] },
      },
    ),
  ];
}

/** Grooves are cut before buttons are tried in them, and buttons made before they are screwed on. */
export function buttonsBetween(work: Work, first: StepDraft | undefined, next: StepDraft | undefined): boolean {
  const own = work.plan.fasteners.filter(isButtoned);
  if (next?.unit === BUTTONS) {
    const joints = new Set(own.map(({ joint }) => joint));
    return (
      first?.actions.some(
        (action) =>
          action.do === "machine" &&
          action.features.some((i) => {
            const feature = work.part(action.part).features[i];
            return feature !== undefined && "for" in feature && feature.for !== null && joints.has(feature.for);
          }),
      ) ?? false
    );
  }
  if (first?.unit !== BUTTONS) return false;
  return (
    next?.actions.some((action) => action.do === "drive" && own.some(({ id }) => action.fasteners.includes(id))) ??
    false
  );
}
