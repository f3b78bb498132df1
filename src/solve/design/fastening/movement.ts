import { holdStillAlongGrain } from "../../../findings/rules/hold-still-along-grain.ts";
import { slidesOnItsFace } from "../../../findings/rules/slides-on-its-face.ts";
import type { JointDraft, Units } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import {
  absolute,
  compare,
  half,
  max,
  min,
  multiply,
  type Rational,
  rational,
  subtract,
  ZERO,
} from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Box, Fastener, Joint, Point, Still } from "../../design.ts";
import type { Joining } from "../joinery/work.ts";
import type { Frame } from "../placing/attitude.ts";
import { type AxisIndex, axisAt, faceAxis, indexOf, isHigh, triple } from "../space.ts";
import type { PlacedRow } from "./places-of.ts";
import type { FasteningContext, Site } from "./site.ts";

/** Of the two parts of a joint that lets wood move, the wider board moves; the other carries the slots, grooves or recesses. */
export interface Mover {
  readonly id: string;
  readonly body: Box;
  readonly frame: Frame;
}

/** Where a part lies against others: by the entry of the joint, and by others that hold it fast. */
export interface Lying {
  readonly own: readonly Box[];
  readonly fast: readonly Box[];
}

/** What else holds a part fast. */
export const besidesOf = ({ besides = [] }: Joining, part: string): readonly Joining[] =>
  besides.filter(({ join, to }) => join.id === part || to.id === part);

/**
 * The line across the grain at which a part is held: the side that `hold still` names, else the middle of what other joints hold fast,
 * else the middle of all that it is fastened to by this entry. Null: reported.
 */
export function stillOf(
  draft: JointDraft,
  mover: Mover,
  normal: AxisIndex,
  { own, fast }: Lying,
  { report }: Pick<FasteningContext, "report">,
): Still | null {
  const across = mover.frame.width;
  const said = draft.holdStill;
  if (mover.frame.thickness !== normal) {
    report(slidesOnItsFace(draft.with.at, { part: mover.id, method: draft.with.value }));
    return null;
  }
  if (said && said.value !== "middle" && faceAxis(said.value) !== across) {
    report(holdStillAlongGrain(said.at, { part: mover.id, side: said.value, across: axisAt(across) }));
    return null;
  }
  const areas = said === undefined && fast.length > 0 ? fast : own;
  const low = areas.map((area) => area.low[across]).reduce(min);
  const high = areas.map((area) => area.high[across]).reduce(max);
  const side = said?.value ?? "middle";
  const at =
    side === "middle" ? half({ n: low.n * high.d + high.n * low.d, d: low.d * high.d }) : isHigh(side) ? high : low;
  return { part: mover.id, across: axisAt(across), at: rational(at.n, at.d), side };
}

/** The same board: the one that is wider; of two equals the one that is joined. */
export const moverOf = <T extends Mover>(join: T, to: T): T => {
  const wide = ({ body, frame }: Mover): Length => subtract(body.high[frame.width], body.low[frame.width]);
  return compare(wide(to), wide(join)) > 0 ? to : join;
};

/**
 * How far wood may have to move either way at a distance from the held line, to the next 1/16 in or millimetre: the share of it by which its species
 * moves in its place, and never less than 1/64 of it, 3/16 in for a foot (common practice, no source).
 */
export function allowance(distance: Length, units: Units, share: Rational | null): Length {
  const step = units === "inch" ? inches(1, 16) : millimetres(1);
  return max(step, roundTo(multiply(absolute(distance), max(share ?? ZERO, rational(1, 64))), step, "up"));
}

/** Whether a fastener of a row stands where the wood is held. */
export function isHeld(
  still: Still,
  { area }: Pick<Site, "area">,
  row: Pick<PlacedRow, "along" | "points" | "lines">,
  number: number,
): boolean {
  const across = indexOf(still.across);
  const inside = compare(area.low[across], still.at) <= 0 && compare(still.at, area.high[across]) <= 0;
  if (!inside) return false;
  if (row.lines) return near(row.points[number] as Point, still, BESIDE);
  if (row.along !== across) return true;
  if (still.side === "middle") {
    return near(row.points[number] as Point, still, inches(1, 16));
  }
  return number === (isHigh(still.side) ? row.points.length - 1 : 0);
}

/** A row that had to keep from the edge stands this near to the held line, where wood hardly moves. */
const BESIDE = inches(3, 2);
const near = (at: Point, still: Still, by: Length): boolean => compare(absolute(fromLine(still, at)), by) <= 0;

/** How far a place lies from the held line, across the grain. */
export const fromLine = (still: Still, at: Point): Length => subtract(at[indexOf(still.across)], still.at);

/** Room along the axes: `across` the row of fasteners' own value, nothing in the direction of the screw. */
export const slackAlong = (axis: AxisIndex, room: Length, other: readonly [AxisIndex, Length] | null = null) =>
  triple((i) => (i === axis ? room : other && other[0] === i ? other[1] : ZERO));

export interface MovementRoom {
  readonly fastener: string;
  /** Across the grain, from the line where the wood is held: positive to the right, the back or the top. */
  readonly fromLine: Length;
  /** How far either way the wood can move here; zero where it is held fast. */
  readonly room: Length;
}

/** For a joint that lets wood move: the room that each of its fasteners leaves across the grain at its place. Empty for other joints. */
export function roomForMovement(joint: Pick<Joint, "still">, fasteners: readonly Fastener[]): readonly MovementRoom[] {
  const { still } = joint;
  if (!still) return [];
  return fasteners.map(({ id, head, slack }) => ({
    fastener: id,
    fromLine: fromLine(still, head.at),
    room: slack?.[indexOf(still.across)] ?? ZERO,
  }));
}
