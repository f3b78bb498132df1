/** Where a part that leans stands, and where it ends above: its level ends, as they show in a view. */
import { exactBounds } from "../../../geometry/bounds.ts";
import type { BuiltPart } from "../../../solve/build.ts";
import { compare, equal, type Length, rational, TOLERANCE, toNumber } from "../../../units/index.ts";

/** From corner to corner along one axis, at a place along the other. */
export interface LevelEnd {
  readonly from: Length;
  readonly to: Length;
  readonly at: number;
}

/** Both ends, if the part leans in the plane of these axes (`axes`: along the ends, and from one to the other); else none. */
export function levelEnds({ solid, turned }: BuiltPart, axes: readonly [0 | 1 | 2, 0 | 1 | 2]): readonly LevelEnd[] {
  if (!turned) return [];
  const [along, rise] = axes;
  const bounds = exactBounds(solid);
  const corners = solid.pieces.flatMap(({ vertices }) => vertices);
  const ends = [bounds.low[rise], bounds.high[rise]].map((place): LevelEnd | null => {
    const at = toNumber(place);
    const there = corners
      .filter(({ x, y, z }) => Math.abs(([x, y, z][rise] ?? 0) - at) <= TOLERANCE)
      .map(({ X, Y, Z, W }) => rational([X, Y, Z][along] as bigint, W))
      .sort(compare);
    const [from, to] = [there[0], there.at(-1)];
    return from && to && toNumber(to) - toNumber(from) > TOLERANCE ? { from, to, at } : null;
  });
  const [low, high] = ends;
  if (!low || !high) return [];
  return equal(low.from, high.from) && equal(low.to, high.to) ? [] : [low, high];
}
