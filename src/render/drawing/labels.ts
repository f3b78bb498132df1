/** The labels of parts in a picture. */
import { type Placed, picturePoint, type View } from "../../geometry/picture/index.ts";
import type { VisibleFace } from "../../geometry/types.ts";
import { plus, times } from "../../geometry/vec.ts";
import type { Fit } from "./fit.ts";
import type { Label } from "./place-balloons.ts";
import { seenArea, targetsOn } from "./targets.ts";

/** Of more than this many alike, the one that is best seen stands for all. */
const ALIKE = 8;
/** Square points; less of a part is no place for a leader. */
const ENOUGH = 12;

export interface Marked extends Placed {
  readonly mark: string;
}

/** One label for each part that has a mark; a leader to a part that does not show is dashed. In the order of the marks' first parts. */
export function labels(
  parts: readonly Marked[],
  faces: readonly VisibleFace[],
  view: View,
  fit: Fit,
): readonly Label[] {
  const marks = [...new Set(parts.map(({ mark }) => mark))].filter((mark) => mark !== "");
  return marks.flatMap((mark): readonly Label[] => {
    const alike = parts.filter((part) => part.mark === mark);
    const all = alike.map((part) => ({
      label: labelOf(part, faces, view, fit),
      seen: seenArea(faces, part.id, fit.scale),
    }));
    if (all.length <= ALIKE) return all.map(({ label }) => label);
    const [clearest] = all.sort((a, b) => b.seen - a.seen);
    return clearest ? [{ ...clearest.label, mark: `${mark} × ${all.length}` }] : [];
  });
}

function labelOf(part: Marked, faces: readonly VisibleFace[], view: View, fit: Fit): Label {
  const { id, mark, solid, shift = [0, 0, 0] } = part;
  if (seenArea(faces, id, fit.scale) >= ENOUGH) return { mark, targets: targetsOn(faces, id, fit), hidden: false };
  const middle = plus(times(plus(solid.low, solid.high), 0.5), shift);
  return { mark, targets: [fit.page(picturePoint(view, middle))], hidden: true };
}
