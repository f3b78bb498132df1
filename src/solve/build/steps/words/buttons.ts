/** How wooden buttons come about that are not bought. Common practice, no source. */
import { inches, type Length, millimetres } from "../../../../units/length.ts";
import { add, compare } from "../../../../units/rational.ts";
import { roundTo } from "../../../../units/round.ts";
import type { Fastener } from "../../../design.ts";
import { series, type Work } from "../draft.ts";

const isButtoned = ({ with: more = [] }: Fastener): boolean => more.some((item) => item.startsWith("wooden button"));

/** A little wider than the screw, to a bit that is sold. */
const PLAY = { inch: inches(1, 128), mm: millimetres(1, 5) } as const;
const BIT = { inch: inches(1, 64), mm: millimetres(1, 2) } as const;

/** The bits that the buttons of some fasteners are bored with, thinnest first. */
function bitsOf({ design: { units } }: Work, fasteners: readonly Fastener[]): readonly Length[] {
  return fasteners
    .filter(isButtoned)
    .map(({ rod }) => roundTo(add(rod, PLAY[units]), BIT[units], "up"))
    .toSorted(compare);
}

export const buttonBits = (work: Work): readonly Length[] => bitsOf(work, work.plan.fasteners);

export function buttonTexts(work: Work, fasteners: readonly Fastener[]): readonly string[] {
  const bits = [...new Set(bitsOf(work, fasteners).map(work.drill))];
  if (bits.length === 0) return [];
  return [
    `Buttons that you do not buy are made of hardwood offcuts: plane a strip to their thickness and width, the grain along it. Saw a step across its end, below, so that the tongue is left, saw the button off at its length, and bore it through behind the step, ${series(bits)} wide, a little wider than the screw. Then the next, from the new end; try each in its place. Hold the strip, never a short piece, while you saw.`,
  ];
}
