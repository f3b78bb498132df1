/** Whether a body can be turned and all its joints of a step still close. */
import { contact, overlapDepth, type Solid, type Vec } from "../../../../geometry/index.ts";
import { type Movement, move } from "../../../../geometry/transform.ts";
import { TOLERANCE } from "../../../../units/length.ts";
import { subtract, toNumber } from "../../../../units/rational.ts";
import { INDICES, middle, triple } from "../../../design/space.ts";
import type { Hole, Joint, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";
import { shifted } from "./shifted.ts";
import { holeTrait, staysSame, type Trait } from "./traits.ts";
import type { Body } from "./turns.ts";

/** The share of the touching area that has to be left: what is cut for other joints may take some of it. */
const TOUCHES = 0.8;

/** `others`: all that is there in the step besides. `joints`: those of the step. */
export function closes(
  work: Work,
  body: Body,
  turn: Movement,
  others: readonly Part[],
  joints: readonly Joint[],
): boolean {
  const own = new Set(body.parts.map(({ id }) => id));
  const met = joints.filter(({ parts: [a, b] }) => own.has(a) !== own.has(b));
  const mates = others.filter(({ id }) => met.some(({ parts }) => parts.includes(id)));
  const moved = [turn, ...shifted(body, turn, met, mates)];
  return moved.some((each) => fits(work, body, each, others, { met, mates }));
}

function fits(
  work: Work,
  body: Body,
  turn: Movement,
  others: readonly Part[],
  { met, mates }: { readonly met: readonly Joint[]; readonly mates: readonly Part[] },
): boolean {
  const holes = boredFor(work, body, met);
  if (!staysSame(holes, turn)) return false;
  const turned = body.parts.map(({ solid }) => move(solid, turn));
  if (others.some(({ solid }) => turned.some((each) => overlapDepth(each, solid) > TOLERANCE))) return false;
  return mates.every(({ solid }) => {
    const before = touching(
      body.parts.map((part) => part.solid),
      solid,
    );
    return touching(turned, solid) >= TOUCHES * before;
  });
}

const touching = (solids: readonly Solid[], other: Solid): number =>
  solids.flatMap((solid) => contact(solid, other)).reduce((so, { area }) => so + area, 0);

/**
 * Of what fastens some joints: holes that have to meet those of the other part; of what is driven through holes of this part alone, the side that it is
 * driven from, which the step tells of all but pocket screws.
 */
function boredFor({ plan }: Work, { parts, box }: Body, joints: readonly Joint[]): readonly Trait[] {
  const centre = triple((i) => toNumber(middle(box, i)));
  const part = new Map(parts.map((each) => [each.id, each]));
  const chosen = joints.flatMap(({ id }) => plan.chosen.get(id) ?? []);
  const ids = new Set(
    chosen.flatMap(({ fasteners, hardware = [] }) => [...fasteners, ...hardware].map(({ id }) => id)),
  );
  const holes = plan.holes.filter((hole) => hole.atBench && hole.for !== null && ids.has(hole.for));
  const beyond = new Set(holes.flatMap((hole) => (part.has(hole.part) ? [] : [hole.for])));
  return holes.flatMap((hole) => {
    const own = part.get(hole.part);
    if (!own) return [];
    const { label, at, way } = holeTrait(own, hole);
    // A pin that goes on in this part beyond the other one: all that has to agree is where it goes through.
    if (holes.some((other) => goesOn(hole, other))) return [{ label: "pin", at: throughMiddle(own, hole) }];
    if (beyond.has(hole.for)) return [{ label, at, ...(way && { way }) }];
    if (hole.kind === "pocket") return [];
    return [{ label: "driven", at: centre, way: hole.direction }];
  });
}

/** Whether what fills a hole passes through another part before it ends in this one. */
const goesOn = (hole: Hole, other: Hole): boolean =>
  !hole.through &&
  other.for === hole.for &&
  other.part !== hole.part &&
  INDICES.some((i) => toNumber(subtract(other.at[i], hole.at[i])) * hole.direction[i] > TOLERANCE);

const throughMiddle = ({ body }: Part, { at, direction }: Hole): Vec =>
  triple((i) => toNumber(Math.abs(direction[i]) > 0.99 ? middle(body, i) : at[i]));
