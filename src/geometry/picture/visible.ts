/**
 * The parts of faces that are seen: each face of a piece towards the eye, minus the shadow of every other piece, in convex
 * fragments. A seam between two pieces of one part lies in the shadow of the nearer one, so it needs no care of its own.
 */

import { comparePlanes } from "../plane.ts";
import type { Plane, Vec, VisibleFace } from "../types.ts";
import { dot, minus, norm, plus } from "../vec.ts";
import { position } from "../vertex.ts";
import { area, isApart, minusConvex, type Polygon } from "./polygon.ts";
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
  const low: [number, number] = [Infinity, Infinity];
  const high: [number, number] = [-Infinity, -Infinity];
  let farthest = Infinity;
  for (const p of polygon) {
    const flat = picturePoint(stage.view, p);
    for (const axis of [0, 1] as const) {
      low[axis] = Math.min(low[axis], flat[axis]);
      high[axis] = Math.max(high[axis], flat[axis]);
    }
    farthest = Math.min(farthest, nearness(stage.view, p));
  }
  let left: readonly Polygon[] = [polygon];
  for (const { halves } of stage.within(low, high, farthest)) {
    if (left.every((fragment) => isApart(fragment, halves))) continue;
    left = left.flatMap((fragment) => minusConvex(fragment, halves));
    if (left.length === 0) return [];
  }
  return left.filter(isSeen);
}
