/** Promise 2: parts on one line are the same thing, turned; the line of a mirror image holds its mirror image. */
import { grown, outside } from "./clip.ts";
import { type Convex, mapped, volume } from "./convex.ts";
import { bounds, type Model, near } from "./model.ts";
import { TOLERANCE } from "./overlap.ts";
import type { Hole, Part } from "./record.ts";
import { cross, dot, minus, plus, size, type V3 } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

export function* congruence(model: Model): Violations {
  const { record, parts } = model;
  for (const line of record.cutList) {
    const [first, ...others] = line.parts.flatMap((id) => parts.get(id) ?? []);
    if (first === undefined) continue;
    for (const other of others)
      if (!TURNS.some((turn) => carries(model, turn, first, other)))
        yield violation("parts of a line are congruent", line.mark, `${other.id} is not ${first.id} turned`);
    const image = record.cutList.find((candidate) => candidate.mark === line.mirrorOf)?.parts[0];
    const original = image === undefined ? undefined : parts.get(image);
    if (original !== undefined && !MIRRORS.some((turn) => carries(model, turn, original, first)))
      yield violation("mirrored line is mirrored", line.mark, `${first.id} does not mirror ${original.id}`);
  }
}

/** Where x, y and z go. */
type Turn = readonly [V3, V3, V3];
const apply = ([x, y, z]: Turn, p: V3): V3 =>
  [0, 1, 2].map((i) => p[0] * (x[i] ?? 0) + p[1] * (y[i] ?? 0) + p[2] * (z[i] ?? 0)) as unknown as V3;

const WAYS: readonly V3[] = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
  [0, 0, 1],
  [0, 0, -1],
];
const square = WAYS.flatMap((x) => WAYS.filter((y) => dot(x, y) === 0).map((y) => [x, y, cross(x, y)] as const));
/** The 24 turns that keep the directions of the board, and the 24 that also swap left and right. */
const TURNS: readonly Turn[] = square;
const MIRRORS: readonly Turn[] = square.map(([x, y, z]) => [x, y, [-z[0], -z[1], -z[2]]]);

/** The turn of one board's directions into the other's, as the parts lie in the room. */
function inRoom(turn: Turn, from: Part, to: Part): Turn {
  const frame = ({ axes }: Part): Turn => [axes.length, axes.width, cross(axes.length, axes.width)];
  const [own, theirs] = [frame(from), frame(to)];
  return [0, 1, 2].map((i) =>
    apply(theirs, apply(turn, own.map((direction) => direction[i] ?? 0) as unknown as V3)),
  ) as unknown as Turn;
}

/** Whether the turn, with a shift, lays one part on the other: wood on wood, grain along grain, bored hole on bored hole. */
function carries(model: Model, boardTurn: Turn, from: Part, to: Part): boolean {
  const turn = inRoom(boardTurn, from, to);
  const target = model.solid(to.id);
  const [low, high] = bounds(target);
  const raw = model.solid(from.id).map((piece) => mapped(piece, (p) => apply(turn, p)));
  const [rawLow, rawHigh] = bounds(raw);
  const close = TOLERANCE + PRINTED;
  if (!minus(high, low).every((extent, i) => near(extent, (rawHigh[i] ?? 0) - (rawLow[i] ?? 0), 2 * close)))
    return false;
  const shift = minus(low, rawLow);
  const place = (p: V3) => plus(apply(turn, p), shift);
  const moved = raw.map((piece) => mapped(piece, (p) => plus(p, shift)));
  const grain = from.grain === null || to.grain === null ? from.grain === to.grain : alike(turn, from.grain, to.grain);
  return grain && covers(target, moved) && covers(moved, target) && sameHoles(model, turn, place, from, to);
}

const PRINTED = 1e-5;
const alike = (turn: Turn, a: V3, b: V3) => Math.abs(dot(apply(turn, a), b)) > 0.9999;

/** Nothing of the bodies is left outside the others, each grown by the tolerance. */
function covers(others: readonly Convex[], bodies: readonly Convex[]): boolean {
  const wide = others.map((body) => grown(body, TOLERANCE + PRINTED));
  return bodies.every((body) => outside(body, wide).every((rest) => volume(rest) < 1e-6));
}

function sameHoles(model: Model, turn: Turn, place: (p: V3) => V3, from: Part, to: Part): boolean {
  const bored = (part: Part) => model.record.holes.filter((hole) => hole.part === part.id && hole.atBench);
  const moved = bored(from).map((hole) => ({ ...hole, at: place(hole.at), direction: apply(turn, hole.direction) }));
  const theirs = bored(to);
  return moved.length === theirs.length && moved.every((a) => theirs.some((b) => sameHole(a, b)));
}

/** A plain hole right through is the same from either side. */
function sameHole(a: Hole, b: Hole): boolean {
  const [along, between] = [dot(a.direction, b.direction), minus(a.at, b.at)];
  // Directions are printed to a millionth.
  const sameWay = size(cross(a.direction, b.direction)) <= 1e-5;
  const plain = a.through && b.through && a.stages.length === 1;
  const placed = plain
    ? sameWay && size(cross(between, b.direction)) <= 2 * TOLERANCE
    : sameWay && along > 0 && size(between) <= 2 * TOLERANCE;
  const deep = (i: number) => plain || near(a.stages[i]?.depth ?? 0, b.stages[i]?.depth ?? 0);
  const sized = a.stages.every((stage, i) => near(stage.diameter, b.stages[i]?.diameter ?? 0) && deep(i));
  return placed && a.stages.length === b.stages.length && sized;
}
