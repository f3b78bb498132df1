/** What is screwed on by its end, or between others, and lies on nothing meanwhile: blocks hold it at its height. */
import { dot } from "../../../geometry/vec.ts";
import { type Length, UNITS_PER_MM } from "../../../units/length.ts";
import { less, min, sign, subtract, toNumber } from "../../../units/rational.ts";
import { type AxisIndex, axisOf, extent, faceOf, INDICES, indexOf, middle, otherAxes } from "../../design/space.ts";
import type { Box, Direction, Face, Part } from "../../design.ts";
import { LOOSE } from "../order/links.ts";
import type { JointWork } from "../order/plan.ts";
import { bottomOf, boxOf, topOf } from "./box-of.ts";
import { definite, type Work } from "./draft.ts";
import { lowHeadTexts } from "./low-heads.ts";
import { LEVEL, STEEP } from "./lying.ts";
import { type Move, togetherAfter } from "./moves.ts";
import { BLOCKS, standingOn } from "./resting.ts";
import { groupedBy } from "./wishes/own-key.ts";

/** Nearer, two faces touch. */
const NEAR = UNITS_PER_MM / 10;

/** A sentence for those at one height; common practice, no source. */
export function proppedTexts(work: Work, moves: readonly Move[], up: Direction): readonly string[] {
  const hanging = moves
    .flatMap((move) => (hangsFree(work, move, moves, up) ? move.arriving : []))
    .map((id) => ({ id, room: roomUnder(work, moves, id, up), tips: tips(work, moves, id, up) }));
  const on = standingOn(work, (moves[0] as Move).present, up);
  const alike = groupedBy(
    hanging,
    ({ room, tips: { on: under, side } }) =>
      `${room.on} ${work.print(room.high)} ${side} ${under.map((each) => work.line(each).mark).join()}`,
  );
  return alike.flatMap((own) => {
    const [{ room, tips: first }] = own as [(typeof hanging)[number]];
    const { on: under, side } = first;
    const ids = own.map(({ id }) => id);
    const [they, is] = ids.length > 1 ? ["They lie", "they are"] : ["It lies", "it is"];
    const lies = side === null ? `${they} on nothing yet` : `${they} on ${definite(work, under)} alone, and would tip`;
    const later = laterMates(work, moves, ids);
    const until =
      later.length > 0
        ? `, and leave them there until ${definite(work, later)} ${later.length > 1 ? "hold" : "holds"} the other end`
        : "";
    // On blocks the work is told to stand by itself.
    const told = room.on !== null || !on || on.blocks < NEAR;
    // What the work is raised on counts for these too.
    const raised = room.on === null && lowHeadTexts(work, moves, up).length > 0;
    const than = raised ? "higher than those under the work" : "high, or offcuts cut to that,";
    const high = told ? ` ${work.print(room.high)} ${than}` : "";
    const from = room.on === null ? "" : ` on ${definite(work, [room.on])},`;
    return [
      `${lies}: set blocks${high}${from} under ${definite(work, ids)}${side ? ` at the ${side}` : until ? " at the free end" : ""} while ${is} ${drivenWord(moves, ids)}${until}.`,
    ];
  });
}

/** How what comes so is fastened. */
function drivenWord(moves: readonly Move[], ids: readonly string[]): string {
  const drives = moves
    .filter(({ arriving }) => arriving.some((id) => ids.includes(id)))
    .flatMap(({ work }) => work.flatMap((each) => each.drives));
  if (drives.some(({ tool }) => tool === "hammer")) return "nailed";
  return drives.some(({ fastener }) => fastener.kind.includes("bolt")) ? "bolted" : "screwed";
}

/** Whether it is driven level into its length or width, far from the bench, and nothing that is there is under it. */
function hangsFree(work: Work, move: Move, moves: readonly Move[], up: Direction): boolean {
  const { starts, arrivesBuilt, arriving, work: joined } = move;
  const drives = joined.flatMap((each) => each.drives);
  const [id] = arriving;
  if (starts || arrivesBuilt || !id || drives.length === 0 || joined.some(({ joint }) => joint.glue)) return false;
  const part = work.part(id);
  const along = INDICES.find((i) => drives.every(({ fastener }) => Math.abs(fastener.direction[i]) > STEEP));
  return (
    // What is let in between others is fastened from several sides, and falls through.
    (along === undefined
      ? indexOf(part.axes.thickness) === axisOf(up)
      : less(BLOCKS, extent(part.body, along)) || isReachedThrough(part, joined, roomUnder(work, moves, id, up))) &&
    drives.every(({ fastener }) => Math.abs(dot(fastener.direction, up)) < LEVEL) &&
    sign(roomUnder(work, moves, id, up).high) > 0 &&
    !tips(work, moves, id, up).steady
  );
}

