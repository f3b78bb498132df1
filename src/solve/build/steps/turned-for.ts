/** Which way the work is turned for a step of joining. */
import { dot } from "../../../geometry/vec.ts";
import { equal, less, toNumber } from "../../../units/rational.ts";
import { type AxisIndex, enclosing, extent, INDICES, sameDirection } from "../../design/space.ts";
import type { Direction, Part } from "../../design.ts";
import { LOOSE, onPins } from "../order/links.ts";
import type { Work } from "./draft.ts";
import { against, isFlat, isUnderneath, LEVEL, STANDING, STEEP } from "./lying.ts";
import { isStruck, type Move, togetherAfter, type Unit } from "./moves.ts";
import { pastTheBench } from "./packing.ts";
import { liesOn } from "./propped.ts";
import { BLOCKS, isSteady, liesAnyhow, standingOn } from "./resting.ts";
import { laysDown } from "./words/glazed.ts";

/** How the work lay in an earlier step of the same body. */
export interface Laid {
  readonly moves: readonly Move[];
  readonly up: Direction;
}

/**
 * Heads up: a unit on the bench is laid so that most fasteners are driven downwards; the whole piece is only turned over for those
 * driven from below. What is glued to a flat side stands up from it. What has heads on two sides stands, so that none comes from below.
 * Where it would fall over so, it lies on the side on which it does not. What is done as it was at the other end is done as the work lies.
 */
export function upFor(work: Work, moves: readonly Move[], unit: Unit, done: readonly Laid[]): Direction {
  const up = usualUp(work, moves, unit, done);
  const comes = moves.flatMap(({ arriving }) => arriving);
  const drives = moves.flatMap((move) => move.work.flatMap((w) => w.drives));
  const [first] = moves;
  const isLevel = (way: Direction): boolean =>
    drives.length > 0 && drives.every(({ fastener }) => Math.abs(dot(fastener.direction, way)) < LEVEL);
  const onNothing = (way: Direction): boolean => comes.some((id) => !liesOn(work, moves, id, way));
  // Work that lies on a side lies as well on another on which what comes is not held in the air.
  if (!first || first.starts || first.arrivesBuilt || up[2] !== 0 || !isLevel(up) || !onNothing(up)) return up;
  const other = SIDES.find(
    (way) =>
      isLevel(way) &&
      !comesUnder(moves, way) &&
      !onNothing(way) &&
      rests(work, moves, way) &&
      waitsSteady(work, moves, way),
  );
  return other ?? up;
}

function usualUp(work: Work, moves: readonly Move[], unit: Unit, done: readonly Laid[]): Direction {
  if (laysDown(work, moves)) return against((moves[0] as Move).along);
  const before = done.at(-1)?.up ?? STANDING;
  const again = done.some(({ up, moves: earlier }) => sameDirection(up, before) && isAlike(work, earlier, moves, up));
  if (again && !comesUnder(moves, before) && rests(work, moves, before)) return before;
  const heads = headsUp(work, moves, unit, begunOnHead(work, done) ? STANDING : before);
  const drives = moves.flatMap((move) => move.work.flatMap((w) => w.drives));
  const down = (way: Direction): number => drives.reduce((so, { fastener }) => so - dot(fastener.direction, way), 0);
  // What is driven, and the barrels that its bolts go into.
  const into = [...drives.map(({ fastener }) => fastener.direction), ...barrels(work, moves)];
  const fromBelow = (way: Direction): boolean => into.some((direction) => dot(direction, way) > STEEP);
  const up = fromBelow(heads) && !fromBelow(STANDING) ? STANDING : heads;
  if (liesAnyhow(work, moves)) return up;
  const level = drives.length > 0 && drives.every(({ fastener }) => Math.abs(dot(fastener.direction, up)) < LEVEL);
  const flush =
    level &&
    !onBench(work, moves, up) &&
    FLUSH.find((way) => !fromBelow(way) && onBench(work, moves, way) && rests(work, moves, way));
  if (flush) return flush;
  if (rests(work, moves, up) && (level || waitsSteady(work, moves, up))) return up;
  const stands = (way: Direction): boolean => rests(work, moves, way, standsOn);
  // Clamps hold what is closed from above as it lies.
  const closed = drives.length === 0 && up[2] === 0 && moves.every(({ along }) => dot(along, up) < -STEEP);
  if (closed && stands(up)) return up;
  const ways = SIDES.filter((way) => !fromBelow(way) && !comesUnder(moves, way)).toSorted(
    (a, b) => Number(sameDirection(b, before)) - Number(sameDirection(a, before)) || down(b) - down(a),
  );
  const [steady] = ways.filter((way) => rests(work, moves, way) && waitsSteady(work, moves, way));
  if (rests(work, moves, up)) return steady ?? up;
  return steady ?? ways.find((way) => rests(work, moves, way)) ?? (stands(up) ? up : (ways.find(stands) ?? up));
}

