/** When a frame or a box is closed, and proved square. */

import { type AxisIndex, faceAxis } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import { LOOSE } from "../order/links.ts";
import { backedBy } from "./back-boards.ts";
import { caseSidesOf } from "./case-sides.ts";
import { FIRST, listed, type Work } from "./draft.ts";
import { grouped } from "./grouped.ts";
import { lastCloses } from "./in-one-go.ts";
import { hangs, type Move, togetherAfter, type Unit } from "./moves.ts";
import { closedAlong, isClosed, type Square, squareOf, squareOfSides, squareOfUprights } from "./square.ts";

/** What proves a frame square as it is closed, and the part that is put into it in the same step: it keeps it as it finds it. */
export interface Closing {
  readonly square: Square;
  readonly filler: string | null;
}

/** The diagonals, where these moves close a frame, or the last of them closes it at the other end, on the side that lies `up` where there is a choice. What hangs, runs or rests closes none. */
export const newlySquare = (work: Work, moves: readonly Move[], up: Direction): Closing | null =>
  closedBy(work, moves, up) ?? (lastCloses(work, moves) ? closedBy(work, moves.slice(-1), up) : null);

function closedBy(work: Work, moves: readonly Move[], up: Direction): Closing | null {
  if (moves.every(({ work: own }) => own.every(({ joint }) => LOOSE.includes(joint.kind)))) return null;
  const [before, after] = [(moves[0] as Move).present, togetherAfter(moves)];
  const along = closedAlong(work, after);
  // An end with rails is closed only as an end: the other end closes the frame. What goes round a case closes it no second time.
  const closed = caseSidesOf(work, before)?.thin;
  const fresh = along.filter((axis) => axis !== closed && !isClosed(work, before, axis));
  const of = (ids: readonly string[], filler: string | null, axes?: readonly AxisIndex[]): Closing | null => {
    const square = squareOf(work, ids, { up, anyway: true, ...(axes && { along: axes }) });
    return square && { square, filler };
  };
  if (along.length > 0) return of(after, null, fresh);
  if (isClosed(work, before)) return null;
  // What fills a frame keeps it square when it is fast; while the glue is wet, it is as the clamps leave it.
  if (moves.some((move) => move.work.some(({ joint }) => joint.glue)))
    for (const id of after) {
      const [outer, inner] = [after, before].map((ids) => ids.filter((each) => each !== id)) as [string[], string[]];
      if (isClosed(work, outer) && !isClosed(work, inner)) return of(outer, id);
    }
  const square = squareOfSides(work, before, up) ? null : squareOfSides(work, after, up);
  return square && { square, filler: null };
}

/** "across its front from corner to corner, outside". */
const wayOf = (work: Work, { on, of, shoulders, inside }: Square): string =>
  inside
    ? `inside, from corner to corner of the room between ${listed(work, of)}`
    : `${on ? `across its ${on} ` : ""}from corner to corner${of.length > 0 ? ` of ${listed(work, of)}` : ""}${shoulders ? " of the shoulders: the tenons stand out past them" : ", outside"}`;

/** Right after a frame is closed. */
export const squareText = (work: Work, square: Square): string =>
  `Check that it is square: measure ${wayOf(work, square)}. Both diagonals are ${work.print(square.value)}, equal within ${work.print(square.within)}.`;

/**
 * What closes a frame that was square keeps it as it finds it. `units`: all that is put together, in the order of work; `up`: as it lies before
 * it is turned for that.
 */
export function againText(
  work: Work,
  moves: readonly Move[],
  units: readonly Unit[],
  up: Direction,
): readonly string[] {
  const [first] = moves as readonly [Move];
  const square = first.arrivesBuilt ? null : keptBy(work, moves, up);
  if (!square) return [];
  const size = work.print(square.value);
  const way = wasMeasured(work, square, first.present, units)
    ? `${square.inside ? "inside, " : square.on ? `across its ${square.on} ` : ""}from corner to corner${square.shoulders ? " of the shoulders" : ""} once more, ${size} both ways`
    : `${wayOf(work, square)}: ${size} both ways, equal within ${work.print(square.within)}`;
  return [`${FIRST}measure ${way}${way.includes(": ") ? ";" : ":"} what goes on now keeps it as it finds it.`];
}

/** Whether what these moves bring keeps a case square, or helps boards beside it to. */
export const keepsSquare = (work: Work, moves: readonly Move[], again: readonly string[]): boolean =>
  again.length > 0 || backedBy(work, moves)?.begun === true;

/** The diagonals of what these moves fill, or begin to close with boards side by side. */
function keptBy(work: Work, moves: readonly Move[], up: Direction): Square | null {
  const [first] = moves as readonly [Move];
  // What is free to slide keeps nothing as it finds it.
  if (moves.every(({ work: own }) => own.every(({ joint }) => joint.kind !== "fixed"))) return null;
  const after = togetherAfter(moves);
  const backed = backedBy(work, moves);
  if (backed?.begun || (!backed && isClosed(work, after))) return null;
  const frame = squareOf(work, first.present, { up });
  if (frame) return frame;
  const sides = squareOfSides(work, first.present, up);
  if (backed) return sides ?? squareOfUprights(work, backed, up);
  return squareOfSides(work, after, up) ? null : sides;
}

/** Whether the same diagonals of what is in some body were measured when it was closed. */
function wasMeasured(work: Work, square: Square, ids: readonly string[], units: readonly Unit[]): boolean {
  const body = new Set(ids);
  return units
    .filter(({ parts }) => parts.some((id) => body.has(id)))
    .flatMap((unit) => grouped(work, unit))
    .filter((own) => own.every(({ present, arriving }) => [...present, ...arriving].every((id) => body.has(id))))
    .some((own) => {
      const before = own.some(hangs) ? null : newlySquare(work, own, square.up);
      return (
        before !== null &&
        sameWay(before.square, square) &&
        work.print(before.square.value) === work.print(square.value)
      );
    });
}

/** Across one side, or that across from it: where the work was turned over since. */
const sameWay = ({ on: one }: Square, { on: other }: Square): boolean =>
  one && other ? faceAxis(one) === faceAxis(other) : one === other;
