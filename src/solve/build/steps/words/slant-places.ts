/** Where parts touch one of which leans against the other: no side of it runs along a side of that. */
import { boundsOfAll, inverse, placed, turnedVec } from "../../../../geometry/index.ts";
import { dot, minus, plus, times } from "../../../../geometry/vec.ts";
import { isSame, type Length, TOLERANCE } from "../../../../units/length.ts";
import { equal, less, max, min, rational, round, subtract, ZERO } from "../../../../units/rational.ts";
import { type AxisIndex, faceOf, INDICES, indexOf, isHigh, thirdAxis, unit } from "../../../design/space.ts";
import type { Hole, Joint, Part, Point } from "../../../design.ts";
import { called, series, type Work } from "../draft.ts";
import { sideWord } from "./measured.ts";

/** "touches it from 138 mm to 237 mm from its left end, 9 mm from its back face"; null where it has no end that lies on that side. `bored`: a hole into that side. */
export function touchWords(work: Work, leaning: Part, on: Part, bored: Hole): string | null {
  const side = INDICES.find((i) => bored.direction[i] !== 0);
  const run = indexOf(on.axes.length);
  if (side === undefined || side === run || on.turned) return null;
  const face = (bored.direction[side] > 0 ? on.body.low : on.body.high)[side];
  const corners = leaning.solid.pieces
    .flatMap(({ vertices }) => vertices.map(({ X, Y, Z, W }) => [X, Y, Z].map((top) => rational(top, W))))
    .filter((corner) => equal(corner[side] as Length, face));
  if (corners.length < 3) return null;
  const reach = (i: AxisIndex): readonly [Length, Length] => {
    const all = corners.map((corner) => corner[i] as Length);
    return [all.reduce(min), all.reduce(max)];
  };
  const along = fromNearer(on, run, reach(run));
  const beside = fromNearer(on, thirdAxis(side, run), reach(thirdAxis(side, run)));
  const [near, far] = along.by;
  const deep =
    beside.by[0].n === 0n ? `flush with its ${beside.face}` : `${work.place(beside.by[0])} from its ${beside.face}`;
  return `touches it from ${work.place(near)} to ${work.place(far)} from its ${along.face} end, ${deep}`;
}

/** Both distances from the end or face that is nearer, the smaller first. */
function fromNearer({ body }: Part, i: AxisIndex, [low, high]: readonly [Length, Length]) {
  const [below, above] = [subtract(low, body.low[i]), subtract(body.high[i], high)];
  return less(above, below)
    ? { face: faceOf(i, true), by: [above, subtract(body.high[i], low)] as const }
    : { face: faceOf(i, false), by: [below, subtract(high, body.low[i])] as const };
}

/**
 * "lies flush with the top of the leg (A), 1/2 in from its front face": where a part touches one that leans, from the sides of that as it
 * lies on the bench, and from what is cut level at its ends. Null where it touches no side of it.
 */
export function onLeaning(work: Work, { contact }: Joint, part: Part, on: Part): string | null {
  const [first, ...more] = contact;
  if (!on.turned || !first) return null;
  const largest = more.reduce((a, b) => (b.area > a.area ? b : a), first);
  const corners = largest.polygons
    .flat()
    .map((p): Corner => ({ room: p, own: fromRoom(part, p), bench: fromRoom(on, p) }));
  const run = indexOf(on.axes.length);
  const normal = turnedVec(inverse(on.turned.placement), largest.normal);
  const side = INDICES.find((i) => Math.abs(normal[i]) > 0.7) ?? run;
  if (side === run) return null;
  const ends = [false, true]
    .filter((high) => isLevel(on, corners, run, high))
    .map((high) => `the ${faceOf(run, high)}`);
  const name = called(work, on.id);
  const end = ends.length > 0 ? `flush with ${series(ends)} of the ${name}` : fromEnd(work, on, corners, run, name);
  return `lies ${end}, ${fromSide(work, on, corners, run, thirdAxis(side, run))}`;
}

/** Where parts touch: in the room, and on the bench of each of them. */
interface Corner {
  readonly room: readonly number[];
  readonly own: readonly Length[];
  readonly bench: readonly Length[];
}

function fromRoom({ turned }: Part, p: readonly number[]): readonly Length[] {
  const exact = p.map((value) => rational(Math.round(value))) as unknown as Point;
  return turned ? placed(inverse(turned.placement), exact).map((value) => rational(round(value))) : exact;
}

const reachOf = (corners: readonly Corner[], i: AxisIndex): readonly [Length, Length] => {
  const all = corners.map(({ bench }) => bench[i] as Length);
  return [all.reduce(min), all.reduce(max)];
};

/** Whether what touches a part goes as far as that does, in the room. */
function isLevel({ solid }: Part, corners: readonly Corner[], i: AxisIndex, high: boolean): boolean {
  const values = corners.map(({ room }) => room[i] as number);
  const by = high ? solid.high[i] - Math.max(...values) : Math.min(...values) - solid.low[i];
  return Math.abs(by) <= TOLERANCE;
}

function fromEnd(work: Work, on: Part, corners: readonly Corner[], i: AxisIndex, name: string): string {
  const { face, by } = fromNearer(on, i, reachOf(corners, i));
  return `from ${work.place(by[0])} to ${work.place(by[1])} from the ${face} end of the ${name}`;
}

/** From the side that is nearer: as far all along, or at the upper and at the lower end of what touches. */
function fromSide(work: Work, on: Part, corners: readonly Corner[], along: AxisIndex, i: AxisIndex): string {
  const { face } = fromNearer(on, i, reachOf(corners, i));
  const side = `its ${face} ${sideWord(on, i)}`;
  const inside = insideOf(work, on, i, isHigh(face));
  const nearest = (choose: typeof max): Length => {
    const end = corners.map(({ own }) => own[along] as Length).reduce((a, b) => choose(a, b));
    return corners
      .filter(({ own }) => isSame(own[along] as Length, end))
      .map(({ bench }) => bench[i] as Length)
      .map((at) => (isHigh(face) ? subtract(on.body.high[i], at) : subtract(at, on.body.low[i])))
      .reduce(min);
  };
  const [below, above] = [nearest(min), nearest(max)];
  if (!isSame(below, above))
    return `${work.place(above)} from ${side}${inside === "" ? "" : `${inside},`} at the ${faceOf(along, true)} and ${work.place(below)} at the ${faceOf(along, false)}: draw that line first`;
  return isSame(above, ZERO) ? `flush with ${side}` : `${work.place(above)} from ${side}${inside}`;
}

/** Nearer to the middle of the piece, as a share of it, no side is the inside. */
const AMID = 0.1;

/** ", the inside" or ", the outside": which side of a part that leans looks to the middle of the piece. */
function insideOf({ design }: Work, { turned, solid }: Part, i: AxisIndex, high: boolean): string {
  const own = unit(i, high ? 1 : -1);
  const way = turned ? turnedVec(turned.placement, own) : own;
  const whole = boundsOfAll(design.parts.map((part) => part.solid));
  const from = minus(times(plus(whole.low, whole.high), 0.5), times(plus(solid.low, solid.high), 0.5));
  const size = Math.abs(dot(way, minus(whole.high, whole.low)));
  const towards = dot(way, from);
  if (Math.abs(towards) < AMID * size) return "";
  return towards > 0 ? ", the inside" : ", the outside";
}
