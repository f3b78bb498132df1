import { bounds } from "../../geometry/convex.ts";
import type { Vec } from "../../geometry/types.ts";
import { plus, times } from "../../geometry/vec.ts";
import type { Feature, Point } from "../../solve/design.ts";
import { TOLERANCE, toNumber } from "../../units/index.ts";

export interface Around {
  readonly low: Vec;
  readonly high: Vec;
}

export const toVec = (p: Point): Vec => [toNumber(p[0]), toNumber(p[1]), toNumber(p[2])];

/** The box around a feature, in units of length; of one that lies aslant, that of its two far corners. */
export function boxOf({ origin, along, across, into, size }: Extract<Feature, { readonly into: unknown }>): Around {
  const [a, b, c] = toVec(size as Point);
  const from = toVec(origin);
  return bounds([from, plus(plus(plus(from, times(along, a)), times(across, b)), times(into, c))]);
}

/** Whether a point lies in a box, or on it. */
export const inBox = ({ low, high }: Around, p: Vec): boolean =>
  ([0, 1, 2] as const).every((i) => p[i] >= low[i] - TOLERANCE && p[i] <= high[i] + TOLERANCE);