/** Whether as many parts of the same sizes are joined in the same ways, and driven at the same slopes as the work lies. */
function isAlike(work: Work, earlier: readonly Move[], moves: readonly Move[], up: Direction): boolean {
  const comes = (all: readonly Move[]) => all.flatMap(({ arriving }) => arriving.map(work.part));
  const ways = (all: readonly Move[]): string =>
    all
      .flatMap((move) =>
        move.work.flatMap(({ joint, drives }) => [
          joint.method,
          ...drives.map(({ tool, fastener }) => `${tool} ${Math.round(dot(fastener.direction, up) * 100)}`),
        ]),
      )
      .toSorted()
      .join();
  const [some, others] = [comes(earlier), comes(moves)];
  return (
    some.length === others.length &&
    some.every((part, i) =>
      (["thickness", "width", "length"] as const).every((size) => equal(part[size], (others[i] as Part)[size])),
    ) &&
    ways(earlier) === ways(moves)
  );
}

/** The ways in which cross dowels are pushed into their bores. */
const barrels = ({ plan }: Work, moves: readonly Move[]): readonly Direction[] => {
  const bolts = new Set(
    moves.flatMap((move) => move.work.flatMap(({ drives }) => drives.map(({ fastener }) => fastener.id))),
  );
  return plan.holes.flatMap(({ kind, direction, for: id }) =>
    kind === "nut" && bolts.has(id ?? "") ? [direction] : [],
  );
};

/** A shelf on pins falls where the work is laid down. */
function holdsLoose({ design }: Work, ids: readonly string[]): boolean {
  const pinned = onPins(design);
  return ids.some((id) => pinned.has(id));
}

/** On its back, on its front, on its sides. */
const SIDES: readonly Direction[] = [
  [0, -1, 0],
  [0, 1, 0],
  [1, 0, 0],
  [-1, 0, 0],
];

const hangsFar = (past: ReturnType<typeof pastTheBench>): boolean => past !== null && less(BLOCKS, past.by);

/** Nothing is brought in at the side on which the work lies. */
const comesUnder = (moves: readonly Move[], up: Direction): boolean =>
  up[2] === 0 && !(moves[0] as Move).starts && moves.some(({ along }) => dot(along, up) > STEEP);

/** As it stands, on its head, and on its sides. */
const FLUSH: readonly Direction[] = [STANDING, [0, 0, -1], ...SIDES];

/** Whether all of what begins a body reaches the bench: none is held up while it is driven. */
function onBench(work: Work, moves: readonly Move[], up: Direction): boolean {
  const [first] = moves;
  if (!first?.starts) return true;
  const ids = togetherAfter(moves);
  return standingOn(work, ids, up)?.lowest.length === ids.length;
}

/** It stays as it is put, and nothing of what comes hangs far down beside it. */
const rests = (work: Work, moves: readonly Move[], up: Direction, stays = isSteady): boolean =>
  stays(work, togetherAfter(moves), up) && !hangsFar(pastTheBench(work, moves, up));

