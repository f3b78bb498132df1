/** What a rule has marks for, and what a depth stop is set to. */
import type { Units } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { max, min } from "../../../units/rational.ts";

/** No rule is read, and no stop set, finer than this: 1/32 in, 0.5 mm (common practice, no source). */
const FINEST = { inch: inches(1, 32), mm: millimetres(1, 2) } as const;
/** And no hole is bored coarser than this, whatever the rest of the plan is marked to. */
const COARSEST = { inch: inches(1, 16), mm: millimetres(1) } as const;

interface Marked {
  readonly units: Units;
  readonly precision: Length;
}

/** Steps of depths: the finest, and the usual one, which is the plan's precision within these limits. */
export const depthSteps = ({ units, precision }: Marked) => ({
  finest: FINEST[units],
  usual: max(FINEST[units], min(precision, COARSEST[units])),
});

/** The finest marks of a steel rule: places of holes that meet others are told no coarser, or sums of them would differ from the whole. */
export const ON_A_RULE = { inch: inches(1, 64), mm: millimetres(1, 2) } as const;

/** Step to which the places of holes are told: the plan's precision, or 1/64 in (0.5 mm) where that is finer. */
export const placeStep = ({ units, precision }: Marked): Length => min(precision, ON_A_RULE[units]);

/** Step to which the room of what goes between two things is told, by the method that holds it there: slides take so little less and more. */
export const roomStep = ({ units, precision }: Marked, method: string | undefined): Length =>
  method?.endsWith("slides") ? ON_A_RULE[units] : min(precision, FINEST[units]);
