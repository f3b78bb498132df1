/** What one set of clamps draws together in one glue-up: else its parts would end in bare tenons at one end, and be knocked about for a day. */

import { compare } from "../../../units/rational.ts";
import { INDICES, middle } from "../../design/space.ts";
import type { Direction, Joint } from "../../design.ts";
import { type Grouping, isGlued, isPanel, type Move, moveKey, waits } from "./moves.ts";
import { closingMinutes, OPEN } from "./open-time.ts";

/** Steps of one body, of which those are made one that the last of them closes while the glue of all is open. */
export function inOneGo(work: Grouping, groups: readonly (readonly Move[])[]): readonly (readonly Move[])[] {
  for (let from = 0; from < groups.length; from++)
    for (let to = groups.length; to > from + 1; to--) {
      const own = groups.slice(from, to).flat();
      if (isOneGlueUp(work, own)) return [...groups.slice(0, from), own, ...inOneGo(work, groups.slice(to))];
    }
  return groups;
}

/** Whether the last of some moves brings something to the other end of all that came before. */
export const lastCloses = (work: Grouping, moves: readonly Move[]): boolean =>
  moves.length > 1 && moves.slice(0, -1).every((move) => closesOtherEnd(work, move, moves.at(-1) as Move));

function isOneGlueUp(work: Grouping, moves: readonly Move[]): boolean {
  const [first] = moves as readonly [Move];
  return (
    moves.every(
      (move) =>
        (isGlued(move) || isPanel(move)) &&
        !move.arrivesBuilt &&
        !waits(work, move) &&
        moveKey(work, move) === moveKey(work, first) &&
        isParallel(move.along, first.along),
    ) &&
    lastCloses(work, moves) &&
    drivenFromOneSide(moves) &&
    closingMinutes(
      work,
      jointsOf(moves),
      moves.flatMap(({ arriving }) => arriving),
      [],
    ) <= OPEN.usual
  );
}

const jointsOf = (moves: readonly Move[]): readonly Joint[] =>
  moves.flatMap((move) => move.work.map(({ joint }) => joint));

/** Nothing is turned over while its glue is wet. */
const drivenFromOneSide = (moves: readonly Move[]): boolean =>
  new Set(
    moves.flatMap((move) => move.work.flatMap(({ drives }) => drives.map(({ fastener }) => fastener.direction.join()))),
  ).size < 2;

/** Whether the last move brings something to the other end of what is joined at one end before. */
function closesOtherEnd(work: Grouping, move: Move, last: Move): boolean {
  const axis = INDICES.find((i) => Math.abs(last.along[i]) > STEEP);
  if (axis === undefined) return false;
  const side = (id: string, mate: string): number =>
    compare(middle(work.part(mate).body, axis), middle(work.part(id).body, axis));
  const ends = (joints: readonly Joint[], id: string): readonly number[] =>
    joints.flatMap(({ parts }) =>
      parts.includes(id) ? parts.filter((other) => other !== id).map((mate) => side(id, mate)) : [],
    );
  const [before, after] = [jointsOf([move]), jointsOf([last])];
  return before.some(({ parts }) =>
    parts.some((id) => ends(before, id).some((one) => ends(after, id).some((other) => one * other < 0))),
  );
}

/** Cosine. */
const STEEP = 0.9;

const isParallel = (a: Direction, b: Direction): boolean =>
  a.every((c, i) => Math.abs(Math.abs(c) - Math.abs(b[i] as number)) < 1e-9);
