import { overlapDepth } from "../../geometry/index.ts";
import type { Axis } from "../../parse/draft.ts";
import { type Length, TOLERANCE } from "../../units/length.ts";
import { rational, subtract, toNumber } from "../../units/rational.ts";
import type { Part } from "../design.ts";
import { axisAt, common, INDICES } from "./space.ts";

/** How far two parts reach into each other, and the direction in which that is, where it is one of the three. */
export interface Overlap {
  readonly by: Length;
  readonly way: Axis | null;
}

/** Null where they do not. */
export function overlapOf(a: Part, b: Part): Overlap | null {
  const depth = overlapDepth(a.solid, b.solid);
  if (depth <= TOLERANCE) return null;
  const { low, high } = common(a.body, b.body);
  const way = INDICES.find((i) => Math.abs(toNumber(subtract(high[i], low[i])) - depth) <= TOLERANCE);
  return { by: rational(Math.round(depth)), way: way === undefined ? null : axisAt(way) };
}
