import type { Length } from "../../../units/length.ts";
import type { AxisIndex } from "../space.ts";

export interface Range {
  readonly low: Length;
  readonly high: Length;
}

/** Where a tenon or tongue stands on the end or edge of its part. */
export interface Section {
  /** Across the tenon's thickness, and along its width. */
  readonly thin: AxisIndex;
  readonly broad: AxisIndex;
  readonly cheek: Range;
  readonly wide: Range;
}
