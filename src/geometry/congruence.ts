/** Whether two finished parts are the same part, turned, or mirror images of each other. */
import { TOLERANCE } from "../units/length.ts";
import { add, subtract as minus } from "../units/rational.ts";
import { exactBounds } from "./bounds.ts";
import { matches } from "./matches.ts";
import { isMirror, type Movement, move, movePoint, turnVec } from "./transform.ts";
import type { Solid, Vec } from "./types.ts";
import { minus as between, norm } from "./vec.ts";

type Index = 0 | 1 | 2;

export interface Mark {
  readonly label: string;
  readonly at: Vec;
  /** A unit vector, where the mark has one. */
  readonly direction?: Vec;
}

export interface Shape {
  readonly solid: Solid;
  /** The axis of space along which each direction of the board runs. */
  readonly frame: { readonly length: Index; readonly width: Index; readonly thickness: Index };
  /** What belongs to the part besides its solid: holes. */
  readonly marks: readonly Mark[];
}

/**
 * "same" when b is a in another place or turned, with the grain along the grain; "mirrored" when it is a mirror image and no turn
 * does. Equal within the tolerance, however the solids are divided into pieces.
 */
export function congruence(a: Shape, b: Shape): "same" | "mirrored" | null {
  const fits = (movement: Movement): boolean => marksFit(a, b, movement) && matches(move(a.solid, movement), b.solid);
  const movements = alignments(a, b);
  if (movements.some((movement) => !isMirror(movement) && fits(movement))) return "same";
  return movements.some((movement) => isMirror(movement) && fits(movement)) ? "mirrored" : null;
}

/** The movements that carry the length of a to the length of b and its bounds to those of b. */
function alignments(a: Shape, b: Shape): readonly Movement[] {
  const size = ({ low, high }: Solid, i: Index): number => high[i] - low[i];
  const sources = [source(a, b, "width", "thickness"), source(a, b, "thickness", "width")].filter((from) =>
    AXES.every((i) => Math.abs(size(a.solid, from[i]) - size(b.solid, i)) <= TOLERANCE),
  );
  if (sources.length === 0) return [];
  const [old, now] = [exactBounds(a.solid), exactBounds(b.solid)];
  return sources.flatMap((from) =>
    SIGNS.map((sign): Movement => {
      const shift = (i: Index) =>
        sign[i] === 1 ? minus(now.low[i], old.low[from[i]]) : add(now.low[i], old.high[from[i]]);
      return { from, sign, shift: [shift(0), shift(1), shift(2)] };
    }),
  );
}

/** For each axis of b, the axis of a that goes there. */
function source(a: Shape, b: Shape, toWidth: "width" | "thickness", toThickness: "width" | "thickness") {
  const from = (i: Index): Index =>
    i === b.frame.length ? a.frame.length : i === b.frame.width ? a.frame[toWidth] : a.frame[toThickness];
  return [from(0), from(1), from(2)] as const;
}

/** Every mark of a comes to lie on one of b, and none of b is left over. */
function marksFit(a: Shape, b: Shape, movement: Movement): boolean {
  const left = [...b.marks];
  if (left.length !== a.marks.length) return false;
  return a.marks.every((mark) => {
    const at = movePoint(mark.at, movement);
    const direction = mark.direction && turnVec(mark.direction, movement);
    const found = left.findIndex(
      (other) =>
        other.label === mark.label &&
        norm(between(other.at, at)) <= TOLERANCE &&
        sameDirection(other.direction, direction),
    );
    if (found >= 0) left.splice(found, 1);
    return found >= 0;
  });
}

const sameDirection = (u: Vec | undefined, v: Vec | undefined): boolean =>
  u && v ? norm(between(u, v)) <= 1e-6 : u === v;

const AXES = [0, 1, 2] as const;
const SIGNS = [
  [1, 1, 1],
  [1, -1, -1],
  [-1, 1, -1],
  [-1, -1, 1],
  [-1, 1, 1],
  [1, -1, 1],
  [1, 1, -1],
  [-1, -1, -1],
] as const;
