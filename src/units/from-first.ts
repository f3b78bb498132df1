/** Places that belong together, such as the holes of one hinge. */
import { inches, isSame, type Length } from "./length.ts";
import { add, less, max, min, subtract } from "./rational.ts";
import { roundTo } from "./round.ts";

/** Spaces that are read one by one, as on the leaf of a hinge; what lies farther apart is measured from the side, and jigs are made so. */
const NEAR = inches(3);

/**
 * What is told of places that are measured from one side: the nearest to the step, every other by what it is told to be farther. So a space comes out
 * the same wherever it is told. For other lengths, and for what lies far apart, null.
 */
export function fromFirst(places: readonly Length[], step: Length): (at: Length) => Length | null {
  const [some, ...more] = places;
  if (some === undefined) return () => null;
  const first = more.reduce(min, some);
  if (less(NEAR, subtract(more.reduce(max, some), first))) return () => null;
  return (at) => {
    const place = places.find((each) => isSame(each, at));
    return place === undefined ? null : add(roundTo(first, step), roundTo(subtract(place, first), step));
  };
}
