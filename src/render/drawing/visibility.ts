/** How much of a part can be seen, estimated from points on its faces: cheap enough to try many views. */
import { type Placed, perView, Stage, type View } from "../../geometry/picture/index.ts";
import type { Solid, Vec } from "../../geometry/types.ts";
import { cross, dot, minus, plus, times } from "../../geometry/vec.ts";
import { position } from "../../geometry/vertex.ts";

/** Share of what shows of the item when it stands alone, 0 to 1. */
export function shareSeen(item: Placed, stage: Stage): number {
  const alone = seenAlone(item.solid, stage.view);
  return alone > 0 ? seen(item, stage) / alone : 0;
}

/** The same wherever it lies. */
const seenAlone = perView((solid: Solid, view): number => {
  const item = { id: "", solid };
  return seen(item, new Stage([item], view));
});

/** The seen area of an item, on the scale of the view's vector. */
function seen({ solid, shift = [0, 0, 0] }: Placed, stage: Stage): number {
  let total = 0;
  for (const { faces } of solid.pieces)
    for (const { plane, vertices } of faces) {
      if (dot([plane.a, plane.b, plane.c], stage.view.towards) <= 0) continue;
      const corners = vertices.map((v) => plus(position(v), shift));
      const middle = times(
        corners.reduce((a, b) => plus(a, b)),
        1 / corners.length,
      );
      const samples = [middle, ...corners.map((corner) => plus(times(middle, 0.3), times(corner, 0.7)))];
      const free = samples.filter((p) => !stage.hides(p)).length / samples.length;
      if (free > 0) total += free * facingArea(corners, stage.view);
    }
  return total;
}

function facingArea(corners: readonly Vec[], { towards }: View): number {
  const [first, ...others] = corners;
  if (!first) return 0;
  return others.reduce((sum, p, i) => {
    const q = others[i + 1];
    return q ? sum + dot(cross(minus(p, first), minus(q, first)), towards) / 2 : sum;
  }, 0);
}
