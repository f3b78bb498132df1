/** What a rule has marks for, and what a depth stop is set to. */
import type { Units } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { max, min } from "../../../units/rational.ts";

/** No rule is read, and no stop set, finer than this: 1/32 in, 0.5 mm (common practice, no source). */
const FINEST = { inch: inches(1, 32), mm: millimetres(1, 2) } as const;
/** And no hole is bored coarser than this, whatever the rest of the plan is marked to. */
const COARSEST = { inch: inches(1, 16), mm: millimetres(1) } as const;

/** Slides take so little less and more that what a rule shows hides it. */
const BETWEEN_SLIDES = { inch: inches(1, 64), mm: millimetres(1, 2) } as const;

interface Marked {
  readonly units: Units;
  readonly precision: Length;
}

/** Steps of depths: the finest, and the usual one, which is the plan's precision within these limits. */
export const depthSteps = ({ units, precision }: Marked) => ({
  finest: FINEST[units],
  usual: max(FINEST[units], min(precision, COARSEST[units])),
});

/** Step to which the places of holes are told: the plan's precision, or 1/32 in (0.5 mm) where that is finer. */
export const placeStep = ({ units, precision }: Marked): Length => min(precision, FINEST[units]);

/** Step to which the room of what goes between two things is told, by the method that holds it there. */
export const roomStep = (marked: Marked, method: string | undefined): Length =>
  method?.endsWith("slides") ? BETWEEN_SLIDES[marked.units] : placeStep(marked);
