/** A part as beams see it, and what holds one. Millimetres. */
import { UNITS_PER_MM } from "../../../../units/length.ts";
import { toNumber } from "../../../../units/rational.ts";
import type { AxisIndex } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";

export interface Support {
  /** The part that holds. */
  readonly by: string;
  readonly from: number;
  readonly to: number;
  /** Where it lies in the other horizontal direction. */
  readonly low: number;
  readonly high: number;
}

export const bodyOf = (part: Part, axis: AxisIndex): readonly [number, number] => [
  toNumber(part.body.low[axis]) / UNITS_PER_MM,
  toNumber(part.body.high[axis]) / UNITS_PER_MM,
];
