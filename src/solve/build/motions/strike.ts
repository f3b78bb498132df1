import { type Hull, hullDepth, type Solid } from "../../../geometry/index.ts";
import { TOLERANCE } from "../../../units/length.ts";
import type { BuiltMotion } from "../../build.ts";
import type { Pose } from "../../design.ts";
import type { Strike } from "../model/motion.ts";
import type { Body } from "./bodies.ts";
import { after, backOf, type Move, movedHulls, moveOf } from "./move.ts";

/** The first thing that is struck on the way, those motions open that are said to be. Null where nothing is. */
export function firstStrike(
  motion: BuiltMotion,
  bodies: readonly Body[],
  opened: ReadonlyMap<BuiltMotion, Pose>,
): Strike | null {
  const moving = bodies.filter(({ id }) => motion.moves.includes(id));
  const still = bodies.filter(({ id }) => !motion.moves.includes(id));
  const back = new Map([...opened].flatMap(([other, pose]) => other.moves.map((id) => [id, backOf(pose)] as const)));
  for (const pose of motion.poses) {
    const way = moveOf(pose);
    let worst: Strike | null = null;
    for (const body of moving) {
      const shut = hullsOf(body, way);
      for (const other of still) {
        // What stands open is struck where the moving body, brought back the way that it opened, would strike it shut.
        const home = back.get(other.id);
        const by = reach(home ? hullsOf(body, after(way, home)) : shut, other.solids);
        if (by > TOLERANCE && by > (worst?.by ?? 0)) worst = { moving: body.id, other: other.id, at: pose.at, by };
      }
    }
    if (worst) return worst;
  }
  return null;
}

const hullsOf = (body: Body, way: Move): readonly Hull[] => body.solids.flatMap((solid) => movedHulls(solid, way));

function reach(hulls: readonly Hull[], solids: readonly Solid[]): number {
  let most = 0;
  for (const hull of hulls) for (const solid of solids) most = Math.max(most, hullDepth(hull, solid));
  return most;
}
