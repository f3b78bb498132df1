import type { Stroke } from "../../document.ts";
import { GREY } from "../../palette.ts";
import type { Box, Segment } from "../plate.ts";

const STEP = 6;
export const HATCH: Stroke = { width: 0.25, ink: GREY };

/** Lines at 45° over a box, on one raster for the whole page. */
export function hatch({ left, top, right, bottom }: Box): readonly Segment[] {
  const out: Segment[] = [];
  // On each line x + y is constant.
  for (let sum = Math.ceil((left + top) / STEP) * STEP; sum < right + bottom; sum += STEP) {
    const [x1, x2] = [Math.max(left, sum - bottom), Math.min(right, sum - top)];
    if (x2 - x1 > 0.1)
      out.push([
        [x1, sum - x1],
        [x2, sum - x2],
      ]);
  }
  return out;
}
