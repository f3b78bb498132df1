/** Where two solids touch face to face. */
import { TOLERANCE, UNITS_PER_MM } from "../units/length.ts";
import { comparePlanes, height } from "./plane.ts";
import { area, centre, clipAll, extent, isSliver, type Polygon } from "./polygon.ts";
import { boundsDepth } from "./separation.ts";
import { type Patch, skin } from "./skin.ts";
import type { Contact, Plane, Solid, Vec } from "./types.ts";
import { dot, norm, plus, times } from "./vec.ts";

/** A touching area: convex, in the plane of a face of the first solid. */
interface Touch {
  readonly plane: Plane;
  readonly normal: Vec;
  readonly polygon: Polygon;
}

/**
 * The areas where faces of a and b lie against each other with no more than the tolerance between them, or that much over; areas in
 * one plane make one contact. In the order of their exact planes. Edges that touch are no contact.
 */
export function contact(a: Solid, b: Solid): readonly Contact[] {
  if (boundsDepth(a, b) < -TOLERANCE) return [];
  const others = skin(b).filter((patch) => boundsDepth(patch, a) >= -TOLERANCE);
  const touches = skin(a).flatMap((patch) =>
    boundsDepth(patch, b) < -TOLERANCE ? [] : others.flatMap((other) => touching(patch, other)),
  );
  return inPlanes(touches).flatMap((group) => (group.some(isWide) ? [contactOf(group)] : []));
}

function touching(p: Patch, q: Patch): readonly Touch[] {
  if (boundsDepth(p, q) < -TOLERANCE || norm(plus(p.normal, q.normal)) > PARALLEL) return [];
  const away = times(q.normal, -1);
  const level = q.plane.d / q.plane.norm;
  const between = [
    { normal: q.normal, d: level + TOLERANCE },
    { normal: away, d: TOLERANCE - level },
  ];
  const polygon = clipAll(p.polygon, [...between, ...q.limits]);
  return isSliver(polygon) ? [] : [{ plane: p.plane, normal: p.normal, polygon }];
}

/** Narrower than the tolerance is an edge that touches, unless it is one strip of a wider area. */
const isWide = ({ polygon }: Touch): boolean => area(polygon) > TOLERANCE * extent(polygon);

/** Faces that differ by no more than the tolerance are one. */
function inPlanes(touches: readonly Touch[]): readonly (readonly Touch[])[] {
  const groups: Touch[][] = [];
  for (const touch of touches.toSorted((s, t) => comparePlanes(s.plane, t.plane))) {
    const group = groups.find(([first]) => first && isLevel(first, touch));
    if (group) group.push(touch);
    else groups.push([touch]);
  }
  return groups;
}

const isLevel = (s: Touch, t: Touch): boolean =>
  s.plane === t.plane ||
  (dot(s.normal, t.normal) > 0 && t.polygon.every((at) => Math.abs(height(s.plane, at)) <= TOLERANCE));

function contactOf(touches: readonly Touch[]): Contact {
  const [first] = touches;
  if (!first) throw new Error("a contact without a touching area");
  const total = touches.reduce((so, { polygon }) => so + area(polygon), 0);
  const at = touches.reduce<Vec>(
    (so, { polygon }) => plus(so, times(centre(polygon), area(polygon) / total)),
    [0, 0, 0],
  );
  const polygons = touches.map(({ polygon }) => polygon);
  return { centre: at, normal: first.normal, area: total, plane: first.plane, polygons };
}

/** The angle between faces that part by the tolerance over 10 mm; at a larger angle they meet in an edge. */
const PARALLEL = TOLERANCE / (10 * UNITS_PER_MM);
