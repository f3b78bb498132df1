/** Whether convex bodies overlap, at rest or on the way, by the separating axes of two convex polyhedra. */
import type { Convex } from "./convex.ts";
import { cross, dot, size, times, type V3, ZERO } from "./vector.ts";

/** What touches overlaps by less than this, in mm. */
export const TOLERANCE = 0.01;

/**
 * The least shift, in mm, that would part `b` from the room that `a` fills while it moves by `travel`.
 * That room is convex too: its faces are those of `a` and those that an edge of `a` draws. Stops early at `enough` or less.
 */
export function penetration(a: Convex, b: Convex, travel: V3 = ZERO, enough = TOLERANCE): number {
  let least = boxDepth(a, b, travel);
  if (least <= enough) return least;
  for (const axis of candidates(a, b, travel)) {
    least = Math.min(least, depth(a, b, travel, axis));
    if (least <= enough) break;
  }
  return least;
}

/** The deepest overlap of any two pieces. */
export const deepest = (a: readonly Convex[], b: readonly Convex[], travel: V3 = ZERO): number =>
  Math.max(-Infinity, ...a.flatMap((p) => b.map((q) => penetration(p, q, travel))));

export const overlaps = (a: readonly Convex[], b: readonly Convex[], travel: V3 = ZERO): boolean =>
  a.some((p) => b.some((q) => penetration(p, q, travel) > TOLERANCE));

function* candidates(a: Convex, b: Convex, travel: V3): Iterable<V3> {
  yield* a.normals;
  yield* b.normals;
  const moves = size(travel) > 0 ? [times(travel, 1 / size(travel))] : [];
  for (const e of [...a.edges, ...moves]) {
    for (const f of b.edges) yield* square(e, f);
    for (const v of moves) yield* square(e, v);
  }
}

/** Any direction is a fair way to part two bodies, so nearly parallel edges may be left out and rounding does no harm. */
function* square(e: V3, f: V3): Iterable<V3> {
  const axis = cross(e, f);
  const long = size(axis);
  if (long > 1e-6) yield times(axis, 1 / long);
}

/** The same along x, y and z, from the bounds alone: it settles most pairs. */
const boxDepth = (a: Convex, b: Convex, travel: V3): number =>
  Math.min(
    ...([0, 1, 2] as const).map((i) =>
      Math.min(a.high[i] + Math.max(0, travel[i]) - b.low[i], b.high[i] - a.low[i] - Math.min(0, travel[i])),
    ),
  );

/** How far `b` must go along the axis, one way or the other, to be clear of `a`. */
function depth(a: Convex, b: Convex, travel: V3, axis: V3): number {
  const [fromA, toA] = span(a, axis);
  const [fromB, toB] = span(b, axis);
  const moved = dot(travel, axis);
  return Math.min(toA + Math.max(0, moved) - fromB, toB - fromA - Math.min(0, moved));
}

function span(body: Convex, axis: V3): readonly [number, number] {
  let [from, to] = [Infinity, -Infinity];
  for (const p of body.points) {
    const h = dot(p, axis);
    if (h < from) from = h;
    if (h > to) to = h;
  }
  return [from, to];
}
