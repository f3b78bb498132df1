/** The edges that a rule can be laid against where one part comes on another: bare, and within reach as the work lies. */
import { isSame, type Length, TOLERANCE } from "../../../../units/length.ts";
import { rational, toNumber } from "../../../../units/rational.ts";
import { type AxisIndex, common, faceOf, thirdAxis, triple, withAxis } from "../../../design/space.ts";
import type { Direction, Joint, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";
import { calledAmong } from "./by-place.ts";
import { type Seen, seenOf } from "./seen.ts";

/** The plane in which two parts meet. */
export interface Meeting {
  readonly normal: AxisIndex;
  readonly level: number;
  /** 1 where what comes lies on the higher side of it, else -1. */
  readonly side: 1 | -1;
}

type Box = Part["body"];

/** Null where they meet askew. `own`: what comes. */
export function meetingOf(joint: Joint, own: Box): Meeting | null {
  const [first] = joint.contact;
  const normal = ([0, 1, 2] as const).find((i) => Math.abs(first?.normal[i] ?? 0) > 0.99);
  const level = normal === undefined ? undefined : first?.polygons[0]?.[0]?.[normal];
  if (normal === undefined || level === undefined) return null;
  return { normal, level, side: toNumber(own.low[normal]) >= level - TOLERANCE ? 1 : -1 };
}

/** Boxes of the wood of what stands there, without a part. */
const woodOf = (work: Work, there: readonly string[], without: string) =>
  there.flatMap((id) => (id === without ? [] : work.part(id).solid.pieces.map(({ low, high }) => ({ id, low, high }))));

const rises = ({ normal, level, side }: Meeting, low: readonly number[], high: readonly number[]): boolean =>
  side > 0
    ? (low[normal] as number) <= level + TOLERANCE && (high[normal] as number) > level + TOLERANCE
    : (high[normal] as number) >= level - TOLERANCE && (low[normal] as number) < level - TOLERANCE;
const isLevel = ({ normal, level, side }: Meeting, low: readonly number[], high: readonly number[]): boolean =>
  Math.abs(((side > 0 ? high : low)[normal] as number) - level) <= TOLERANCE;

/**
 * The face of a part that another comes on, as far as it is bare: where something there covers its edge, between that and what comes, the rule stands on
 * what covers it.
 */
export function bareFace(work: Work, mate: string, own: Box, meeting: Meeting, there: readonly string[]): Seen {
  const seen = seenOf(work, mate, there);
  const inside = new Map(seen.inside);
  const wood = woodOf(work, there, mate).filter(({ low, high }) => rises(meeting, low, high));
  const end = (sideName: "low" | "high") =>
    triple((axis) => {
      const edge = seen.box[sideName][axis];
      if (axis === meeting.normal) return edge;
      const other = thirdAxis(axis, meeting.normal);
      const way = sideName === "low" ? 1 : -1;
      const [outer, inner] = sideName === "low" ? (["low", "high"] as const) : (["high", "low"] as const);
      const from = way * toNumber(own[sideName][axis]);
      const covering = wood
        .filter((each) => crosses(each, common(own, seen.box), other))
        .map((each) => ({
          ...each,
          from: way * (each[outer][axis] as number),
          to: way * (each[inner][axis] as number),
        }))
        .filter((each) => each.to <= from + TOLERANCE)
        .toSorted((a, b) => a.from - b.from)
        // Piece by piece inwards, as far as they join.
        .reduce((so, each) => (each.from <= so.to + TOLERANCE && each.to > so.to + TOLERANCE ? each : so), {
          id: null as string | null,
          to: way * toNumber(edge),
        });
      if (covering.id === null) return edge;
      inside.set(faceOf(axis, sideName === "high"), calledAmong(work, covering.id, there));
      return exact(work.part(covering.id), axis, way * covering.to);
    });
  return { box: { low: end("low"), high: end("high") }, inside };
}

const crosses = (wood: Pick<Part["solid"], "low" | "high">, own: Box, axis: AxisIndex): boolean =>
  (wood.low[axis] as number) < toNumber(own.high[axis]) - TOLERANCE &&
  (wood.high[axis] as number) > toNumber(own.low[axis]) + TOLERANCE;

/** As the part has it, where it does: a third of an inch is no double. */
const exact = ({ body, blank }: Part, axis: AxisIndex, value: number): Length => {
  const near = rational(Math.round(value));
  return (
    [body.low, body.high, blank.low, blank.high].map((corner) => corner[axis]).find((at) => isSame(at, near)) ?? near
  );
};

/**
 * Whether an edge is no good to measure from: other wood goes on beyond it in the same plane, and what comes reaches past it onto that; or the face looks
 * down as the work lies, and other wood hides the edge from the side.
 */
export function isLost(
  work: Work,
  { mate, edge, axis, high }: { mate: string; edge: Length; axis: AxisIndex; high: boolean },
  own: Box,
  meeting: Meeting,
  there: readonly string[],
  up: Direction | null,
): boolean {
  const other = thirdAxis(axis, meeting.normal);
  const way = high ? -1 : 1;
  const at = way * toNumber(edge);
  const from = way * toNumber((high ? own.high : own.low)[axis]);
  const below = up !== null && meeting.side * up[meeting.normal] < -0.5;
  if (from >= at - TOLERANCE && !below) return false;
  return woodOf(work, there, mate).some(({ low, high: top }) => {
    if (!isLevel(meeting, low, top) || !crosses({ low, high: top }, own, other)) return false;
    const [starts, ends] = high ? [-(top[axis] as number), -(low[axis] as number)] : [low[axis], top[axis]];
    return (starts as number) < at - TOLERANCE && (ends as number) >= Math.min(at, from) - TOLERANCE;
  });
}

/** The outermost of what reaches the plane along an axis, and what that is. */
export function outermost(work: Work, ids: readonly string[], meeting: Meeting, axis: AxisIndex) {
  const reach = ids.flatMap((id) => {
    const { pieces } = work.part(id).solid;
    const own = pieces.filter(
      ({ low, high }) =>
        (low[meeting.normal] as number) <= meeting.level + TOLERANCE &&
        (high[meeting.normal] as number) >= meeting.level - TOLERANCE,
    );
    if (own.length === 0) return [];
    const at = own
      .flatMap(({ vertices }) => vertices.map(({ x, y, z }) => [x, y, z] as const))
      .filter((vertex) => Math.abs(vertex[meeting.normal] - meeting.level) <= TOLERANCE)
      .map((vertex) => vertex[axis]);
    return at.length === 0 ? [] : [{ id, low: Math.min(...at), high: Math.max(...at) }];
  });
  if (reach.length === 0) return null;
  const [low, high] = [Math.min(...reach.map((each) => each.low)), Math.max(...reach.map((each) => each.high))];
  const along = (id: string): number => {
    const other = thirdAxis(axis, meeting.normal);
    const { solid } = work.part(id);
    return (solid.high[other] as number) - (solid.low[other] as number);
  };
  // The longest along that side first.
  const byLength = (ids: readonly string[]) => ids.toSorted((a, b) => along(b) - along(a));
  const lowest = byLength(reach.filter((each) => each.low <= low + TOLERANCE).map(({ id }) => id));
  const highest = byLength(reach.filter((each) => each.high >= high - TOLERANCE).map(({ id }) => id));
  return {
    low: { at: exact(work.part(lowest[0] as string), axis, low), of: lowest },
    high: { at: exact(work.part(highest[0] as string), axis, high), of: highest },
  };
}

/** A box with other ends along an axis. */
export const between = (box: Box, axis: AxisIndex, low: Length, high: Length): Box => ({
  low: withAxis(box.low, axis, low),
  high: withAxis(box.high, axis, high),
});
