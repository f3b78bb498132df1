import {
  type Bounds,
  boundsOfAll,
  type Convex,
  hullDepth,
  type Move,
  once,
  type Solid,
} from "../../../geometry/index.ts";
import { boundsDepth } from "../../../geometry/separation.ts";
import { TOLERANCE } from "../../../units/length.ts";
import type { BuiltMotion } from "../../build.ts";
import type { Pose } from "../../design.ts";
import type { Strike } from "../model/motion.ts";
import type { Body } from "./bodies.ts";
import { after, backOf, movedPieces, moveOf } from "./move.ts";

/** The first thing that is struck on the way, those motions open that are said to be. Null where nothing is. */
export function firstStrike(
  motion: BuiltMotion,
  bodies: readonly Body[],
  opened: ReadonlyMap<BuiltMotion, Pose>,
): Strike | null {
  const moving = bodies.filter(({ id }) => motion.moves.includes(id));
  const still = bodies.filter(({ id }) => !motion.moves.includes(id));
  const back = new Map(
    [...opened].flatMap(([other, pose]) => {
      const home = backOf(pose);
      return other.moves.map((id) => [id, home] as const);
    }),
  );
  for (const pose of motion.poses) {
    const way = moveOf(pose);
    let worst: Strike | null = null;
    for (const body of moving) {
      const at = once((home: Move) => piecesOf(body, after(way, home)));
      for (const other of still) {
        // What stands open is struck where the moving body, brought back the way that it opened, would strike it shut.
        const by = reach(at(back.get(other.id) ?? SHUT), other.solids);
        if (by > TOLERANCE && by > (worst?.by ?? 0)) worst = { moving: body.id, other: other.id, at: pose.at, by };
      }
    }
    if (worst) return worst;
  }
  return null;
}

const SHUT: Move = { point: (at) => at, way: (way) => way };

/** With the bounds of all. */
interface Pieces {
  readonly pieces: readonly Convex[];
  readonly around: Bounds;
}

function piecesOf(body: Body, way: Move): Pieces {
  const pieces = body.solids.flatMap((solid) => movedPieces(solid, way));
  return { pieces, around: boundsOfAll(pieces) };
}

function reach({ pieces, around }: Pieces, solids: readonly Solid[]): number {
  let most = 0;
  for (const solid of solids) {
    if (boundsDepth(around, solid) <= most) continue;
    for (const piece of pieces) most = Math.max(most, hullDepth(piece, solid));
  }
  return most;
}
