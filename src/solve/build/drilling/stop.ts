/** Where the stop of a drill is set. */
import type { Length } from "../../../units/length.ts";
import { add, max, subtract, ZERO } from "../../../units/rational.ts";
import { INDICES } from "../../design/space.ts";
import type { Hole, Point } from "../../design.ts";
import type { Jig } from "../model/jig.ts";
import type { Plan } from "../order/index.ts";

/** The jig that guides the bit of a hole, by its place among all. */
export const jigFor = (hole: number, jigs: readonly Jig[]): Jig | null =>
  jigs.find(({ uses }) => uses.holes.includes(hole)) ?? null;

/**
 * From the tip of the bit to the face that it goes in by: the depth of the hole, and before it the wood and the hardware that a bit passes that is guided
 * by holes that are there, or the jig that guides it. Only along an axis: what leans is bored by a jig.
 */
export function stopOf(hole: Hole, plan: Pick<Plan, "holes" | "fasteners">, jig: Jig | null): Length {
  const depth = hole.stages.at(-1)?.depth ?? ZERO;
  const axis = INDICES.find((i) => Math.abs(hole.direction[i]) === 1);
  if (hole.atBench) return add(depth, jig?.thickness ?? ZERO);
  if (hole.for === null || axis === undefined) return depth;
  const along = (at: Point): Length =>
    hole.direction[axis] > 0 ? subtract(hole.at[axis], at[axis]) : subtract(at[axis], hole.at[axis]);
  const wood = plan.holes.filter(
    (other) => other.for === hole.for && other.part !== hole.part && GUIDES.has(other.kind),
  );
  // The screw of a button or clip passes no part: its head lies on what the bit goes in by.
  const hardware = plan.fasteners.filter(({ id, through }) => id === hole.for && through.length === 0);
  return add(
    depth,
    [...wood.map(({ at }) => along(at)), ...hardware.map(({ head }) => along(head.at))].reduce(max, ZERO),
  );
}

/** They let a bit through that is no wider than their screw. */
const GUIDES: ReadonlySet<Hole["kind"]> = new Set<Hole["kind"]>(["clearance", "oversized", "slot", "bolt"]);
