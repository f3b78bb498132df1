/** Whether a body can be turned and all its joints of a step still close. */
import { contact, overlapDepth, type Solid, type Vec } from "../../../../geometry/index.ts";
import { type Movement, move } from "../../../../geometry/transform.ts";
import { TOLERANCE } from "../../../../units/length.ts";
import { add, equal, less, subtract, toNumber } from "../../../../units/rational.ts";
import { featureBox, isSquare } from "../../../design/shapes/feature-box.ts";
import { type AxisIndex, enclosing, INDICES, middle, triple } from "../../../design/space.ts";
import type { Box, Hole, Joint, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";
import { featureTrait, holeTrait, movedTrait, sameTraits, type Trait } from "./traits.ts";
import { aboutMiddle, type Body } from "./turns.ts";

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
  if (!isSame(holes, turn)) return false;
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

const isSame = (traits: readonly Trait[], turn: Movement): boolean =>
  sameTraits(
    traits,
    traits.map((each) => movedTrait(each, turn)),
  );

/**
 * The turn with the shift that brings the tenons back to their mortises, where they lie out of the middle. Where the body would then stand out of what it
 * is joined to, or be flush with it no more, that is seen.
 */
function shifted(
  { parts, box }: Body,
  turn: Movement,
  joints: readonly Joint[],
  mates: readonly Part[],
): readonly Movement[] {
  const ids = new Set(joints.map(({ id }) => id));
  const cut = parts.flatMap(({ body, features }) =>
    features.flatMap((each) =>
      ids.has(each.for ?? "") && "size" in each && isSquare(each)
        ? [{ box: featureBox(each), trait: featureTrait(body, each) }]
        : [],
    ),
  );
  const [first, ...more] = cut.map((each) => each.box);
  if (!first) return [];
  const about = aboutMiddle(more.reduce(enclosing, first), turn);
  const by = triple((i) => subtract(about.shift[i], turn.shift[i]));
  const room = mates.map(({ body }) => body).reduce(enclosing, box);
  const there: Box = {
    low: triple((i) => add(box.low[i], by[i])),
    high: triple((i) => add(box.high[i], by[i])),
  };
  const stays = INDICES.every(
    (i) =>
      !less(there.low[i], room.low[i]) &&
      !less(room.high[i], there.high[i]) &&
      mates.every(({ body }) => !isFlush(box, body, i) || isFlush(there, body, i)),
  );
  const isShifted = by.some(({ n }) => n !== 0n);
  return isShifted &&
    stays &&
    isSame(
      cut.map(({ trait }) => trait),
      about,
    )
    ? [about]
    : [];
}

const touching = (solids: readonly Solid[], other: Solid): number =>
  solids.flatMap((solid) => contact(solid, other)).reduce((so, { area }) => so + area, 0);

const isFlush = (one: Box, other: Box, axis: AxisIndex): boolean =>
  equal(one.low[axis], other.low[axis]) || equal(one.high[axis], other.high[axis]);

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
