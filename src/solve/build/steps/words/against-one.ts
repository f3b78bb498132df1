/** A part that is cut to fit and is bounded on one side only: flush with what it is joined to, it comes against something at its other edge. */
import { inches, isSame, type Length, millimetres } from "../../../../units/length.ts";
import { absolute, add, less, sign, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, faceOf, facePosition } from "../../../design/space.ts";
import type { Box, Part } from "../../../design.ts";
import type { Assembly } from "../../order/plan.ts";
import { lieBeside } from "../bounding.ts";
import { boxOf } from "../box-of.ts";
import type { Work } from "../draft.ts";
import { calledAmong } from "./by-place.ts";

/** What is left for it to go in without force (common practice, no source). */
const PLAY = { inch: inches(1, 16), mm: millimetres(1) } as const;

/**
 * "the room is expected to be 468 mm. Measure from the front of the front lower rail (E) to the brace (K), and cut it 1 mm less, 467 mm then: ..." of the
 * width of a part; null where nothing stands at its edge.
 */
export function againstOneText(work: Work, part: Part, axis: AxisIndex): string | null {
  const there = standsBefore(work.plan.root, part.id);
  const stands = work.design.parts.filter(({ id }) => there.includes(id));
  const mates = stands.filter(({ id }) =>
    work.design.joints.some(({ parts }) => parts.includes(id) && parts.includes(part.id)),
  );
  const within = PLAY[work.design.units];
  const near = (other: Part, isHigh: boolean): boolean =>
    lieBeside(part.body, boxOf(other), axis) && !less(within, absolute(gapTo(part.body, boxOf(other), axis, isHigh)));
  for (const high of [true, false]) {
    const [end, start] = [faceOf(axis, high), faceOf(axis, !high)];
    const against = stands.find((other) => !mates.includes(other) && near(other, high));
    const flush = mates.find(
      ({ body, turned }) => !turned && isSame(facePosition(body, start), facePosition(part.body, start)),
    );
    if (!against || !flush || stands.some((other) => near(other, !high))) continue;
    const [from, to] = [calledAmong(work, flush.id, there), calledAmong(work, against.id, there)];
    // What is drawn with some play keeps that.
    const gap = gapTo(part.body, boxOf(against), axis, high);
    const [room, play] = [add(work.line(part.id).width, gap), sign(gap) === 0 ? within : gap];
    return `the room is expected to be ${work.print(room)}. Measure from the ${start} of the ${from} to the ${to}, and cut it ${work.print(play)} less, ${work.print(subtract(room, play))} then: its ${end} edge comes before that, and must not push it`;
  }
  return null;
}

/** Negative where it reaches past it. */
const gapTo = (a: Box, b: Box, axis: AxisIndex, high: boolean): Length =>
  high ? subtract(b.low[axis], a.high[axis]) : subtract(a.low[axis], b.high[axis]);

/** Ids of what a part is added to; none where it begins a body. */
function standsBefore(node: Assembly, id: string): readonly string[] {
  if (node.kind === "part") return [];
  const own = node.moving.parts.includes(id) ? node.moving : node.staying.parts.includes(id) ? node.staying : null;
  if (own === null) return [];
  return own.kind === "part" ? (own === node.moving ? node.staying : node.moving).parts : standsBefore(own, id);
}
