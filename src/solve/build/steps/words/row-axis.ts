import type { AxisIndex } from "../../../design/space.ts";

/** The direction in which several follow each other, by the low corners of the boxes around them. */
export function rowAxis(lows: readonly (readonly [number, number, number])[]): AxisIndex {
  const spread = (axis: AxisIndex): number => {
    const all = lows.map((low) => low[axis]);
    return Math.max(...all) - Math.min(...all);
  };
  return ([2, 0, 1] as const).reduce((so, axis) => (spread(axis) > spread(so) ? axis : so));
}