/** What is there stays as it is put before more comes. */
const waitsSteady = (work: Work, [first]: readonly Move[], up: Direction): boolean =>
  first === undefined || first.starts || standsOn(work, first.present, up);

/** It stays as it is put while its joints hold. */
const standsOn: typeof isSteady = (work, ids, up) => standingOn(work, ids, up) !== null;

function headsUp(work: Work, moves: readonly Move[], unit: Unit, before: Direction): Direction {
  const drives = moves.flatMap((move) => move.work.flatMap((w) => w.drives));
  // What runs, hangs or lies loose would fall out of a piece that stands on its head.
  if (moves.every((move) => move.work.every(({ joint }) => LOOSE.includes(joint.kind)))) return [0, 0, 1];
  const kept = comesUnder(moves, before) ? STANDING : before;
  if (drives.length === 0) return fromSide(work, moves) ?? kept;
  const sum = [0, 1, 2].map((i) => drives.reduce((so, { fastener }) => so + (fastener.direction[i] as number), 0));
  const axis = sum.reduce((best, value, i) => (Math.abs(value) > Math.abs(sum[best] as number) + 1e-9 ? i : best), 2);
  const value = sum[axis] as number;
  if (Math.abs(value) < 1e-9) return kept;
  const small = unit.parts.length * 2 <= work.design.parts.length;
  // A whole piece is not turned for screws that are reached from its sides as it lies; a nail is driven down.
  const isLevel = drives.every(({ fastener }) => Math.abs(dot(fastener.direction, before)) < LEVEL);
  const isDriven = drives.every(isStruck) && !moves.some(({ present }) => holdsLoose(work, present));
  if (axis !== 2 && !small && !isDriven) return isLevel && !isUnderneath(work, moves, before) ? kept : STANDING;
  const way = INDICES.map((i) => (i === axis ? (value > 0 ? -1 : 1) : 0)) as unknown as Direction;
  return !small && comesUnder(moves, way) ? kept : way;
}

/** Where the first of what comes goes on a side that lies flat, covers a front or back, or would hang below a board: up, against the way that it comes; else null. */
function fromSide(work: Work, moves: readonly Move[]): Direction | null {
  const [first] = moves;
  if (!first || !moves.some((move) => move.work.some(({ joint }) => joint.glue))) return null;
  const axis = INDICES.find((i) => Math.abs(first.along[i]) > 0.99);
  if (axis === undefined) return null;
  if (axis === 2) return wouldHang(work, first) ? against(first.along) : null;
  return isFlat(work, first.present, axis) || (axis === 1 && covers(work, first, axis)) ? against(first.along) : null;
}

/** What would hang from the board that a body begins with stands in it when that lies upside down. */
const wouldHang = (work: Work, { starts, along, present }: Move): boolean =>
  starts && along[2] > STEEP && isFlat(work, present, 2);

/** It lay upside down for what stood in its first board, and has no reason to stay so. */
const begunOnHead = (work: Work, [begun, ...more]: readonly Laid[]): boolean =>
  begun !== undefined && more.length === 0 && begun.up[2] === -1 && wouldHang(work, begun.moves[0] as Move);

/** So much of the width and height of what is there. */
const COVERS = 0.75;

/** Whether a flat frame or panel goes on the whole of a side: its weight presses it on, and clamps reach round it. */
function covers(work: Work, { present, arriving, starts }: Move, axis: AxisIndex): boolean {
  const [under, over] = [present, arriving].map((ids) => ids.map((id) => work.part(id).body).reduce(enclosing)) as [
    Part["body"],
    Part["body"],
  ];
  const size = (body: Part["body"], i: AxisIndex): number => toNumber(extent(body, i));
  return (
    !starts &&
    isFlat(work, arriving, axis) &&
    INDICES.every((i) => i === axis || size(over, i) > COVERS * size(under, i))
  );
}
