import type { Fastener } from "../../design.ts";
import { listed, type StepDraft, type Work } from "./draft.ts";
import { countText } from "./words/driving.ts";

/** Minutes for each plug (common practice, no source). */
const MINUTES = 2;

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
  return [
    {
      kind: "glue-up",
      title: "Plug the screw holes",
      text: [
        ...[...items].map(([item, list]) => {
          const where = listed(work, [...new Set(list.flatMap(({ through }) => through))]);
          return `Glue ${countText(item, list.length)} into the holes over the screws in ${where}, each with its grain along the grain of the wood round it.`;
        }),
        "When the glue is dry, saw the plugs off just above the wood, and pare them flush with a sharp chisel, a little at a time.",
      ],
      actions: [],
      unit: "plugs",
      copies: 1,
      up: [0, 0, 1],
      bench: plugged.length * MINUTES,
      waits: [{ for: "glue", minutes: 60 }],
      cautions: [],
      reminders: ["Buy the plugs, or cut them from an offcut of the same wood with a plug cutter."],
      shows: {
        fresh: parts,
        present: work.design.parts.map(({ id }) => id).filter((id) => !parts.includes(id)),
        travel: [],
        fasteners: [],
      },
    },
  ];
}
