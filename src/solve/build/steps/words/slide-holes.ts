/** Which of the holes that a slide has are bored for ahead, counted from its front end. */
import { subtract } from "../../../../units/rational.ts";
import { holeNumber } from "../../../design/slides/run.ts";
import { type AxisIndex, INDICES } from "../../../design/space.ts";
import type { Hardware } from "../../../design.ts";
import { series, type Work } from "../draft.ts";
import { ordinal } from "./which.ts";

/** "bored ahead for the first, fifth and ninth of them, counted from the front end"; empty where none are, or the halves have others. */
export function slideHoles(work: Work, slides: readonly Hardware[]): string {
  const all = slides.map((half) => numbersOf(work, half));
  const [first] = all;
  if (!first || first.length === 0 || all.some((each) => each.join() !== first.join())) return "";
  return `bored ahead for the ${series(first.map(ordinal))} of them from there`;
}

function numbersOf(work: Work, { id, joint, at }: Hardware): readonly number[] {
  const out = work.plan.chosen.get(joint ?? "")?.motion?.poses.at(-1)?.shift ?? [0, 0, 0];
  const run = INDICES.find((i) => Math.abs(out[i]) > 0) ?? (1 satisfies AxisIndex);
  const numbers = work.plan.holes
    .filter((hole) => hole.for === id && hole.atBench && hole.kind === "pilot")
    .map((hole) => holeNumber(out[run] > 0 ? subtract(at[run], hole.at[run]) : subtract(hole.at[run], at[run])));
  const told = [...new Set(numbers)].filter((each) => each !== null);
  return numbers.includes(null) ? [] : told.toSorted((a, b) => a - b);
}
