/** When a frame or a box is closed, and proved square. */

import { dot } from "../../../geometry/vec.ts";
import { type AxisIndex, faceAxis, INDICES, normalOf } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import { LOOSE } from "../order/links.ts";
import { armsOf } from "./arms.ts";
import { backedBy } from "./back-boards.ts";
import { caseSidesOf, jointsAmong } from "./case-sides.ts";
import { FIRST, listed, type StepDraft, series, type Work } from "./draft.ts";
import { endFrames } from "./end-frames.ts";
import { grouped } from "./grouped.ts";
import { lastCloses } from "./in-one-go.ts";
import type { Lying } from "./lying.ts";
import { hangs, type Move, togetherAfter, type Unit } from "./moves.ts";
import { haveCorners, isRing } from "./ring.ts";
import {
  closedAlong,
  isClosed,
  type Square,
  squareOf,
  squareOfArms,
  squareOfSides,
  squareOfUprights,
} from "./square.ts";
import { groupedBy } from "./wishes/own-key.ts";

/** What proves a frame square as it is closed, and the part that is put into it in the same step: it keeps it as it finds it. */
export interface Closing {
  readonly square: Square;
  /** The diagonals of the frames at its ends that are closed with it. */
  readonly ends: readonly Square[];
  readonly filler: string | null;
}

/** The diagonals, where these moves close a frame, or the last of them closes it at the other end, on the side that lies `up` where there is a choice. What hangs, runs or rests closes none. */
export const newlySquare = (work: Work, moves: readonly Move[], up: Direction): Closing | null =>
  closedBy(work, moves, up) ??
  (lastCloses(work, moves) ? closedBy(work, moves.slice(-1), up) : null) ??
  armedBy(work, moves, up);

/** What is held at one end only is as far off at the other as no square shows. */
function armedBy(work: Work, moves: readonly Move[], up: Direction): Closing | null {
  const arms = armsOf(work, moves);
  const square = arms && squareOfArms(work, arms, up);
  return square && { square, ends: [], filler: null };
}

function closedBy(work: Work, moves: readonly Move[], up: Direction): Closing | null {
  if (moves.every(({ work: own }) => own.every(({ joint }) => LOOSE.includes(joint.kind)))) return null;
  const [before, after] = [(moves[0] as Move).present, togetherAfter(moves)];
  const bodies = [before, ...moves.map(({ arriving }) => arriving)];
  const along = closedAlong(work, after);
  // What has all its corners, and is open on a side yet, is closed by nothing that goes on elsewhere.
  const stays = along.filter((axis) => isOpen(work, axis, { before, after }));
  // An end with rails is closed only as an end: the other end closes the frame. What goes round a case closes it no second time.
  const closed = caseSidesOf(work, before)?.thin;
  const fresh = along.filter((axis) => axis !== closed && !stays.includes(axis) && !isClosed(work, before, axis));
  const of = (ids: readonly string[], filler: string | null, axes?: readonly AxisIndex[]): Closing | null => {
    const square = shownOf(work, ids, up, axes);
    const thin = square?.on ? faceAxis(square.on) : null;
    const ends = thin === null || filler ? [] : endFrames(work, { bodies, after: ids }, { thin, up });
    return square && { square, ends, filler };
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
  return square && { square, ends: [], filler: null };
}

/** Whether what has the corners of a frame was together before, and it is no ring yet. */
function isOpen(
  work: Work,
  axis: AxisIndex,
  { before, after }: { readonly before: readonly string[]; readonly after: readonly string[] },
): boolean {
  const parts = after.map(work.part);
  return haveCorners(axis, parts, new Set(before)) && !isRing(axis, parts, jointsAmong(work, after));
}

/** On a side that a tape is held to as it lies: across the sides of a case, where others reach past those; else what is lifted to get at it. */
function shownOf(work: Work, ids: readonly string[], up: Direction, axes?: readonly AxisIndex[]): Square | null {
  const look = { up, ...(axes && { along: axes }) };
  const sides = squareOfSides(work, ids, up);
  const isSeen = sides?.on && (axes ?? INDICES).includes(faceAxis(sides.on)) && up[faceAxis(sides.on)] !== 0;
  return squareOf(work, ids, look) ?? (isSeen ? sides : null) ?? squareOf(work, ids, { ...look, anyway: true });
}

/** "across its front from corner to corner, outside". */
const wayOf = (work: Work, { on, of, shoulders, inside }: Square): string =>
  inside
    ? `inside, from corner to corner of the room between ${listed(work, of)}`
    : `${on ? `across its ${on} ` : ""}from corner to corner${of.length > 0 ? ` of ${listed(work, of)}` : ""}${shoulders ? " of the shoulders: the tenons stand out past them" : ", outside"}`;

/** Right after a frame is closed. */
export const squareText = (work: Work, { square, ends }: Pick<Closing, "square" | "ends">): string =>
  [
    `Check that it is square: measure ${wayOf(work, square)}. Both diagonals are ${work.print(square.value)}, equal within ${work.print(square.within)}.`,
    ...groupedBy(ends, (each) => `${each.inside} ${work.print(each.value)} ${work.print(each.within)}`).map((own) => {
      const [first] = own as [Square, ...Square[]];
      const sides = series(own.map(({ on }) => `its ${on}`));
      return `Measure ${first.inside ? "inside, " : ""}across ${sides} too: ${work.print(first.value)} both ways, equal within ${work.print(first.within)}.`;
    }),
  ].join(" ");

/**
 * What closes a frame that was square keeps it as it finds it. `units`: all that is put together, in the order of work; `up`: as it lies before
 * it is turned for that; `when`: in the step that it is told in, or in the one after that.
 */
export function againText(
  work: Work,
  moves: readonly Move[],
  units: readonly Unit[],
  up: Direction,
  when: "now" | "next" = "now",
): readonly string[] {
  const [first] = moves as readonly [Move];
  const square = first.arrivesBuilt ? null : keptBy(work, moves, up);
  if (!square) return [];
  const size = work.print(square.value);
  const way = wasMeasured(work, square, first.present, units)
    ? `${square.inside ? "inside, " : square.on ? `across its ${square.on} ` : ""}from corner to corner${square.shoulders ? " of the shoulders" : ""} once more, ${size} both ways`
    : `${wayOf(work, square)}: ${size} both ways, equal within ${work.print(square.within)}`;
  return [`${FIRST}measure ${way}${way.includes(": ") ? ";" : ":"} what goes on ${when} keeps it as it finds it.`];
}

/** Where the work lies already as it is turned for that, and the side that was told is on the bench: what is seen then, if anything; else null. */
export function againLying(
  work: Work,
  moves: readonly Move[],
  units: readonly Unit[],
  { up, before, again }: Pick<Lying, "up" | "before"> & { readonly again: readonly string[] },
): NonNullable<StepDraft["proof"]> | null {
  const [turned] = again;
  const on = turned && keptBy(work, moves, before)?.on;
  if (!on || dot(normalOf(on), up) >= 0) return null;
  const [lying = null] = againText(work, moves, units, up);
  const [next = turned] = againText(work, moves, units, before, "next");
  return { turned, next, lying };
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
