/** A strap from its bracket on the piece to the one on the wall, as it hangs before it is pulled tight; and both brackets. */
import type { Vec } from "../../../../geometry/types.ts";
import { plus, times } from "../../../../geometry/vec.ts";
import { faceAxis } from "../../../../solve/design/space.ts";
import type { Fitting } from "../../../../solve/design.ts";
import { UNITS_PER_INCH } from "../../../../units/index.ts";
import type { Stroke } from "../../../document.ts";
import { ACCENT } from "../../../palette.ts";
import type { Marked } from "../../labels.ts";
import { boxBetween, placeAt, type WallFixing } from "./fixing.ts";

export const STRAP: Stroke = { width: 1.3, ink: ACCENT, cap: "round" };

export interface Strap {
  /** The bracket on the wall. */
  readonly bracket: Marked;
  /** In the middle of that bracket, where its screw goes in. */
  readonly screwed: Vec;
  /** Points of the line along which the strap runs, its loose end first. */
  readonly run: readonly Vec[];
}

/** It sags by such a part of its length; its loose end is so long; and it reaches over the top from no deeper below it. */
const SAG = 0.3;
const LOOSE = 3 * UNITS_PER_INCH;
const DEEP = 8 * UNITS_PER_INCH;
const STEPS = 12;

/** `top`: how high the piece is. */
export function strapOf(fixing: WallFixing, { face, hardware: [own] }: Fitting, top: number): Strap | null {
  if (!own) return null;
  const { to, sign, along, wall } = fixing;
  const { low, high } = own.solid;
  const lies = faceAxis(face) === 2;
  const [thick, tall] = lies ? [high[2] - low[2], high[to] - low[to]] : [high[to] - low[to], high[2] - low[2]];
  const [left, right] = [low[along], high[along]];
  const middle = (left + right) / 2;
  const ends = [wall, wall - sign * thick].sort((a, b) => a - b) as [number, number];
  // It is no lower than the one on the piece.
  const bracket = {
    id: `${own.id} on the wall`,
    mark: "",
    solid: boxBetween(placeAt(fixing, left, ends[0], low[2]), placeAt(fixing, right, ends[1], low[2] + tall)),
  };
  const at = (out: number, up: number): Vec => placeAt(fixing, middle, out, up);
  const here = lies
    ? at((low[to] + high[to]) / 2, high[2])
    : at(sign === 1 ? high[to] : low[to], (low[2] + high[2]) / 2);
  const screwed = at(wall - sign * thick, low[2] + tall / 2);
  // Over the edge of a top it cannot hang down.
  const dip = lies ? 0 : SAG * Math.abs(screwed[to] - here[to]);
  const sagging = Array.from({ length: STEPS + 1 }, (_, i): Vec => {
    const t = i / STEPS;
    const level = plus(times(here, 1 - t), times(screwed, t));
    return plus(level, [0, 0, -4 * t * (1 - t) * dip]);
  });
  return { bracket, screwed, run: [...looseEnd(at, here[to], here[2], sign, lies, top), ...sagging] };
}

/** Where it can be pulled: over the top and forwards. */
function looseEnd(
  at: (out: number, up: number) => Vec,
  out: number,
  up: number,
  sign: 1 | -1,
  lies: boolean,
  top: number,
): readonly Vec[] {
  if (lies) return [at(out - sign * LOOSE, up + LOOSE / 6), at(out - (sign * LOOSE) / 2, up + LOOSE / 5)];
  if (top - up > DEEP) return [];
  const over = top + LOOSE / 6;
  return [at(out - sign * LOOSE, over), at(out, over), at(out + (sign * LOOSE) / 8, top - LOOSE / 8)];
}
