/** Where the stop of a drill is set. */
import type { Length } from "../../../units/length.ts";
import { add, less, max, subtract, ZERO } from "../../../units/rational.ts";
import { INDICES } from "../../design/space.ts";
import type { Hole } from "../../design.ts";

/**
 * From the tip of the bit to the face that it goes in by: the depth of the hole, and before it the wood that a bit passes that is guided by holes that
 * are there. Only along an axis: what leans is bored by a jig.
 */
export function stopOf(hole: Hole, all: readonly Hole[]): Length {
  const depth = hole.stages.at(-1)?.depth ?? ZERO;
  const axis = INDICES.find((i) => Math.abs(hole.direction[i]) === 1);
  if (hole.atBench || hole.for === null || axis === undefined) return depth;
  const along = (other: Hole): Length =>
    hole.direction[axis] > 0 ? subtract(hole.at[axis], other.at[axis]) : subtract(other.at[axis], hole.at[axis]);
  const before = all.filter(
    (other) => other.for === hole.for && other.part !== hole.part && less(ZERO, along(other)) && GUIDES.has(other.kind),
  );
  return add(depth, before.map(along).reduce(max, ZERO));
}

/** They let a bit through that is no wider than their screw. */
const GUIDES: ReadonlySet<Hole["kind"]> = new Set<Hole["kind"]>(["clearance", "oversized", "slot", "bolt"]);
