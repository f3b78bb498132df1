/** Wood and hardware cut upright through a fixing, and what of it is seen along the wall. */
import { type View, visibleFaces } from "../../../../geometry/picture/index.ts";
import { axisPlane } from "../../../../geometry/plane.ts";
import { cut, isEmpty } from "../../../../geometry/solid.ts";
import type { Point2, Solid, VisibleFace } from "../../../../geometry/types.ts";
import { panesOf } from "../../../../solve/build/order/glazing.ts";
import type { Build } from "../../../../solve/build.ts";
import { rational, subtract } from "../../../../units/index.ts";
import type { Extent, Fit } from "../../fit.ts";
import type { Marked } from "../../labels.ts";
import { type Picture, SPECK, takePicture } from "../../picture.ts";
import { clipped } from "../close-up.ts";
import type { Scene } from "../scene.ts";
import { comingLater, type WallFixing } from "./fixing.ts";
import type { Strap } from "./strap.ts";

export interface CutOpen {
  readonly picture: Picture;
  /** What is seen, and of wood the faces that the cut has made. */
  readonly faces: readonly VisibleFace[];
  readonly wood: readonly VisibleFace[];
  /** The same of what is hung there later. */
  readonly later: readonly VisibleFace[];
  /** Ids of hardware. */
  readonly metal: ReadonlySet<string>;
}

type Body = { readonly id: string; readonly solid: Solid };

/** So thick a slice is looked at for the faces of the cut, in units of 1/16 µm. */
const SLICE = rational(16);

/** Only what lies within the extent. */
export function cutOpen(
  build: Build,
  scene: Scene,
  fixing: WallFixing,
  strap: Strap | null,
  { view, extent, fit }: { readonly view: View; readonly extent: Extent; readonly fit: Fit },
): CutOpen {
  const { one, along } = fixing;
  const [own] = one.hardware;
  const plane = axisPlane(along, 1, own.at[along]);
  const behind = axisPlane(along, -1, subtract(own.at[along], SLICE));
  const cutFaces = (bodies: readonly Body[]): readonly VisibleFace[] => {
    const slices = bodies.map(({ id, solid }) => ({ id, solid: cut(cut(solid, plane), behind) }));
    const found = visibleFaces(slices.filter(isThere), view).filter(({ normal }) => normal[along] > 0.5);
    return clipped(taken, found, extent).faces;
  };
  const bracket: readonly Marked[] = strap ? [strap.bracket] : [];
  const metal = new Set([...scene.hardware.keys(), ...bracket.map(({ id }) => id)]);
  const wood = scene.items.filter(({ id }) => !metal.has(id));
  const shown = [...scene.items.filter(({ id }) => id === own.id), ...bracket, ...wood];
  const half = shown.map((item) => ({ ...item, solid: cut(item.solid, plane) })).filter(isThere);
  const taken = takePicture(half, view, fit, { clear: panesOf(build.design), speck: SPECK.step });
  return {
    ...clipped(taken, taken.sight.faces(), extent),
    ...{ wood: cutFaces(wood), later: cutFaces(comingLater(build, scene, fixing)), metal },
  };
}

const isThere = ({ solid }: Body): boolean => !isEmpty(solid);

export const outlinesOf = (faces: readonly VisibleFace[]): readonly (readonly [Point2, Point2])[] =>
  faces.flatMap(({ polygons }) =>
    polygons.flatMap((polygon) => polygon.map((p, i) => [p, polygon[(i + 1) % polygon.length] ?? p] as const)),
  );
