/**
 * Where a picture is seen from. A view is a whole-number direction towards the eye, so that in the usual views, isometric
 * included, the axes of the picture are whole numbers too; square roots enter only when a point is written.
 */
import type { Point2, Vec } from "../types.ts";
import { cross, dot, norm } from "../vec.ts";

export interface View {
  /** Where it is seen from: "the front", "the front right and above". */
  readonly name: string;
  /** From the piece towards the eye, whole numbers. */
  readonly towards: Vec;
  /** The picture's axes in space, whole numbers, square to each other and to `towards`, not of unit length. */
  readonly right: Vec;
  readonly up: Vec;
  /** Lengths of `right` and `up`. */
  readonly lengths: Point2;
  /** The same for views along the same direction the same way up. */
  readonly key: string;
}

/**
 * The view from `towards` with `ceiling` pointing up the page. Where both lie in one line, as in a top view, the piece's x
 * (or, seen along x, its y) runs to the right. Both are vectors of small whole numbers.
 */
export function viewFrom(name: string, towards: Vec, ceiling: Vec = [0, 0, 1]): View {
  let right = cross(ceiling, towards);
  if (norm(right) === 0) right = towards[0] === 0 ? [1, 0, 0] : [0, 1, 0];
  const up = cross(towards, right);
  return { name, towards, right, up, lengths: [norm(right), norm(up)], key: `${towards} ${up}` };
}

export const FRONT = viewFrom("the front", [0, -1, 0]);
export const BACK = viewFrom("the back", [0, 1, 0]);
export const RIGHT = viewFrom("the right side", [1, 0, 0]);
export const LEFT = viewFrom("the left side", [-1, 0, 0]);
export const TOP = viewFrom("above", [0, 0, 1]);
export const BOTTOM = viewFrom("below", [0, 0, -1]);
export const ISOMETRIC = viewFrom("the front right and above", [1, -1, 1]);
export const ISOMETRIC_LEFT = viewFrom("the front left and above", [-1, -1, 1]);

/** The point in the plane of view, in the units of p: lengths square to the view are kept. */
export const picturePoint = (view: View, p: Vec): Point2 => [
  dot(view.right, p) / view.lengths[0],
  dot(view.up, p) / view.lengths[1],
];

/** How near to the eye, on the scale of `towards`. */
export const nearness = (view: View, p: Vec): number => dot(view.towards, p);
