/**
 * The parts of faces that are seen: each face of a piece towards the eye, minus the shadow of every other piece, in convex
 * fragments. A seam between two pieces of one part lies in the shadow of the nearer one, so it needs no care of its own.
 */

import { comparePlanes } from "../plane.ts";
import type { Plane, Vec, VisibleFace } from "../types.ts";
import { dot, minus, norm, plus } from "../vec.ts";
import { position } from "../vertex.ts";
import { area, minusConvex, type Polygon } from "./polygon.ts";
import { type Placed, Stage, shiftOf } from "./stage.ts";
import { nearness, picturePoint, type View } from "./view.ts";

/** Where two shadows meet, a strip as wide as their tolerance stays open between them: nothing is seen through that. Of area, and of width. */
const SLIVER = 160 * 160;
const STRIP = 3 * 160;

const isSeen = (fragment: Polygon): boolean => {
  const size = area(fragment);
  return size > SLIVER && size > STRIP * longestSide(fragment);
};

const longestSide = (fragment: Polygon): number =>
  fragment.reduce((so, p, i) => Math.max(so, norm(minus(p, fragment[(i + 1) % fragment.length] as Vec))), 0);

/** One entry for each item and plane with anything to see, in the order of the items, then of the planes. */
export function visibleFaces(
  items: readonly Placed[],
  view: View,
  stage = new Stage(items, view),
): readonly VisibleFace[] {
  return items.flatMap((item) => {
    const shift = shiftOf(item);
    const found = new Map<Plane, Polygon[]>();
    for (const { faces } of item.solid.pieces)
      for (const { plane, vertices } of faces) {
        if (dot([plane.a, plane.b, plane.c], view.towards) <= 0) continue;
        const seen = unhidden(
          vertices.map((p) => plus(position(p), shift)),
          stage,
        );
        if (seen.length > 0) found.set(plane, [...(found.get(plane) ?? []), ...seen]);
      }
    return [...found]
      .sort(([p], [q]) => comparePlanes(p, q))
      .map(([{ a, b, c, norm }, polygons]) => ({
        id: item.id,
        normal: [a / norm, b / norm, c / norm] as Vec,
        polygons: polygons.map((polygon) => polygon.map((p) => picturePoint(view, p))),
      }));
  });
}

function unhidden(polygon: Polygon, stage: Stage): Polygon[] {
  const flat = polygon.map((p) => picturePoint(stage.view, p));
  const [us, vs] = [flat.map((p) => p[0]), flat.map((p) => p[1])];
  const farthest = Math.min(...polygon.map((p) => nearness(stage.view, p)));
  let left: Polygon[] = [polygon];
  for (const { halves } of stage.within(
    [Math.min(...us), Math.min(...vs)],
    [Math.max(...us), Math.max(...vs)],
    farthest,
  ))
    left = left.flatMap((fragment) => minusConvex(fragment, halves));
  return left.filter(isSeen);
}
