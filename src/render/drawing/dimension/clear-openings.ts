/** Openings in a row are told alike: clear, with what stands between them told too, wherever a chain would mix the two. */
import { compare, equal, type Length, toNumber } from "../../../units/index.ts";
import type { Station } from "./stations.ts";

/** Points on paper for each unit; in less than `gap` of them two places are the faces of something thin, if not less than `least`. */
export interface Thin {
  readonly scale: number;
  readonly gap: number;
  readonly least: number;
}

/**
 * The stops, sorted, and between two walls the other faces of what stands there, if an opening would be told together with the
 * thickness on both sides of it, and its neighbours without, or the other way round: a reader takes both for openings.
 */
export function clearOpenings(stops: readonly Station[], all: readonly Station[], thin: Thin): readonly Station[] {
  const other = (stop: Station): Station | undefined =>
    all.find((each) => stop.twins.some((twin) => equal(twin, each.at)) && isThin(stop.at, each.at, thin));
  // Whether the wood lies before the face or behind it.
  const side = (stop: Station): number => {
    const twin = other(stop)?.at ?? stop.twins.find((each) => isThin(stop.at, each, thin));
    return twin ? Math.sign(compare(twin, stop.at)) : 0;
  };
  const isTold = (stop: Station): boolean =>
    stops.some((each) => each !== stop && equal(each.at, other(stop)?.at ?? stop.at));
  const sides = stops.map(side);
  const mixed = stops.findIndex(
    (stop, i) =>
      i > 0 &&
      i + 2 < stops.length &&
      [i - 1, i, i + 1, i + 2].every((at) => sides[at] !== 0) &&
      sides[i] === -(sides[i + 1] ?? 0) &&
      !isTold(stop) &&
      !isTold(stops[i + 1] as Station),
  );
  if (mixed < 0) return stops;
  const more = stops.slice(1, -1).flatMap((stop) => {
    const twin = other(stop);
    return twin && !isTold(stop) ? [twin] : [];
  });
  return [...stops, ...more].sort((a, b) => compare(a.at, b.at));
}

function isThin(one: Length, two: Length, { scale, gap, least }: Thin): boolean {
  const apart = Math.abs(toNumber(one) - toNumber(two)) * scale;
  return apart >= least && apart < gap;
}
