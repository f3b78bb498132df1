import type { Fastener } from "../../design.ts";
import { listed, type StepDraft, type Work } from "./draft.ts";
import { step } from "./making-step.ts";
import { countText } from "./words/driving.ts";

/** Minutes for each plug (common practice, no source): to glue it in, to trim it. */
const MINUTES = { glue: 1, pare: 1 } as const;
const DRY = { for: "glue", minutes: 60 } as const;

/** Plugs over sunk screws are glued in when all is together, and pared flush when the glue is dry. */
export function pluggingSteps(work: Work): readonly StepDraft[] {
  const plugged = work.plan.fasteners.filter(({ head }) => head.seat === "plugged");
  if (plugged.length === 0) return [];
  const items = new Map<string, Fastener[]>();
  for (const fastener of plugged) {
    const item = fastener.with?.at(-1) ?? "wood plug";
    items.set(item, [...(items.get(item) ?? []), fastener]);
  }
  const parts = [...new Set(plugged.flatMap(({ through }) => through))];
  const around = work.design.parts.map(({ id }) => id).filter((id) => !parts.includes(id));
  const shown = { cautions: [], fresh: parts, present: around };
  return [
    // No clamps and no boards: not among what is glued up.
    step(
      "fit",
      "Plug the screw holes",
      [...items].map(([item, list]) => {
        const where = listed(work, [...new Set(list.flatMap(({ through }) => through))]);
        return `Glue ${countText(item, list.length)} into the holes over the screws in ${where}, each with its grain along the grain of the wood round it.`;
      }),
      [],
      {
        ...{ unit: "plugs", bench: plugged.length * MINUTES.glue, waits: [DRY], ...shown },
        reminders: ["Buy the plugs, or cut them from an offcut of the same wood with a plug cutter."],
      },
    ),
    step(
      "fit",
      "Trim the plugs flush",
      [
        `When the glue is dry, saw the plugs in ${listed(work, parts)} off just above the wood, and pare them flush with a sharp chisel, a little at a time.`,
      ],
      [],
      { unit: "trim plugs", bench: plugged.length * MINUTES.pare, ...shown },
    ),
  ];
}
