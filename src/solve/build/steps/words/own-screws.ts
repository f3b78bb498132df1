/** Screws that hold hardware, and what holds it where none do. */

import type { Hardware, Joint } from "../../../design.ts";
import { screwsTold } from "../../purchases/own-screws.ts";
import { numberWord, series, type Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";

/** How many of which size, of some hardware. */
export function ownScrewTexts({ design, plan, print }: Work, hardware: readonly Hardware[]): readonly string[] {
  const given = { design, holes: plan.holes, print };
  const alike = groupedBy(hardware, ({ item }) => item.label);
  const told = alike.flatMap((own) => screwsTold(own, given));
  const one = hardware.filter(({ halfOf }) => halfOf === undefined).length === 1;
  if (told.length > 0) return [`${one ? "It takes" : "They take"} ${series(told)}${one ? "" : ", in all"}.`];
  const ids = new Set(hardware.map(({ id }) => id));
  const held = plan.holes.some(({ for: id }) => id !== null && ids.has(id));
  return held
    ? []
    : [
        "No hole is bored for this: stick it on by its own adhesive, on wood that is clean and dry, or with a drop of glue; where it has a pin or a screw, bore for that as it says.",
      ];
}

/** "The slides take 36 screws #6 × 3/8 in, three for each half.": told where some slides are screwed on; nothing where no hole is bored for them. */
export function slideScrewTexts({ design, plan, print }: Work, joints: readonly Joint[]): readonly string[] {
  const ids = new Set(joints.map(({ id }) => id));
  const slides = plan.hardware.filter(({ joint }) => joint !== null && ids.has(joint));
  const told = groupedBy(slides, ({ item }) => item.label).flatMap((own) =>
    screwsTold(own, { design, holes: plan.holes, print }),
  );
  if (told.length === 0) return [];
  const counts = new Set(slides.map(({ id }) => plan.holes.filter((hole) => hole.for === id).length));
  const [each] = counts;
  return [`The slides take ${series(told)}${counts.size === 1 && each ? `: ${numberWord(each)} for each half` : ""}.`];
}
