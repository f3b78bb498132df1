import type { Length } from "../../../units/length.ts";
import { add, less, sign, subtract } from "../../../units/rational.ts";
import type { Cut, Placement, Rectangle } from "../../build.ts";
import type { Filling, Place } from "./place.ts";

/** What sawing a piece gives. */
export interface Sawn {
  readonly cuts: readonly Cut[];
  readonly placements: readonly Placement[];
  /** Every piece that is left over, however small. */
  readonly rests: readonly Rectangle[];
}

/** A piece that waits to be cut: with its first cut still to come, or with the second, which frees the blank from its strip. */
type Job =
  | { readonly piece: Rectangle; readonly place: Place }
  | { readonly piece: Rectangle; readonly strip: Filling };

/**
 * Cuts a piece as its plan says, exactly: the whole piece first, then its strips one after another, so that long cuts come early.
 * `cuts` are those made before, such as squaring an end; numbers follow on from them.
 */
export function saw(whole: Rectangle, plan: Place, kerf: Length, before: readonly Cut[] = []): Sawn {
  const cuts: Cut[] = [...before];
  const placements: Placement[] = [];
  const rests: Rectangle[] = [];
  const jobs: Job[] = [{ piece: whole, place: plan }];

  /** Cuts what lies near the origin off the piece; returns it and the rest beyond the kerf, if anything is left. */
  const divide = (piece: Rectangle, kind: Cut["kind"], size: Length): [Rectangle, Rectangle | null] => {
    const side = kind === "rip" ? "width" : "length";
    if (!less(size, piece[side])) return [piece, null];
    const rest = subtract(subtract(piece[side], size), kerf);
    const [x, y] = [add(piece.x, size), add(piece.y, size)];
    const number = cuts.length + 1;
    if (kind === "rip") {
      cuts.push({ number, kind, from: [x, piece.y], to: [x, add(piece.y, piece.length)], fence: size });
      return [{ ...piece, width: size }, sign(rest) > 0 ? { ...piece, x: add(x, kerf), width: rest } : null];
    }
    cuts.push({ number, kind, from: [piece.x, y], to: [add(piece.x, piece.width), y], fence: size });
    return [{ ...piece, length: size }, sign(rest) > 0 ? { ...piece, y: add(y, kerf), length: rest } : null];
  };

  /** All cuts of one direction that follow one another along a piece. */
  const run = (piece: Rectangle, place: Place, kind: Cut["kind"]): void => {
    const { filled } = place;
    if (filled === null) {
      rests.push(piece);
      return;
    }
    if (filled.ripFirst !== (kind === "rip")) {
      jobs.push({ piece, place });
      return;
    }
    const [near, rest] = divide(piece, kind, filled.ripFirst ? filled.shape.across : filled.shape.along);
    jobs.push({ piece: near, strip: filled });
    if (rest !== null) run(rest, filled.ripFirst ? filled.beside : filled.along, kind);
  };

  for (let job = jobs.shift(); job !== undefined; job = jobs.shift()) {
    if ("place" in job) {
      run(job.piece, job.place, job.place.filled?.ripFirst === false ? "crosscut" : "rip");
      continue;
    }
    const { item, shape, ripFirst, beside, along } = job.strip;
    const kind = ripFirst ? "crosscut" : "rip";
    const [near, rest] = divide(job.piece, kind, ripFirst ? shape.along : shape.across);
    placements.push({ ...near, blank: item.blank.id, mark: item.blank.mark, turned: shape.turned });
    if (rest !== null) run(rest, ripFirst ? along : beside, kind);
  }
  return { cuts, placements, rests };
}
