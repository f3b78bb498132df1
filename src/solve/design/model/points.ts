/** Places and directions in the piece. Types only. */
import type { Length } from "../../../units/length.ts";

export interface Box {
  readonly low: readonly [Length, Length, Length];
  readonly high: readonly [Length, Length, Length];
}

export type Point = readonly [Length, Length, Length];
/** A unit vector, one of ±x, ±y, ±z but in parts that are turned. */
export type Direction = readonly [number, number, number];
