/** How a part lies for its drawing: the side with most work in it to the eye, its length across the page, the edge with most work below. */

import { type View, viewFrom } from "../../../geometry/picture/index.ts";
import type { Vec } from "../../../geometry/types.ts";
import { cross, dot, times } from "../../../geometry/vec.ts";
import type { PartInWork } from "../../../solve/build/part-after.ts";
import type { BuiltPart } from "../../../solve/build.ts";
import { acrossOf } from "../../../solve/design/across-of.ts";
import { isInPlace } from "../../../solve/design/shapes/in-place.ts";
import { standsOut } from "../../../solve/design/shapes/kinds.ts";
import { holeOnBench, onBench } from "../../../solve/design/turning.ts";
import type { Axis, Feature, Hole } from "../../../solve/design.ts";
import { TOLERANCE } from "../../../units/index.ts";
import { type Around, boxOf } from "../feature-box.ts";

export interface Lying {
  /** As it is worked on, square to the axes. */
  readonly part: PartInWork;
  /** Those that are bored at the bench. */
  readonly holes: readonly Hole[];
  readonly face: View;
  /** Seen from below the face view, where it is drawn. */
  readonly edge: View;
  /** At which end of the length and of the width the numbers begin: at the foot and at the front wherever they lie, so that a part and its mirror image have the same. */
  readonly zero: { readonly along: "low" | "high"; readonly across: "low" | "high" };
  /** Drawn beside the face view where the ends tell more: at its left or right. */
  readonly end: { readonly view: View; readonly at: "left" | "right" } | null;
}

const AXES: Readonly<Record<Axis, Vec>> = { across: [1, 0, 0], deep: [0, 1, 0], up: [0, 0, 1] };
/** Of two sides alike the one that a person before the piece sees: right, front, top. */
const NEARER: Vec = [1, -1, 1];

/** Cuts that run out at the ends of a board, or stand out there. */
const TOLD_BY_ENDS: ReadonlySet<Feature["kind"]> = new Set(
  "groove rabbet tongue tenon haunch bridle cheek bevel tail socket".split(" ") as Feature["kind"][],
);
/** What is no reason for a drawing: it is told in words, and runs along all of an edge. */
const SOFTENED: ReadonlySet<Feature["kind"]> = new Set(["chamfer", "round-over"]);

/** Whether a part is more than a rectangle of its cut list's size when it leaves the bench. */
export const needsDrawing = (part: BuiltPart, holes: readonly Hole[]): boolean =>
  holes.some((hole) => hole.part === part.id && hole.atBench) ||
  part.features.some((feature) => !SOFTENED.has(feature.kind) && !isInPlace(feature));

export function lying(built: BuiltPart, allHoles: readonly Hole[]): Lying {
  const part = { ...built, ...onBench(built) };
  const holes = allHoles
    .filter((hole) => hole.part === part.id && hole.atBench)
    .map((hole) => holeOnBench(built, hole));
  const work = (side: Vec): number => workOn(part.features, holes, side);
  /** Of a side and the one across from it, the one with more work; `usual` where both have as much. */
  const richer = (side: Vec, usual: Vec): Vec => {
    const more = work(side) - work(times(side, -1));
    return more === 0 ? usual : more > 0 ? side : times(side, -1);
  };
  const [thin, broad] = acrossOf(part);
  const thick = AXES[thin];
  const long = AXES[part.axes.length];
  const nearer = times(thick, dot(thick, NEARER));
  const farther = times(nearer, -1);
  // What is cut into the edges shows where it runs out.
  const towards = richer(thick, openOn(part, farther) > openOn(part, nearer) ? farther : nearer);
  // What lies level lies as it stands, bottom or front below; what stands lies with its foot at the left.
  const wide = AXES[broad];
  const below = richer(wide, part.axes.length === "up" ? times(cross(towards, long), -1) : times(wide, -1));
  const up = times(below, -1);
  const right = cross(up, towards);
  // A pocket is seen at the end at which it comes out.
  const atEnd = (end: Vec): number => work(end) + pocketsTo(holes, end);
  const tells = part.features.some(({ kind }) => TOLD_BY_ENDS.has(kind)) || atEnd(right) + atEnd(times(right, -1)) > 0;
  const at = atEnd(right) >= atEnd(times(right, -1)) ? "right" : "left";
  const low = (way: Vec): "low" | "high" => (way[1] + way[2] < 0 ? "high" : "low");
  return {
    part,
    holes,
    zero: { along: low(right), across: low(up) },
    face: viewFrom(sideName(towards), towards, up),
    edge: viewFrom(sideName(below), below, towards),
    end: tells ? { at, view: viewFrom("the end", at === "right" ? right : times(right, -1), up) } : null,
  };
}

/** Cuts into a side, and holes that open on it. */
const workOn = (features: readonly Feature[], holes: readonly Hole[], side: Vec): number =>
  features.filter((feature) => "into" in feature && !("radius" in feature) && dot(feature.into, side) < -0.9).length +
  holes.filter((hole) => opensOn(hole, side)).length;

/** Cuts from another side that run out on this one: a rabbet is seen from both of its sides, and from the two across from them not at all. */
function openOn({ features, solid }: Pick<PartInWork, "features" | "solid">, side: Vec): number {
  const reach = ({ low, high }: Around): number => Math.max(dot(low, side), dot(high, side));
  return features.filter(
    (feature) =>
      "into" in feature &&
      !("radius" in feature) &&
      !standsOut(feature) &&
      Math.abs(dot(feature.into, side)) < 0.1 &&
      reach(boxOf(feature)) >= reach(solid) - TOLERANCE,
  ).length;
}

/** A pocket opens on the side that it runs along at a small angle, not at the end that it leads away from. */
function opensOn({ kind, direction }: Hole, side: Vec): boolean {
  const into = -dot(direction, side);
  return kind === "pocket" ? into > 0.1 && into < 0.7 : into > 0.7;
}

const pocketsTo = (holes: readonly Hole[], end: Vec): number =>
  holes.filter(({ kind, direction }) => kind === "pocket" && dot(direction, end) > 0.7).length;

/** "left", "front", "top": a side of the finished piece. */
export function sideWord(side: Vec): string {
  const [x, y, z] = side;
  if (Math.abs(x) > 0.5) return x < 0 ? "left" : "right";
  if (Math.abs(y) > 0.5) return y < 0 ? "front" : "back";
  return z < 0 ? "bottom" : "top";
}

const SEEN_FROM: Readonly<Record<string, string>> = {
  left: "the left",
  right: "the right",
  front: "the front",
  back: "the back",
  top: "above",
  bottom: "below",
};
const sideName = (side: Vec): string => SEEN_FROM[sideWord(side)] ?? "";
