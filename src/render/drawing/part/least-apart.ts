/** How close to each other the holes of a part are drawn. */
import { picturePoint, type View } from "../../../geometry/picture/index.ts";
import type { Spot } from "../drawing.ts";
import { toVec } from "../feature-box.ts";
import type { Bore } from "./bores.ts";
import { nearest } from "./near-holes.ts";

/** Between two mouths of holes that a view looks into or that come out there, in points; infinite where there are no two. */
export function leastApart(bores: readonly Bore[], view: View, points: number): number {
  const mouths = bores
    .filter(({ on }) => on === "face" || on === "other face")
    .flatMap(({ holes }) => holes.map((hole) => picturePoint(view, toVec(hole.at))))
    .map(([u, v]): Spot => [u * points, v * points]);
  return mouths.reduce((least, at) => Math.min(least, nearest(at, mouths)), Infinity);
}
