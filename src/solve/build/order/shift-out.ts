/** What is turned already, moved up, down or aside until it leaves in a straight line. */
import { boundsOfAll, type Convex, type Solid, type Vec } from "../../../geometry/index.ts";
import { times } from "../../../geometry/vec.ts";
import { UNITS_PER_MM } from "../../../units/index.ts";
import type { Direction } from "../../design.ts";
import { type Obstacles, STILL, sweeping } from "./obstacles.ts";

/** Lifts and shifts that are tried, in mm. */
export const LIFT = { step: 20, most: 400 } as const;
const FAR = 1e5 * UNITS_PER_MM;

/** In mm, more than 0. */
export interface Shift {
  readonly along: Direction;
  readonly by: number;
}

/**
 * How what is turned already is moved up, down or aside until it leaves along `out`: nothing where it need not be; null where
 * that frees it nowhere.
 */
export function shiftOut(moving: readonly Convex[], staying: Obstacles, out: Direction): readonly Shift[] | null {
  const far = times(out, FAR);
  if (!staying.sweptBy(moving, far)) return [];
  const most = LIFT.most * UNITS_PER_MM;
  const { low, high } = boundsOfAll(moving);
  for (const axis of [2, out[0] === 0 ? 0 : 1] as const) {
    // What is too large to be passed on either side.
    const large = (solid: Solid): boolean => solid.high[axis] - low[axis] > most && high[axis] - solid.low[axis] > most;
    if (staying.sweptBy(moving, far, STILL, large)) continue;
    for (const sign of [-1, 1]) {
      const along = [0, 1, 2].map((i) => (i === axis ? sign : 0)) as unknown as Direction;
      for (let by: number = LIFT.step; by <= LIFT.most; by += LIFT.step) {
        const shift = times(along, by * UNITS_PER_MM);
        if (staying.sweptBy(moving, shift)) break;
        const met = staying.sweptBy(moving, far, shift);
        const isFree = (at: number): boolean => {
          const there = times(along, at * UNITS_PER_MM);
          return !staying.isSwept(moving, there, STILL) && !staying.isSwept(moving, far, there);
        };
        if (!met) return [{ along, by: axis === 2 ? middleOfFree(by, isFree) : by }];
        by = stillBlocked(moving, met, far, along, by);
      }
    }
  }
  return null;
}

/** Midway between the first and the last that frees it, where it is stopped again: there it passes also what came out a little higher. */
function middleOfFree(first: number, isFree: (by: number) => boolean): number {
  for (let by = first + LIFT.step; by <= LIFT.most; by += LIFT.step)
    if (!isFree(by)) return (first + by - LIFT.step) / 2;
  return first;
}

/** How far on what is in the way here is in the way, in mm. One convex body is so over one stretch. */
function stillBlocked(moving: readonly Convex[], solid: Solid, far: Vec, along: Direction, here: number): number {
  for (const hull of moving)
    for (const piece of solid.pieces) {
      const alone = { pieces: [piece], low: piece.low, high: piece.high };
      const isBlocked = (by: number): boolean => sweeping([hull], far, times(along, by * UNITS_PER_MM))(alone);
      if (!isBlocked(here)) continue;
      let [last, clear]: [number, number] = isBlocked(LIFT.most) ? [LIFT.most, LIFT.most] : [here, LIFT.most];
      while (clear - last > LIFT.step) {
        const between = last + LIFT.step * Math.floor((clear - last) / LIFT.step / 2);
        if (isBlocked(between)) last = between;
        else clear = between;
      }
      return last;
    }
  return here;
}