/** A long piece over another that is driven into from behind what it lies against: no hand is left that holds it. What is set is clamped. */
const isReachedThrough = (part: Part, joined: readonly JointWork[], { on }: Room): boolean =>
  on !== null &&
  joined.every(
    ({ joint, drives }) => joint.setWith === undefined && drives.every(({ fastener }) => fastener.into === part.id),
  ) &&
  less(BLOCKS, extent(part.body, indexOf(part.axes.length)));

/** Whether a part lies on the bench, or on what is there on both sides of its middle, as the work lies. */
export function liesOn(work: Work, moves: readonly Move[], id: string, up: Direction): boolean {
  const { on, high } = roomUnder(work, moves, id, up);
  return (on === null && toNumber(high) < NEAR) || tips(work, moves, id, up).steady;
}

interface Tips {
  readonly steady: boolean;
  readonly on: readonly string[];
  /** The side on which nothing is under it; null where nothing is anywhere. */
  readonly side: Face | null;
}

/** Whether what is under a part already is on both sides of its middle. */
function tips(work: Work, moves: readonly Move[], id: string, up: Direction): Tips {
  const on = supportsOf(work, moves, id, up);
  if (on.length === 0) return { steady: false, on, side: null };
  const { body } = work.part(id);
  const under = on.map((other) => boxOf(work.part(other)));
  for (const i of otherAxes(axisOf(up))) {
    const at = middle(body, i);
    if (under.every(({ high }) => less(high[i], at))) return { steady: false, on, side: faceOf(i, true) };
    if (under.every(({ low }) => less(at, low[i]))) return { steady: false, on, side: faceOf(i, false) };
  }
  return { steady: true, on, side: null };
}

/** What a part lies on already, as the work lies. */
const supportsOf = (work: Work, moves: readonly Move[], id: string, up: Direction): readonly string[] =>
  togetherAfter(moves).filter((other) => other !== id && isUnder(work.part(other), work.part(id), up));

/** How far one lies above another, as the work lies; null where it is not over it. */
function above(part: Part, other: Part, up: Direction, over: Over): Length | null {
  const axis = axisOf(up);
  const [own, under] = [boxOf(part), boxOf(other)];
  const isOver = INDICES.every((i) => i === axis || over(own, under, i));
  if (!isOver) return null;
  return subtract(bottomOf(own, up), topOf(under, up));
}

type Over = (own: Box, under: Box, axis: AxisIndex) => boolean;

const partly: Over = (own, under, i) => less(own.low[i], under.high[i]) && less(under.low[i], own.high[i]);
const wholly: Over = (own, under, i) => !less(own.low[i], under.low[i]) && !less(under.high[i], own.high[i]);

function isUnder(other: Part, part: Part, up: Direction): boolean {
  const gap = above(part, other, up, partly);
  return gap !== null && Math.abs(toNumber(gap)) < NEAR;
}

/** What blocks under a part stand on, and how high they are. */
interface Room {
  /** The part that lies under all of it; null for the bench, as deep as what lies lowest of the work. */
  readonly on: string | null;
  readonly high: Length;
}

function roomUnder(work: Work, moves: readonly Move[], id: string, up: Direction): Room {
  const part = work.part(id);
  const others = togetherAfter(moves).filter((other) => other !== id);
  const under = others.flatMap((on): readonly Room[] => {
    const high = above(part, work.part(on), up, wholly);
    return high !== null && toNumber(high) >= 0 ? [{ on, high }] : [];
  });
  const [first, ...more] = under;
  if (first) return more.reduce((so, each) => (less(each.high, so.high) ? each : so), first);
  const bottoms = [part, ...others.map(work.part)].map((each) => bottomOf(boxOf(each), up));
  return { on: null, high: subtract(bottomOf(boxOf(part), up), bottoms.reduce(min)) };
}

/** What they are joined to later: at their ends, if anything is. */
function laterMates({ design, part }: Work, moves: readonly Move[], ids: readonly string[]): readonly string[] {
  const here = new Set(togetherAfter(moves));
  const joints = design.joints.filter(
    ({ parts, kind }) =>
      !LOOSE.includes(kind) && parts.some((id) => ids.includes(id)) && parts.some((id) => !here.has(id)),
  );
  const along = indexOf(part(ids[0] as string).axes.length);
  const atEnds = joints.filter(({ contact }) => contact.some(({ normal }) => Math.abs(normal[along]) > STEEP));
  const mates = (atEnds.length > 0 ? atEnds : joints).flatMap(({ parts }) => parts.filter((id) => !here.has(id)));
  return [...new Set(mates)];
}
