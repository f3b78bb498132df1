/** Drill bits that have to be longer than the usual ones. */
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, less, max, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { bitFor } from "../../design/boring/bits.ts";
import { jigFor, stopOf } from "../drilling/stop.ts";
import type { Work } from "./draft.ts";

/** Overall lengths of jobber drills, mm: up to this diameter, so long. ISO 235, parallel shank, jobber series. */
const JOBBER: readonly (readonly [diameter: number, long: number])[] = [
  [1.5, 40],
  [2, 49],
  [2.36, 53],
  [2.65, 57],
  [3, 61],
  [3.35, 65],
  [3.75, 70],
  [4.25, 75],
  [4.75, 80],
  [5.3, 86],
  [6, 93],
  [6.7, 101],
  [7.5, 109],
  [8.5, 117],
  [9.5, 125],
  [10.6, 133],
  [11.8, 142],
  [13.2, 151],
];
/** What the chuck and the stop take of it. Common practice, no source. */
const HELD = millimetres(20);
const STEP = { inch: inches(1, 2), mm: millimetres(10) } as const;

/** How far from the chuck the tip of a usual bit of a diameter is; null where there is none. */
export function usualReach(diameter: Length): Length | null {
  const usual = JOBBER.find(([most]) => !less(millimetres(Math.round(most * 100), 100), diameter))?.[1];
  return usual === undefined ? null : subtract(millimetres(usual), HELD);
}

/** How long the bit of a diameter has to be for its deepest hole; null where a usual one reaches. */
export function longerBit({ plan, jigs, design }: Work, diameter: Length): Length | null {
  const stops = plan.holes.flatMap((hole, i) => {
    const last = hole.stages.length - 1;
    const own = hole.stages[last];
    return own && compare(own.diameter, diameter) === 0 && bitFor(hole, last) === "drill"
      ? [stopOf(hole, plan, jigFor(i, jigs))]
      : [];
  });
  const usual = usualReach(diameter);
  const deepest = stops.reduce(max, ZERO);
  if (usual === null || !less(usual, deepest)) return null;
  return roundTo(add(deepest, HELD), STEP[design.units], "up");
}
