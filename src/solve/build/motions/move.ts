/** Rigid movements in doubles: they only judge. */
import {
  type Convex,
  circlePoint,
  convexOfPiece,
  type Move,
  moved,
  type Solid,
  type Vec,
} from "../../../geometry/index.ts";
import { dot, minus, plus } from "../../../geometry/vec.ts";
import type { Pose } from "../../design.ts";

export function moveOf({ rotate: { about, degrees }, shift }: Pose): Move {
  const way = turnAbout(about[1], degrees);
  return { way, point: (at) => plus(plus(about[0], way(minus(at, about[0]))), shift) };
}

export function backOf({ rotate: { about, degrees }, shift }: Pose): Move {
  const way = turnAbout(about[1], -degrees);
  return { way, point: (at) => plus(about[0], way(minus(minus(at, shift), about[0]))) };
}

export const after = (first: Move, then: Move): Move => ({
  point: (at) => then.point(first.point(at)),
  way: (way) => then.way(first.way(way)),
});

/** Right-handed about a unit vector: v cos + (k × v) sin + k (k · v)(1 − cos). */
function turnAbout(line: Vec, degrees: number): (v: Vec) => Vec {
  const [cos, sin] = circlePoint(degrees, 360);
  const [x, y, z] = line;
  return (v) => {
    const along = dot(line, v) * (1 - cos);
    return [
      v[0] * cos + (y * v[2] - z * v[1]) * sin + x * along,
      v[1] * cos + (z * v[0] - x * v[2]) * sin + y * along,
      v[2] * cos + (x * v[1] - y * v[0]) * sin + z * along,
    ];
  };
}

/** The pieces of a solid, moved. */
export const movedPieces = (solid: Solid, move: Move): readonly Convex[] =>
  solid.pieces.map((piece) => moved(convexOfPiece(piece), move));
