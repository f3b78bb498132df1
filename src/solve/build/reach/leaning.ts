import type { Vec } from "../../../geometry/index.ts";
import { cross, plus, times, unit } from "../../../geometry/vec.ts";

/** Tangents of the leans that are tried: two and a half degrees and just under five, the most that a driver may lean from its screw. */
const LEANS = [0.0436, 0.0874] as const;

/** Unit vectors that lean from a unit vector: the smaller lean first, each to eight sides. */
export function leaning(axis: Vec): readonly Vec[] {
  const [u, v] = sides(axis);
  const toward: readonly (readonly [number, number])[] = [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
    [DIAGONAL, DIAGONAL],
    [DIAGONAL, -DIAGONAL],
    [-DIAGONAL, DIAGONAL],
    [-DIAGONAL, -DIAGONAL],
  ];
  return LEANS.flatMap((lean) =>
    toward.map(([a, b]) => unit(plus(axis, plus(times(u, lean * a), times(v, lean * b))))),
  );
}

const DIAGONAL = Math.SQRT1_2;

/** Two unit vectors square to the axis and to each other; one of them lies as near as can be to an axis of the piece. */
function sides(axis: Vec): readonly [Vec, Vec] {
  const [x, y, z] = [Math.abs(axis[0]), Math.abs(axis[1]), Math.abs(axis[2])];
  const least: Vec = z <= x && z <= y ? [0, 0, 1] : x <= y ? [1, 0, 0] : [0, 1, 0];
  const across = unit(cross(axis, least));
  return [cross(across, axis), across];
}
