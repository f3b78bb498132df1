/** Whether holes meet: each stage of a hole is a cylinder. */

import { once } from "../../../geometry/index.ts";
import { dot, minus, norm } from "../../../geometry/vec.ts";
import { TOLERANCE } from "../../../units/index.ts";
import type { Hole } from "../../design.ts";
import { meet, type Rod, rodOf } from "./rods.ts";
import { cylindersOf } from "./slots.ts";

/** Closer than touching. Holes of different parts never meet, and spare ones give way. */
export const holesMeet = (a: Hole, b: Hole): boolean => !a.spare && !b.spare && crowd(a, b);

const crowd = (a: Hole, b: Hole): boolean =>
  a.part === b.part && boresOf(a).some((p) => boresOf(b).some((q) => meet(p, q)));

/** All holes but the spare ones that come nearer to another than twice its diameter, from middle to middle, or that meet one from the other side. */
export function withRoom(holes: readonly Hole[]): readonly Hole[] {
  const kept = holes.filter(({ spare }) => !spare);
  for (const hole of holes)
    if (hole.spare && !kept.some((other) => crowd(hole, other) || isNear(hole, other))) kept.push(hole);
  const all = new Set(kept);
  return holes.filter((hole) => all.has(hole));
}

function isNear(a: Hole, b: Hole): boolean {
  if (a.part !== b.part || dot(a.direction, b.direction) < 0.99) return false;
  const [p, q] = [cylindersOf(a)[0], cylindersOf(b)[0]];
  return (
    p !== undefined &&
    q !== undefined &&
    norm(minus(p.mouth, q.mouth)) < 2 * Math.max(p.diameter, q.diameter) - TOLERANCE
  );
}

const boresOf = once((hole: Hole): readonly Rod[] =>
  cylindersOf(hole).map(({ mouth, diameter, depth }) => rodOf(mouth, hole.direction, diameter / 2, depth)),
);
