/** Lines of dimensions in a drawing, and the edges of its wood. */
import type { Item } from "../../../src/render/document.ts";
import { crosses } from "../../../src/render/drawing/plate.ts";
import { NARROW, OUTLINE } from "../../../src/render/drawing/strokes.ts";
import { paths, segmentsOf } from "./look.ts";

export function thinLines(items: readonly Item[]) {
  const wood = paths(items)
    .filter(({ stroke, fill }) => stroke?.width === OUTLINE.width && stroke.cap === "round" && !fill)
    .flatMap(segmentsOf);
  const thin = paths(items)
    .filter(({ stroke, fill }) => stroke?.width === NARROW.width && !fill)
    .flatMap(segmentsOf);
  const across = thin.filter(([x1, y1, x2, y2]) =>
    wood.some(([x3, y3, x4, y4]) =>
      crosses(
        [
          [x1, y1],
          [x2, y2],
        ],
        [
          [x3, y3],
          [x4, y4],
        ],
      ),
    ),
  );
  return { thin, wood, across };
}
