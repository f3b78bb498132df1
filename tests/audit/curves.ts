/** Promise 0: the solids follow the curves that the features tell, to 0.05 mm, and leave wood rather than take it. */
import { isBox, type Model } from "./model.ts";
import { TOLERANCE } from "./overlap.ts";
import type { BoxFeature } from "./record.ts";
import { dot, plus, times, type V3 } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

/** A point beside the true curve: on the side that is taken away by more than a flat may leave, and on the side of the wood. */
interface Probe {
  readonly gone: V3;
  readonly wood: V3;
}
const FLAT = 0.05 + TOLERANCE;

export function* curves(model: Model): Violations {
  for (const part of model.record.parts) {
    const features = part.features.filter(isBox);
    const filled = (at: V3) =>
      model
        .solid(part.id)
        .some((body) => body.faces.every(({ normal, offset }) => dot(at, normal) <= offset + TOLERANCE / 10));
    for (const feature of features.filter(({ radius }) => radius !== undefined && radius > 0)) {
      // Where other cuts meet the curve, only what this one takes away can be told.
      const alone = part.features.length === 1;
      const follows = ({ gone, wood }: Probe) => !filled(gone) && (!alone || filled(wood));
      if (!probes(feature).some((way) => way.every(follows)))
        yield violation("curves are as told", part.id, `a ${feature.kind} of radius ${feature.radius} is not there`);
    }
  }
}

/** The ways in which the curve may lie in its box. */
function probes({ kind, origin, along, across, into, size, radius: r = 0 }: BoxFeature): readonly (readonly Probe[])[] {
  const [a, b, c] = size;
  const at = (x: number, y: number, z: number): V3 =>
    plus(origin, plus(plus(times(along, x), times(across, y)), times(into, z)));
  const angles = (from: number, to: number) =>
    Array.from({ length: 9 }, (_, i) => from + ((i + 0.5) / 9) * (to - from));
  /** Around a centre in the plane of two sizes; `sign`: on which side of the circle the wood is. */
  const arc = (place: (u: number, v: number) => V3, u: number, v: number, from: number, to: number, sign: 1 | -1) =>
    angles(from, to).map((t): Probe => {
      const away = (by: number) => place(u + (r + by) * Math.cos(t), v + (r + by) * Math.sin(t));
      return { gone: away(-sign * FLAT), wood: away(sign * TOLERANCE) };
    });
  const face = (u: number, v: number) => at(u, v, c / 2);
  const [east, north, west, south] = [0, Math.PI / 2, Math.PI, (3 * Math.PI) / 2];
  switch (kind) {
    case "arch": {
      const half = Math.asin(Math.min(1, a / (2 * r)));
      return [arc((u, v) => at(u, b / 2, v), a / 2, c - r, north - half, north + half, 1)];
    }
    case "slot":
    case "cut-out":
      return [
        [
          ...arc(face, r, r, west, south, 1),
          ...arc(face, a - r, r, south, 2 * Math.PI, 1),
          ...arc(face, a - r, b - r, east, north, 1),
          ...arc(face, r, b - r, north, west, 1),
        ],
      ];
    default: {
      const edge = (u: number, v: number) => at(a / 2, u, v);
      return [arc(edge, r, r, west, south, -1), arc(edge, 0, r, south, 2 * Math.PI, -1)];
    }
  }
}
