/** Clamps that lie level, deep down on wide work: jaws do not reach down there from above, so their bars go under it. */
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { less, subtract } from "../../../units/rational.ts";
import { axisOf, INDICES, otherAxes, thirdAxis } from "../../design/space.ts";
import type { Box, Direction } from "../../design.ts";
import { bottomOf, boxOf, heightOf, lowestOf, topOf } from "./box-of.ts";
import { clampEnds } from "./clamp-ends.ts";
import { placesOfClamps } from "./clamping.ts";
import { definite, type Work } from "./draft.ts";
import { isFlat } from "./lying.ts";
import { type Move, togetherAfter } from "./moves.ts";

/** How deep the jaws of a bar clamp reach, and what its bar takes up with a hand round it. Common practice, no source. */
const THROAT = inches(4);
const BAR = { inch: inches(2), mm: millimetres(50) } as const;

/** Blocks under the work for those; empty where all are reached from above, or stand clear of the bench. */
export function barsUnder(work: Work, moves: readonly Move[], up: Direction): readonly string[] {
  const axis = axisOf(up);
  const all = togetherAfter(moves);
  const bench = lowestOf(work, all, up);
  // A frame is laid flat, and all of its clamps go over it.
  if (INDICES.some((i) => i !== axis && isFlat(work, all, i))) return [];
  const bar = BAR[work.design.units];
  const low = placesOfClamps(work, moves).filter((place) => {
    if (place.axis === axis) return false;
    const across = otherAxes(place.axis);
    const at = heightOf(place.at[across.indexOf(axis)] as Length, up);
    const beside = thirdAxis(place.axis, axis);
    const from = place.at[across.indexOf(beside)] as Length;
    const ends = clampEnds(work, moves, place).map(({ part }) => boxOf(work.part(part)));
    const isFarIn = ({ low, high }: Box): boolean =>
      less(THROAT, subtract(from, low[beside])) && less(THROAT, subtract(high[beside], from));
    // Past the ends that it presses on a bar goes over them, under them or beside them.
    return (
      ends.some(isFarIn) &&
      ends.some((box) => less(THROAT, subtract(topOf(box, up), at))) &&
      ends.some((box) => less(subtract(bottomOf(box, up), bench), bar)) &&
      ends.every((box) => !less(THROAT, subtract(at, bottomOf(box, up))))
    );
  });
  const ids = [...new Set(low.map(({ part }) => part))];
  if (ids.length === 0) return [];
  return [
    `Raise the work on blocks at least ${work.print(bar)} high: the lower clamps on ${definite(work, ids)} are out of reach from above, and their bars go under it.`,
  ];
}
