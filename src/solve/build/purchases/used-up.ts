/** What the steps themselves use up, and the piece does not keep. Common practice, no source. */

import type { Units } from "../../../parse/draft.ts";
import type { Step } from "../../build.ts";
import { series } from "../steps/draft.ts";
import { inOneUnit } from "../steps/words/one-unit.ts";
import { type Need, SINGLY } from "./need.ts";

const ROLL = { unit: "roll", boxes: [], of: "roll" } as const;
/** Screws in the fences of one jig. */
const IN_FENCES = 4;

/** `steps`: all of the plan, with their sentences. */
export function usedUp(steps: readonly Pick<Step, "text">[], units: Units): readonly Need[] {
  const all = steps.flatMap(({ text }) => text);
  const says = (what: RegExp): number => all.filter((each) => what.test(each)).length;
  const roll = (item: string, note: string): Need => ({
    ...{ section: "supplies", item, used: 1, spare: 0, sold: ROLL, price: null },
    notes: [note],
  });
  const taped = [
    ...(says(/\bstrips of double-sided tape\b/iu) > 0 ? ["fronts until they are screwed"] : []),
    ...(says(/\bon with double-sided tape\b/iu) > 0 ? ["blocks on slopes for clamps"] : []),
  ];
  const pulled = all.flatMap((each) => /drive a spare ((?:#\d+ )?)wood screw (.+?) long through/u.exec(each) ?? []);
  const fences = says(/\btwo spare wood screws\b/iu);
  return [
    ...(taped.length > 0 ? [roll("double-sided tape, thin, no foam", `holds ${series(taped)}`)] : []),
    ...(says(/cloth tape/iu) > 0 ? [roll("strong cloth tape", "drawers are pulled out by it")] : []),
    ...(pulled.length > 0
      ? [
          {
            ...{ section: "supplies" as const, used: 1, spare: 0, sold: SINGLY, price: null },
            item: `wood screw ${pulled[1]}× ${pulled[2]}`.replace("screw ×", "screw"),
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
