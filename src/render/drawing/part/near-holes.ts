/** What stands so near to each other on the page that it is seen as one. */
import type { Spot } from "../drawing.ts";
import { heading } from "../ink.ts";

const apart = (a: Spot, b: Spot): number => heading(a, b).distance;

/** In the order of their first: sets of which each has another of its set nearer than `reach`. */
export function clusters<T>(all: readonly T[], spotOf: (one: T) => Spot, reach: number): readonly (readonly T[])[] {
  const sets: T[][] = [];
  for (const one of all) {
    const near = sets.filter((set) => set.some((other) => apart(spotOf(one), spotOf(other)) < reach));
    const [first] = near;
    if (first === undefined) sets.push([one]);
    else {
      first.push(one, ...near.slice(1).flat());
      for (const merged of near.slice(1)) sets.splice(sets.indexOf(merged), 1);
    }
  }
  return sets;
}

/** In points: what is no farther apart is drawn as one. */
const SAME = 0.5;

/** From a place to the nearest other one that is told apart from it; infinite where there is none. */
export const nearest = (at: Spot, all: readonly Spot[]): number =>
  all.reduce((least, other) => {
    const far = apart(at, other);
    return far > SAME && far < least ? far : least;
  }, Infinity);

/** From a place to a stretch. */
export function fromStretch([x, y]: Spot, [a, b]: readonly [Spot, Spot]): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const long = dx * dx + dy * dy;
  const t = long === 0 ? 0 : Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / long));
  return apart([x, y], [a[0] + t * dx, a[1] + t * dy]);
}
