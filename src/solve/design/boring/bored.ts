/** Holes as they are bored: with drills that are sold, and as deep as a depth stop can be set. */
import type { Solid } from "../../../geometry/index.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, half, max, min, negate } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Arrangement, Design, Fitting, Hole, Part } from "../../design.ts";
import { farAt } from "../fastening/line.ts";
import { INDICES, otherAxes, shift } from "../space.ts";
import { holeOnBench, onBench } from "../turning.ts";
import { drillFor, type Fit } from "./drills.ts";
import { depthSteps } from "./marks.ts";

type Drilled = Pick<Design, "units" | "precision">;
type Stage = Hole["stages"][number];

/** Less under a blind hole gives way, and the point of the bit comes through: no depth is rounded into it. Common practice, no source. */
const REST = { inch: inches(1, 8), mm: millimetres(3) } as const;

/** Every hole of a design, in each of the ways in which its joints may be fastened. */
export function withDrills(design: Design): Design {
  const parts = new Map(design.parts.map((part) => [part.id, part]));
  const bore = (hole: Hole): Hole => {
    const part = parts.get(hole.part);
    return part ? bored(hole, part, design) : hole;
  };
  const all = <T extends Arrangement | Fitting | Part>(each: T): T => ({ ...each, holes: each.holes.map(bore) });
  return {
    ...design,
    parts: design.parts.map(all),
    joints: design.joints.map((joint) => ({ ...joint, arrangements: joint.arrangements.map(all) })),
    fittings: design.fittings.map(all),
  };
}

/** The hole with the drill and the depth of each of its stages. A hole that the maker drew stays as deep as it was drawn; a jig sets the depth of pockets. */
function bored(hole: Hole, part: Part, plan: Drilled): Hole {
  const { stages, slot } = hole;
  const isDeep = (i: number): boolean => hole.through && i === stages.length - 1;
  const stays = hole.for === null || hole.kind === "pocket";
  return {
    ...hole,
    stages: stages.map((stage, i): Stage => {
      if (stage.cone) return stage;
      const fit = fitOf(hole, i);
      const diameter = drillFor(stage.diameter, fit, plan.units);
      const depth = stays || isDeep(i) ? stage.depth : depthOf(hole, stage, part, plan, fit);
      return { ...stage, diameter, depth };
    }),
    ...(slot && { slot: { ...slot, length: roundTo(slot.length, depthSteps(plan).finest, "up") } }),
  };
}

/** Of the last stage; those before it take a head or a washer. */
const FITS: Readonly<Record<Hole["kind"], Fit>> = {
  pilot: "hold",
  recess: "hold",
  clearance: "clear",
  oversized: "clear",
  slot: "clear",
  bolt: "clear",
  knob: "clear",
  cable: "clear",
  pocket: "fit",
  dowel: "fit",
  pin: "fit",
  nut: "fit",
  cup: "fit",
};

function fitOf({ kind, stages, for: of }: Hole, i: number): Fit {
  if (of === null || (kind === "recess" && i === 0)) return "fit";
  // A screw holds in the first stage of a pilot; what is bored on beyond that lets a stem pass.
  if (kind === "pilot" && stages.length > 1) return i === 0 ? "hold" : "clear";
  return i < stages.length - 1 ? "clear" : FITS[kind];
}

/** No shallower than wanted where there is wood for that, else no deeper, and as little less as can be set. */
function depthOf(hole: Hole, { diameter, depth }: Stage, part: Part, plan: Drilled, fit: Fit): Length {
  const { finest, usual } = depthSteps(plan);
  const wood = woodAhead(holeOnBench(part, hole), onBench(part).solid, half(diameter));
  const rest = max(REST[plan.units], hole.keep.under);
  // A cup has to lie flush: where that leaves too little wood under it, the thing to change is the hinge or the door, which a check tells.
  const isSound = (deep: Length): boolean =>
    hole.kind === "cup" || (wood !== null && compare(add(deep, rest), wood) <= 0);
  // What goes into a hole that fits is as long as it is: there is nothing to be gained by more depth.
  const steps = fit === "fit" ? [finest] : [usual, finest];
  const up = steps.map((step) => roundTo(depth, step, "up")).find(isSound);
  if (up) return up;
  const down = roundTo(depth, finest, "down");
  return down.n > 0n ? down : depth;
}

/** From the mouth to the far side, under the middle of the hole and under its rim; null where it leans. */
function woodAhead({ at, direction }: Hole, solid: Solid, radius: Length): Length | null {
  const axis = INDICES.find((i) => Math.abs(direction[i]) === 1);
  if (axis === undefined) return null;
  const sign = direction[axis] > 0 ? 1 : -1;
  const rim = otherAxes(axis).flatMap((aside) => [radius, negate(radius)].map((by) => shift(at, aside, by)));
  return [at, ...rim].map((place) => farAt(solid, place, axis, sign)).reduce(min);
}
