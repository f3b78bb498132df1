/** What a plane cuts of solids, as faces and outlines in the plane of view. */
import { type View, viewFrom, visibleFaces } from "../../../geometry/picture/index.ts";
import { axisPlane } from "../../../geometry/plane.ts";
import { cut, isEmpty } from "../../../geometry/solid.ts";
import type { Point2, Solid, Vec } from "../../../geometry/types.ts";
import { dot, norm } from "../../../geometry/vec.ts";
import type { CutThrough } from "../../../solve/build/model/cut-through.ts";
import { add, rational, subtract } from "../../../units/index.ts";

/** So thick a slice is looked at, in units of 1/16 µm. */
const SLICE = rational(16);

/** What is level as the work lies from above, upright planes from the right, the front or the top of the piece; `ceiling`: what points up there. */
export function viewOf({ axis }: Pick<CutThrough, "axis">, ceiling: Vec): View {
  const isLevel = ceiling[axis] !== 0;
  const towards: Vec = isLevel ? ceiling : axis === 0 ? [1, 0, 0] : axis === 1 ? [0, -1, 0] : [0, 0, 1];
  const name = isLevel ? "above" : (["the right", "the front", "the top"] as const)[axis];
  return viewFrom(name, towards, isLevel ? (axis === 2 ? [0, 1, 0] : [0, 0, 1]) : ceiling);
}

/** How the work lies in a section, where that is not as the finished piece stands and is not told by a look from above: words of it are then another way round than in the drawing. Else "". */
export function lies({ axis }: Pick<CutThrough, "axis">, ceiling: Vec): string {
  const [x, y, z] = ceiling;
  if (z > 0 || ceiling[axis] !== 0) return "";
  const under = x !== 0 ? (x < 0 ? "right side" : "left side") : y < 0 ? "back" : "front";
  return z < 0 ? ", upside down, as the work lies" : `, lying on its ${under}, as the work does`;
}

export function cutFaces(solid: Solid, { axis, at }: CutThrough, view: View): readonly (readonly Point2[])[] {
  const [low, high] = view.towards[axis] > 0 ? [subtract(at, SLICE), at] : [at, add(at, SLICE)];
  const slice = cut(cut(solid, axisPlane(axis, 1, high)), axisPlane(axis, -1, low));
  if (isEmpty(slice)) return [];
  return visibleFaces([{ id: "", solid: slice }], view)
    .filter(({ normal }) => dot(normal, view.towards) > 0.5 * norm(normal) * norm(view.towards))
    .flatMap(({ polygons }) => polygons);
}
