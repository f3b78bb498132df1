/** How the work lies on the bench while something is joined to it. */
import { dot } from "../../../geometry/vec.ts";
import type { Length } from "../../../units/length.ts";
import { less, max, min, multiply, rational, subtract } from "../../../units/rational.ts";
import {
  type AxisIndex,
  axisOf,
  enclosing,
  extent,
  faceOf,
  INDICES,
  indexOf,
  opposite,
  sameDirection,
  unit,
} from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import { definite, listed, type Work } from "./draft.ts";
import { type Down, flatText, sideDown } from "./flat-frame.ts";
import { type Move, togetherAfter } from "./moves.ts";
import { raisedEnds } from "./plumb.ts";
import { type Facts, type Sentence, sentence } from "./sentence.ts";
import { laysDown } from "./words/glazed.ts";
import { listedAsWritten } from "./words/marked-places.ts";

export interface Lying {
  readonly up: Direction;
  /** In the step before of the same body. */
  readonly before: Direction;
  /** The body begins with this step. */
  readonly first: boolean;
}

/** So much of a way up or down, of its length. */
export const STEEP = 0.7;

/** So little of a way up or down, of its length. */
export const LEVEL = 0.3;

/** What points up where the side that a way comes from lies uppermost. */
export const against = (way: Direction): Direction =>
  way.map((c) => (Math.abs(c) > STEEP ? -Math.sign(c) : 0)) as unknown as Direction;

/** As the piece stands when it is finished. */
export const STANDING: Direction = [0, 0, 1];

/** The others are at least so many times as large. */
const FLAT = 3;

/** Of more that are together nobody is helped by their names. */
const NAMED = 4;

export function isFlat(work: Work, ids: readonly string[], axis: AxisIndex): boolean {
  const [one, ...more] = ids.map((id) => work.part(id).body);
  if (!one) return false;
  const whole = more.reduce(enclosing, one);
  const thick = multiply(extent(whole, axis), rational(FLAT));
  return INDICES.every((i) => i === axis || !less(extent(whole, i), thick));
}

const THE_WORK = "the work";
const SO = { turns: "so" } as const;
const so = (words: string): Sentence => sentence(words, SO);
const andMore = (words: string): Sentence => sentence(words, { turns: "and more" });

/** Said before anything is put on. */
export function layTexts(
  work: Work,
  moves: readonly Move[],
  place: Lying & { readonly stands: string | null },
): readonly Sentence[] {
  // What glass goes into is laid down in words of its own.
  if (laysDown(work, moves)) return [];
  if (isLowered(work, moves, place.up)) return [loweredText(work, moves, place)];
  if (isUnderneath(work, moves, place.up)) return [clampedText(work, moves, place)];
  if (liesFlat(work, moves, place)) return [andMore(flatText(work, downIn(work, moves)))];
  const [first] = moves;
  if (!first || !laidDown(moves, place)) return turning(work, moves, place);
  const axis = axisOf(place.up);
  const name = place.stands ?? (first.present.length > NAMED ? THE_WORK : listedAsWritten(work, first.present));
  if (isFlat(work, first.present, axis)) {
    const raised = raisedEnds(work, first.present, place.up);
    if (!raised)
      return [sentence(`Lay ${name} flat on battens, inside up.`, name === THE_WORK ? SO : { turns: "and more" })];
    return [
      andMore(
        `Lay ${name} on battens, inside up, and put packing ${work.print(raised.by)} higher under the ${raised.end} ends of ${definite(work, raised.ids)} than under their ${opposite(raised.end)} ends: so what is put on stands plumb.`,
      ),
    ];
  }
  const side = faceOf(axis, place.up[axis] < 0);
  return [
    place.first
      ? andMore(`Put it together lying on its ${side} on battens.`)
      : so(`Lay the work down on its ${side} on battens.`),
  ];
}

/** What is laid on a side with this step, and not to drive anything. */
const laidDown = (moves: readonly Move[], { up, before, first }: Lying): boolean =>
  !moves.some((move) => move.work.some((each) => each.drives.length > 0)) &&
  up[2] === 0 &&
  (first || !sameDirection(up, before));

/** Whether it begins with a frame that is put together lying flat. */
const liesFlat = (work: Work, moves: readonly Move[], place: Lying): boolean =>
  place.first && !laidDown(moves, place) && liesAsFrame(work, moves);

/** On which side of a frame it is put together. */
function downIn(work: Work, moves: readonly Move[]): Down {
  const ids = togetherAfter(moves);
  const axis = INDICES.find((i) => isFlat(work, ids, i)) as AxisIndex;
  const joints = moves.flatMap((move) => move.work.map(({ joint }) => joint));
  const held = new Set(joints.flatMap(({ glue, parts }) => (glue ? parts : [])));
  return sideDown(work, ids, held, axis);
}

/** Which way of the finished piece points up in the picture, where words lay a frame on a side; else null. */
export function flatUp(work: Work, moves: readonly Move[], place: Lying): Direction | null {
  const told = laysDown(work, moves) || isLowered(work, moves, place.up) || isUnderneath(work, moves, place.up);
  if (told || !liesFlat(work, moves, place)) return null;
  const { axis, high } = downIn(work, moves);
  return unit(axis, high ? -1 : 1);
}

/** What is flat when it is together, and glued from its edges: a frame. */
function liesAsFrame(work: Work, moves: readonly Move[]): boolean {
  if (!moves.some((move) => move.work.some(({ joint }) => joint.glue))) return false;
  const body = togetherAfter(moves);
  return INDICES.some((axis) => isFlat(work, body, axis) && moves.every(({ along }) => Math.abs(along[axis]) < 0.01));
}

