import type { Action } from "../../build.ts";
import type { Fitting, Hardware } from "../../design.ts";
import { listed, type StepDraft, type Work } from "./draft.ts";
import { step } from "./making-step.ts";
import { countText } from "./words/driving.ts";

/** Minutes to put on one piece of hardware (common practice, no source). */
const MINUTES = 5;

/** Hardware is put on for good, the pieces of each part together. */
export function fitActions(hardware: readonly Hardware[]): readonly Action[] {
  const carriers = [...new Set(hardware.map(({ carriedBy }) => carriedBy))];
  return carriers.map((part) => ({
    do: "fit",
    hardware: hardware.filter(({ carriedBy }) => carriedBy === part).map(({ id }) => id),
    to: [part],
  }));
}

/** What is fixed to the finished piece: one step for each kind of fitting. */
export function hardwareSteps(work: Work): readonly StepDraft[] {
  const { fittings, parts } = work.design;
  const kinds = [...new Set(fittings.flatMap(({ hardware }) => hardware.map(({ item }) => item.kind)))];
  return kinds.flatMap((kind) => {
    const own = fittings.filter(({ hardware }) => hardware[0]?.item.kind === kind);
    const hardware = own.flatMap((each) => each.hardware);
    const carriers = [...new Set(hardware.map(({ carriedBy }) => carriedBy))];
    return step(
      "fit",
      `Fit the ${hardware.length === 1 ? kind : `${kind}s`}`,
      own.map((each) => sentence(each, work)),
      fitActions(hardware),
      {
        unit: `fit ${kind}`,
        bench: hardware.length * MINUTES,
        cautions: [],
        fresh: carriers,
        present: parts.map(({ id }) => id).filter((id) => !carriers.includes(id)),
      },
    );
  });
}

const sentence = ({ hardware, part }: Fitting, work: Work): string =>
  `Fix ${countText(hardware[0]?.item.label ?? "", hardware.length)} to ${listed(work, [part])}, in the holes bored for it.`;
