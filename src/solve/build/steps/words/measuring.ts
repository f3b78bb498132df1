/** Where a part is measured that is cut to the piece, and what is taken off. */
import { add, type Length, less, subtract, sum, ZERO } from "../../../../units/index.ts";
import { sayBand } from "../../../design/making/banding.ts";
import { partsAt } from "../../../design/making/neighbours.ts";
import { makingOf } from "../../../design/making/plain.ts";
import { type AxisIndex, faceAxis, faceOf, facePosition, indexOf } from "../../../design/space.ts";
import type { Between, Pair, Part } from "../../../design.ts";
import { onPins } from "../../order/links.ts";
import { SIZES } from "../../tight.ts";
import { called, numberWord, type Work } from "../draft.ts";
import { againstOneText } from "./against-one.ts";
import { calledAmong } from "./by-place.ts";
import { isGluedCase, isRow, outermost } from "./cut-alike.ts";
import { notchTexts } from "./marked-notches.ts";
import { mitredText } from "./mitred.ts";
import { roomToSwell } from "./room-to-swell.ts";
import { gapsBefore } from "./rows.ts";

/** Of parts that are alike, the first of which stands for all. `brief`: what is marked in its place is told by its step only. */
export function measureTexts(work: Work, ids: readonly string[], brief = false): readonly string[] {
  const part = work.part(ids[0] as string);
  const parts = isCutAlike(work, ids) ? ids.map(work.part) : [part];
  const sizes = SIZES.map((size) => {
    const name = size === "length" ? "Length" : "Width";
    const expected = work.print(work.line(part.id)[size]);
    const axis = indexOf(part.axes[size]);
    const between = roomAt(work, part, size);
    const bands = bandsOff(work, part, axis);
    if (between === null) {
      const one = size === "width" && bands === "" ? againstOneText(work, part, axis) : null;
      return one ? `${name}: ${one}.` : `${name}: ${expected}, from the list${bands}.`;
    }
    const { mitred } = between;
    if (brief && !mitred && !sameRoom(work, ids, size))
      return `${name}: expected ${expected}, measured as its step tells.`;
    if (mitred && brief) return `${name}: expected ${expected} from point to point, marked as its step tells.`;
    if (mitred) return `${name}: expected ${expected} from point to point. ${mitredText(work, part, mitred)}`;
    const swells = swellOf(work, part, size, between);
    const line = work.line(part.id);
    const gaps = less(ZERO, swells) ? gapsAround(work, between.pairs, axis) : ZERO;
    const dry = less(ZERO, gaps)
      ? `; in dry weather, with gaps in the row before it, ${work.print(subtract(subtract(line[size], gaps), swells))}`
      : "";
    const room = less(ZERO, swells)
      ? `, and in dry weather ${work.print(swells)} less: across its grain it swells, and would press these apart`
      : "";
    return `${name}: expected ${expected}${dry}. Measure from ${placesOf(work, parts, size, between)}${bands}${changes(work, between)}${room}.`;
  });
  // In its step a notch is marked from what stands when the part has its size: sawn over, it would lie anyhow.
  return [...sizes, ...(brief ? notchTexts(work, part, true) : [])];
}

/** Whether all are measured between the same parts: one sentence holds for each. */
const sameRoom = (work: Work, ids: readonly string[], size: Between["size"]): boolean =>
  new Set(ids.map((id) => listedRoom(work, id, size))).size === 1;

/** By marks and places. */
const listedRoom = (work: Work, id: string, size: Between["size"]): string =>
  (roomAt(work, work.part(id), size)?.pairs.flat() ?? []).map((other) => work.line(other).mark).join();

/** What the gaps in a row beside it take in dry weather. */
const gapsAround = (work: Work, pairs: readonly Pair[], axis: AxisIndex): Length =>
  [...new Set(pairs.flat())].map((id) => gapsBefore(work, id, axis)).reduce(add, ZERO);

/** Whether a part that waits has one of its sizes by the list all the same. */
export function isAsListed(work: Work, id: string, size: Between["size"]): boolean {
  const part = work.part(id);
  const { cut, banding, between } = makingOf(part);
  return cut === "piece" && between !== undefined && banding.length === 0 && roomAt(work, part, size) === null;
}

/** Whether several are measured once, and all cut so: all of them between the same parts of a glued case, or in a row from one to the next. */
export function isCutAlike(work: Work, ids: readonly string[]): boolean {
  if (ids.length < 2) return false;
  const all = SIZES.map((size) => ids.map((id) => roomAt(work, work.part(id), size)?.pairs ?? []));
  const same = all.every((rooms) => new Set(rooms.map((pairs) => pairs.flat().join())).size === 1);
  const pairs = all.flatMap(([first = []]) => first);
  return (
    same && pairs.length > 0 && (isRow(ids.map(work.part)) || pairs.every((pair) => isGluedCase(work.design, pair)))
  );
}

/** How much narrower it is cut for that; zero where it has its play. */
const swellOf = (work: Work, part: Part, size: Between["size"], { play, pairs }: Room): Length =>
  play.n === 0n ? roomToSwell(work, part, size, pairs.flat()) : ZERO;

