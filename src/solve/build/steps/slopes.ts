/** Where a clamp presses on what does not lie square to it: there it slides. */
import { arcTangent, type Solid, type Vec } from "../../../geometry/index.ts";
import type { Length } from "../../../units/length.ts";
import { rational } from "../../../units/rational.ts";
import { type AxisIndex, faceOf, otherAxes } from "../../design/space.ts";
import type { Face } from "../../design.ts";

export interface Slope {
  readonly degrees: number;
  /** Towards which the wood falls back, and a wedge on it is thick. */
  readonly towards: Face;
}

/** Less than half a degree holds, and on the side of what leans so much no clamp presses; a bevel is met by one that is sawn alike. Common practice, no source. */
const LEAST = 0.5;
export const MOST = { leaning: 30, bevelled: 50 } as const;

/** How far a solid reaches along an axis at a place across it, and its slope there; null where it is not there. */
export function slopeAt(solid: Solid, axis: AxisIndex, high: boolean, at: readonly number[], most: number) {
  const [one, two] = otherAxes(axis);
  const outermost = solid.pieces
    .flatMap(({ faces }) => {
      let [low, top]: readonly [Hit, Hit] = [
        { at: -Infinity, normal: [0, 0, 0] },
        { at: Infinity, normal: [0, 0, 0] },
      ];
      for (const { plane } of faces) {
        const normal: Vec = [plane.a / plane.norm, plane.b / plane.norm, plane.c / plane.norm];
        const left = plane.d / plane.norm - normal[one] * (at[0] ?? 0) - normal[two] * (at[1] ?? 0);
        const hit = { at: left / normal[axis], normal };
        if (Math.abs(normal[axis]) < 1e-9) {
          if (left < 0) return [];
        } else if (normal[axis] > 0) {
          if (hit.at < top.at) top = hit;
        } else if (hit.at > low.at) low = hit;
      }
      return low.at < top.at ? [high ? top : low] : [];
    })
    .toSorted((a, b) => (high ? b.at - a.at : a.at - b.at))[0];
  if (!outermost) return null;
  const { normal } = outermost;
  const away = Math.sqrt(normal[one] * normal[one] + normal[two] * normal[two]);
  const degrees = Math.round((arcTangent(away / Math.abs(normal[axis])) * 1800) / Math.PI) / 10;
  const steep = Math.abs(normal[one]) > Math.abs(normal[two]) ? one : two;
  return {
    at: rational(Math.round(outermost.at)) as Length,
    slope:
      degrees < LEAST || degrees > most
        ? null
        : ({ degrees, towards: faceOf(steep, normal[steep] > 0) } satisfies Slope),
  };
}

interface Hit {
  readonly at: number;
  readonly normal: Vec;
}