/** The work stands on its head, and what comes lies under it. */
function loweredText(work: Work, moves: readonly Move[], { up, before }: Lying): Sentence {
  const what = listed(
    work,
    moves.flatMap(({ arriving }) => arriving),
  );
  const turn = up[2] === before[2] ? "lower the rest on it" : "turn the rest over and lower it on that";
  return andMore(`Lay ${what} on a blanket, the underside up, and ${turn}.`);
}

/** From where everything comes, as the work lies: "below" is what was built for the work to stand on; null for from a side, or from several. */
export function comesFrom(work: Work, moves: readonly Move[], up: Direction): "above" | "below" | null {
  const rises = moves.map(({ along }) => dot(along, up));
  if (rises.every((rise) => rise < -STEEP)) return moves.every((move) => liesOn(work, move, up)) ? "above" : null;
  const [first] = moves;
  if (!first?.arrivesBuilt || up[2] !== 1 || !rises.every((rise) => rise > STEEP)) return null;
  const lowest = (ids: readonly string[]): Length => ids.map((id) => work.part(id).body.low[2]).reduce(min);
  return less(lowest(first.arriving), lowest(first.present)) ? "below" : null;
}

/** Whether all that comes lies on what is there, whichever way it comes. */
export const restsOn = (work: Work, moves: readonly Move[], up: Direction): boolean =>
  moves.every((move) => move.work.length > 0 && liesOn(work, move, up));

/** Whether what comes lies on what it is joined to, not between it. */
function liesOn(work: Work, { arriving, work: joined }: Move, up: Direction): boolean {
  const axis = axisOf(up);
  return joined.every(({ joint: { parts } }) => {
    const [over, under] = arriving.includes(parts[0]) ? parts : [parts[1], parts[0]];
    const [one, other] = [work.part(over).body, work.part(under).body];
    return up[axis] > 0 ? !less(one.low[axis], other.high[axis]) : !less(other.low[axis], one.high[axis]);
  });
}

/** What lies between parts that reach past it is put in as the work stands, and turned over with it for the screws. */
function clampedText(work: Work, moves: readonly Move[], { before }: Lying): Sentence {
  const comes = moves.flatMap(({ arriving }) => arriving);
  const what = listed(work, comes);
  const mates = moves.flatMap((move) => move.work.flatMap(({ joint: { parts } }) => parts));
  const on = listed(
    work,
    [...new Set(mates)].filter((id) => !comes.includes(id)),
  );
  const past = subtract(highest(work, comes), highest(work, (moves[0] as Move).present));
  const rests = past.n > 0n ? `, so that it rests on blocks beside ${what}, more than ${work.print(past)} high` : "";
  const them = comes.length > 1 ? "them" : "it";
  const then = `${what} on ${on}, in the place told below, clamp ${them} there, and turn the work upside down with ${them}${rests}.`;
  return overText({ standing: `Set ${then}`, lying: `Stand the work up, set ${then}` }, before);
}

/** What is clamped in before the work is turned over goes on while that stands. */
export const overText = (over: NonNullable<Facts["over"]>, before: Direction): Sentence =>
  sentence(before[2] === 1 ? over.standing : over.lying, { over });

export function turning(work: Work, moves: readonly Move[], { up, before, first }: Lying): readonly Sentence[] {
  if (sameDirection(up, before)) return [];
  if (up[2] === -1)
    return [first ? andMore("Put it together upside down, as drawn.") : so("Turn the work upside down.")];
  if (up[2] === 1) return first ? [] : [so(before[2] === 0 ? "Stand the work up." : "Turn the work the right way up.")];
  const axis = axisOf(up);
  const side = faceOf(axis, up[axis] < 0);
  const drives = moves.flatMap((move) => move.work.flatMap((each) => each.drives));
  if (drives.some(({ fastener }) => dot(fastener.direction, up) < -STEEP))
    return [
      first && !isFlat(work, togetherAfter(moves), axis)
        ? andMore("Put it together as drawn, with the side that the heads go into uppermost.")
        : so("Lay the work flat on the bench, with the side that the heads go into uppermost."),
    ];
  return [first ? andMore(`Put it together lying on its ${side}, as drawn.`) : so(`Lay the work down on its ${side}.`)];
}

/** Whether what comes lies flat underneath, so that the rest is lowered on it: nothing of the rest reaches farther down. */
export const isLowered = (work: Work, moves: readonly Move[], up: Direction): boolean =>
  isUnderneath(work, moves, up) &&
  moves.every(
    ({ arriving, present }) =>
      arriving.every((id) => indexOf(work.part(id).axes.thickness) === 2) &&
      !less(highest(work, arriving), highest(work, present)),
  );

const highest = (work: Work, ids: readonly string[]): Length => ids.map((id) => work.part(id).body.high[2]).reduce(max);

/** Whether what comes is laid on the work as it stands, and turned over with it. */
export const isClamped = (work: Work, moves: readonly Move[], { up }: Lying): boolean =>
  !laysDown(work, moves) && !isLowered(work, moves, up) && isUnderneath(work, moves, up);

/** Whether all comes to work on its head from what is its top, and lies along it. */
export const isUnderneath = (work: Work, moves: readonly Move[], up: Direction): boolean =>
  up[2] === -1 &&
  moves.every(
    ({ along, starts, arriving }) =>
      !starts && along[2] < -STEEP && arriving.every((id) => indexOf(work.part(id).axes.length) !== 2),
  );
