/** Lines of `fittings` for what keeps a door shut or stops it, with the part and the face that lie at its free edge. Millimetres. */
import { type AxisIndex, axisAt, faceOf, opposite } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import type { Checked } from "../check.ts";
import { around, type Bounds } from "../standing/weight-and-feet.ts";
import type { Door } from "./doors.ts";

/** How far beyond the edge of a door its case may begin, and how far inside it where the door lies before it. */
const [BEYOND, INSIDE] = [6, 60];
/** How far behind the door it has to reach, and how near to its back it has to begin. */
const [REACH, NEAR] = [25, 3];
/** From the free edge of a door to what is asked for there. Common practice, no source. */
const FROM_EDGE = 50;

export interface Keepers {
  readonly catch: string;
  readonly stop: string;
}

/** Null where nothing lies at the free edge of the door that they could be screwed to. */
export function keepersOf(door: Door, checked: Checked): Keepers | null {
  const { along, wide, thick, opens, free } = door;
  const board = freeBoard(door);
  const ways: readonly (readonly [AxisIndex, 1 | -1])[] = [
    [along, 1],
    [wide, free],
    [along, -1],
  ];
  for (const [axis, way] of ways) {
    const part = bearerAt(door, axis, way, checked);
    if (!part) continue;
    const inch = checked.design.units === "inch";
    const to = `to: ${part.id}, face: ${opposite(faceOf(axis, way > 0))}`;
    const edge = `${board.id}.${faceOf(wide, free > 0)} ${free > 0 ? "-" : "+"} ${inch ? "2" : "50"}`;
    const place = axis === along ? `, ${axisAt(wide)}: ${edge}` : "";
    // A stile is as wide as it is: the catch sits in its middle.
    const middle = board === door.hung ? place : "";
    const back = `${axisAt(thick)}: ${board.id}.${faceOf(thick, opens < 0)} ${opens < 0 ? "+" : "-"} ${inch ? "3/8" : "10"}`;
    const run = axisAt(axis === along ? wide : along);
    return {
      catch: `{ fit: catch, ${to}${middle}, against: ${board.id} }`,
      stop: `{ fit: stop, ${to}, along: ${run}${place}, ${back} }`,
    };
  }
  return null;
}

/** What of the door lies along its free edge. */
export function freeBoard({ parts, hung, bounds, wide, along, free }: Door): Part {
  const end = free > 0 ? "high" : "low";
  const size = ({ solid }: Part): number => around([solid]).high[along] - around([solid]).low[along];
  const there = parts.filter(({ solid }) => Math.abs(around([solid])[end][wide] - bounds[end][wide]) < 1);
  return there.includes(hung)
    ? hung
    : there.reduce((best, each) => (size(each) > size(best) ? each : best), there[0] ?? hung);
}

/** A part that stays, at an edge of the door and near its free one, and goes on behind it. */
function bearerAt(door: Door, axis: AxisIndex, way: 1 | -1, checked: Checked): Part | undefined {
  const { bounds, thick, opens, wide, along, free } = door;
  const moving = new Set(checked.motions.flatMap(({ moves }) => moves));
  const point: Record<number, number> = {
    [wide]: free > 0 ? bounds.high[wide] - FROM_EDGE : bounds.low[wide] + FROM_EDGE,
    [along]: (bounds.low[along] + bounds.high[along]) / 2,
  };
  const other = axis === wide ? along : wide;
  return checked.design.parts.find((part) => {
    if (moving.has(part.id) || part.turned) return false;
    const body: Bounds = around([part.solid]);
    const away = way > 0 ? body.low[axis] - bounds.high[axis] : bounds.low[axis] - body.high[axis];
    const [begins, ends] =
      opens < 0
        ? [body.low[thick] - bounds.high[thick], body.high[thick] - bounds.high[thick]]
        : [bounds.low[thick] - body.high[thick], bounds.low[thick] - body.low[thick]];
    const at = point[other] ?? 0;
    const over = body.low[other] <= at && at <= body.high[other];
    return over && away >= -INSIDE && away <= BEYOND && begins <= NEAR && ends >= REACH;
  });
}
