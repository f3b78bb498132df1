/** How the work lies from step to step of one body, and what of it a later step proves square. */
import { newlySquare } from "./closing.ts";
import type { Work } from "./draft.ts";
import { waitsForProof } from "./in-turn.ts";
import { type Lying, STANDING } from "./lying.ts";
import { hangs, type Move, type Unit } from "./moves.ts";
import { type Laid, upFor } from "./turned-for.ts";

export interface LaidOut extends Lying {
  readonly moves: readonly Move[];
  /** The body is whole with this step. */
  readonly last: boolean;
  /** A later step proves it, with one screw in each joint. */
  readonly waits: boolean;
  /** What came before and is proved by this step. */
  readonly owed: readonly Move[];
}

/** `own`: the moves of a unit in groups, each of which is a step. */
export function laidOut(work: Work, unit: Unit, own: readonly (readonly Move[])[]): readonly LaidOut[] {
  const laid: Laid[] = [];
  for (const moves of own) laid.push({ moves, up: upFor(work, moves, unit, laid) });
  const closings = laid.map(({ moves, up }) => {
    const square = moves.some(hangs) ? null : newlySquare(work, moves, up)?.square;
    return square ? { moves, corners: square.of } : null;
  });
  // The place of the next proof, where it proves this.
  const provedIn = laid.map(({ moves }, i) => {
    const next = closings.findIndex((closes, j) => j > i && closes !== null);
    const closes = closings[next];
    return !closings[i] && closes && waitsForProof(moves, closes) ? next : null;
  });
  return laid.map(
    ({ moves, up }, i): LaidOut => ({
      ...{ moves, up, before: laid[i - 1]?.up ?? STANDING, first: i === 0, last: i === own.length - 1 },
      waits: provedIn[i] !== null,
      owed: laid.flatMap((earlier, j) => (provedIn[j] === i ? earlier.moves : [])),
    }),
  );
}
