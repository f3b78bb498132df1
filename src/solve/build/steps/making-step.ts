import type { Action, OnBench } from "../../build.ts";
import type { StepDraft } from "./draft.ts";
import type { Sentence } from "./sentence.ts";

const UP = [0, 0, 1] as const;
/** Ends the unit of a step in which boards are planed that are no part yet. */
export const BOARDS = " boards";
export const SAW_CAUTION =
  "Wear eye and ear protection and a dust mask. Use the guards and follow the instructions of your saw; keep hands away from the blade.";
export const MILL_CAUTION =
  "Wear eye and ear protection and a dust mask. Use the guards and follow the instructions of your saw, jointer and planer; keep hands away from their blades.";
export const ROUTER_CAUTION =
  "Clamp the work before you cut or bore it. Wear eye protection and follow the instructions of your tools.";

/** A step in which nothing is joined. */
export function step(
  kind: StepDraft["kind"],
  title: string,
  text: readonly Sentence[],
  actions: readonly Action[],
  more: Pick<StepDraft, "bench" | "cautions" | "unit"> &
    Partial<
      Pick<
        StepDraft,
        "waits" | "reminders" | "up" | "clamps" | "hands" | "strains" | "again" | "inTheRoom" | "of" | "measures"
      >
    > & {
      readonly fresh: readonly string[];
      /** What stands around it already. */
      readonly present?: readonly string[];
      readonly travel?: StepDraft["shows"]["travel"];
      readonly as?: OnBench;
    },
): StepDraft {
  return {
    kind,
    title,
    text,
    actions,
    unit: more.unit,
    bench: more.bench,
    cautions: more.cautions,
    copies: 1,
    up: more.up ?? UP,
    waits: more.waits ?? [],
    reminders: more.reminders ?? [],
    ...(more.clamps && { clamps: more.clamps }),
    ...(more.of && { of: more.of }),
    ...(more.measures && { measures: more.measures }),
    ...(more.hands && { hands: more.hands }),
    ...(more.strains && { strains: true }),
    ...(more.again && { again: more.again }),
    ...(more.inTheRoom && { inTheRoom: true }),
    shows: {
      ...{ fresh: more.fresh, present: more.present ?? [], travel: more.travel ?? [], fasteners: [] },
      ...(more.as && { as: more.as }),
    },
  };
}
