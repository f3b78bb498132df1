/** What the steps themselves use up, and the piece does not keep. Common practice, no source. */

import type { Units } from "../../../parse/draft.ts";
import type { Step } from "../../build.ts";
import { series } from "../steps/draft.ts";
import { usedIn } from "../steps/used.ts";
import { inOneUnit } from "../steps/words/one-unit.ts";
import { type Need, SINGLY } from "./need.ts";

const ROLL = { unit: "roll", boxes: [], of: "roll" } as const;
/** Screws in the fences of one jig. */
const IN_FENCES = 4;

const TAPED = [
  ["fronts", "fronts until they are screwed"],
  ["blocks", "blocks on slopes for clamps"],
] as const;

/** `steps`: all of the plan. */
export function usedUp(steps: readonly Pick<Step, "uses">[], units: Units): readonly Need[] {
  const roll = (item: string, note: string): Need => ({
    ...{ section: "supplies", item, used: 1, spare: 0, sold: ROLL, price: null },
    notes: [note],
  });
  const held = usedIn(steps, "double-sided tape");
  const taped = TAPED.flatMap(([what, said]) => (held.some(({ holds }) => holds === what) ? [said] : []));
  const [pulled] = usedIn(steps, "spare screw");
  const fences = usedIn(steps, "screws in fences").length;
  return [
    ...(taped.length > 0 ? [roll("double-sided tape, thin, no foam", `holds ${series(taped)}`)] : []),
    ...(usedIn(steps, "cloth tape").length > 0 ? [roll("strong cloth tape", "drawers are pulled out by it")] : []),
    ...(pulled
      ? [
          {
            ...{ section: "supplies" as const, used: 1, spare: 0, sold: SINGLY, price: null },
            item: pulled.item,
            notes: ["drawers are pulled out by it before they have their knobs or pulls"],
          },
        ]
      : []),
    ...(fences > 0
      ? [
          {
            ...{ section: "supplies" as const, used: IN_FENCES * fences, spare: 0, sold: SINGLY, price: null },
            item: inOneUnit("wood screw for the fences of jigs, thin, 1 1/4 in (30 mm) long", units),
          },
        ]
      : []),
  ];
}
