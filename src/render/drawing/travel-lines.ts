/** Chain lines along which parts go home. */
import { type Stage, stretch } from "../../geometry/picture/index.ts";
import type { Point2, Vec } from "../../geometry/types.ts";
import { cross, dot, minus, norm, plus } from "../../geometry/vec.ts";
import type { BuiltJoint } from "../../solve/build.ts";
import type { Item } from "../document.ts";
import type { Fit } from "./fit.ts";
import { onPage, strokes } from "./ink.ts";
import { CHAIN } from "./strokes.ts";

export const travelLines = (
  joints: readonly BuiltJoint[],
  shifts: ReadonlyMap<string, Vec>,
  stage: Stage,
  fit: Fit,
): readonly Item[] => strokes(onPage(fit, travelRuns(joints, shifts, stage)), CHAIN);

/** From where a part touches its mate to where that is now, as far as nothing hides it; in the plane of view. `ways`: unit vectors of what goes home at a slant. */
export function travelRuns(
  joints: readonly BuiltJoint[],
  shifts: ReadonlyMap<string, Vec>,
  stage: Stage,
  ways: readonly Vec[] = [],
): readonly (readonly [Point2, Point2])[] {
  return joints.flatMap(({ parts: [a, b], contact }) => {
    const [p, q] = [shifts.get(a), shifts.get(b)];
    if (!p || !q) return [];
    const apart = minus(p, q);
    const largest = [...contact].sort((c, d) => d.area - c.area)[0];
    // A way that is askew was drawn sideways only to centre the picture: no line shows it.
    const straight =
      ([0, 1, 2] as const).filter((i) => Math.abs(apart[i]) > 1).length === 1 ||
      ways.some((way) => norm(cross(way, apart)) < 1 && dot(apart, apart) > 1);
    if (!largest || !straight) return [];
    const [from, to] = [plus(largest.centre, p), plus(largest.centre, q)];
    return stage.look(from, to).seen.map((run) => stretch(stage.view, from, to, run));
  });
}
