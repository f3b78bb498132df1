/** When a frame or a box is closed, and proved square. */
import { FIRST, type Work } from "./draft.ts";
import type { Move } from "./moves.ts";
import { squareOf } from "./square.ts";

/** The diagonals, where these moves close a flat frame. */
export function newlySquare(work: Work, moves: readonly Move[]): ReturnType<typeof squareOf> {
  const [first, last] = [moves[0] as Move, moves.at(-1) as Move];
  const [before, after] = [first.present, [...last.present, ...last.arriving]];
  if (squareOf(work, before)) return null;
  const closed = squareOf(work, after);
  if (closed || !moves.some((move) => move.work.some(({ joint }) => joint.glue))) return closed;
  // What fills a frame keeps it square when it is fast; while the glue is wet, it is as the clamps leave it.
  for (const id of after) {
    const [outer, inner] = [after, before].map((ids) => ids.filter((each) => each !== id)) as [string[], string[]];
    const around = squareOf(work, outer);
    if (around && !squareOf(work, inner)) return around;
  }
  return null;
}

/** What closes a frame that was square keeps it as it finds it. */
export function againText(work: Work, moves: readonly Move[]): readonly string[] {
  const [first, last] = [moves[0] as Move, moves.at(-1) as Move];
  const square = squareOf(work, first.present);
  if (!square || first.arrivesBuilt || squareOf(work, [...last.present, ...last.arriving])) return [];
  return [
    `${FIRST}measure from corner to corner once more, ${work.print(square.value)} both ways: what goes on now keeps it as it finds it.`,
  ];
}