/** Whether what is cut to fit is told to be cut with room to swell. */
export const leavesRoomToSwell = (work: Work, part: Part): boolean =>
  SIZES.some((size) => {
    const between = roomAt(work, part, size);
    return between !== null && less(ZERO, swellOf(work, part, size, between));
  });

/** "the left side (A) to the right side (B), at the front and at the back; cut to the smaller"; each place by itself where others stand there. */
function placesOf(work: Work, parts: readonly Part[], size: Between["size"], { pairs, into }: Room): string {
  const [part] = parts as readonly [Part];
  const axis = indexOf(part.axes[size === "length" ? "width" : "length"]);
  const places = parts.length > 1 ? outermost(parts) : `at the ${faceOf(axis, false)} and at the ${faceOf(axis, true)}`;
  const cut = parts.length > 1 ? `cut all ${numberWord(parts.length)}` : "cut";
  const all = pairs.flat();
  const told = pairs.map(([low, high]) => fromTo(calledAmong(work, low, all), calledAmong(work, high, all)));
  const [first, ...more] = [...new Set(told)];
  if (first === undefined || more.length === 0) {
    const [low, high] = pairs[0] ?? ["", ""];
    return `${intoText(fromTo(called(work, low), called(work, high)), into)}, ${places}; ${cut} to the smaller`;
  }
  const [last = "", ...between] = more.toReversed();
  return [
    [first, ...between.toReversed()].join(", from "),
    ` and from ${last}; ${cut} to the ${more.length === 1 ? "smaller" : "smallest"}`,
  ].join("");
}

/** Between two that are alike. */
const fromTo = (low: string, high: string): string =>
  low === high ? `one ${low} to the other` : `the ${low} to the ${high}`;

/** "..., from wall to wall of their rabbets" */
function intoText(told: string, into: Room["into"]): string {
  const [low, high] = into ?? [null, null];
  if (low === null && high === null) return told;
  return low === high
    ? `${told}, between the far walls of their ${low}s`
    : `${told}, to the far wall of the ${low ?? high}`;
}

/** What it lies in at its ends in a direction. */
function intoOf({ design }: Work, { id, body, blank }: Part, axis: AxisIndex): readonly [string | null, string | null] {
  const kind = design.joints.find(({ parts: [own], method }) => own === id && method === "rabbet") ? "rabbet" : null;
  return [less(blank.low[axis], body.low[axis]) ? kind : null, less(body.high[axis], blank.high[axis]) ? kind : null];
}

interface Room {
  /** What bounds it, low side first; more than one pair where others do farther along. */
  readonly pairs: readonly Pair[];
  readonly play: Length;
  /** What is let in at both ends together. */
  readonly letIn: Length;
  /** It reaches round them, mitred, or ends flush with them. */
  readonly mitred?: Between;
  /** At its low and its high end: what it lies in there, and is measured to the wall of; null: the face is. */
  readonly into?: readonly [low: string | null, high: string | null];
}

/** What bounds the part on both sides in one direction; null where nothing does on one of them. */
function roomAt(work: Work, part: Part, size: Between["size"]): Room | null {
  const axis = indexOf(part.axes[size]);
  const shut = makingOf(part).between;
  if (shut) {
    const own = shut.find((each) => each.size === size);
    if (own)
      return {
        pairs: [own.parts, ...(own.also ?? [])],
        play: ZERO,
        letIn: ZERO,
        ...((own.round || own.flush) && { mitred: own }),
        into: intoOf(work, part, axis),
      };
    // On pins it has its play between what those are in.
    if (!onPins(work.design).has(part.id)) return null;
  }
  const [low, high] = [false, true].map((side) => {
    const face = faceOf(axis, side);
    const [near] = partsAt(face, part, work.design.parts);
    return near && { near, at: facePosition(near.body, faceOf(axis, !side)) };
  });
  if (!low || !high) return null;
  const { body, blank } = part;
  const over = add(subtract(body.low[axis], blank.low[axis]), subtract(blank.high[axis], body.high[axis]));
  const room = add(subtract(body.low[axis], low.at), subtract(high.at, body.high[axis]));
  return {
    pairs: [[low.near.id, high.near.id]],
    // What lies on pins is shorter than the room that it stands for.
    play: less(over, ZERO) ? subtract(room, over) : room,
    letIn: over,
  };
}

/** What the bands at both ends of a direction take off. */
function bandsOff(work: Work, part: Part, axis: AxisIndex): string {
  const own = makingOf(part).banding.filter(({ edge, deducted }) => deducted && faceAxis(edge) === axis);
  if (own.length === 0) return "";
  const off = sayBand(sum(own.map(({ thickness }) => thickness)), work.design.units);
  return `, less ${off} for the ${own.length === 1 ? "band" : "bands"}`;
}

function changes(work: Work, { play, letIn }: Room): string {
  const off = less(ZERO, play) ? `, less ${work.print(play)} of play` : "";
  return less(ZERO, letIn) ? `${off}, and add ${work.print(letIn)} for what is let in` : off;
}
