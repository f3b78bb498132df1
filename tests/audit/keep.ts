/** Promise 5: the wood beside and under each hole is at least what `keep` says. */
import type { Convex } from "./convex.ts";
import type { Cylinder } from "./cylinder.ts";
import { stagesOf } from "./holes.ts";
import { type Model, near } from "./model.ts";
import { TOLERANCE } from "./overlap.ts";
import type { Hole, Part } from "./record.ts";
import { dot, type V3 } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

interface Side {
  readonly normal: V3;
  readonly offset: number;
}

export function* keep(model: Model): Violations {
  for (const part of model.record.parts) {
    const outer = outerSides(model.solid(part.id));
    for (const hole of model.record.holes.filter((h) => h.part === part.id)) {
      const kept = lengthways(model, part).map((axis) => measured(hole, outer, axis, model.solid(part.id)));
      const names = ["edge", "end", "under"] as const;
      const short = kept.map((wood) => names.filter((name) => wood[name] < hole.keep[name] - TOLERANCE));
      if (!short.some((list) => list.length === 0))
        yield violation("keep is kept", part.id, `the hole for ${hole.for} keeps less than it says: ${short[0]}`);
    }
  }
}

/** The planes that the whole part lies behind: its faces, edges and ends, not the walls of what is cut into it. */
function outerSides(pieces: readonly Convex[]): Side[] {
  const points = pieces.flatMap((piece) => piece.points);
  return pieces
    .flatMap((piece) => piece.faces)
    .filter(({ normal, offset }) => points.every((p) => dot(p, normal) <= offset + TOLERANCE));
}

/** The direction of the part's length: along the grain if the blank says so, else whichever extents fit the sizes. */
function lengthways({ record, solid }: Model, part: Part): readonly V3[] {
  const blank = record.blanks.find((b) => b.part === part.id);
  if (part.grain !== null && blank?.grain === "length") return [part.grain];
  const { thickness, width, length } = part.axes;
  const points = solid(part.id).flatMap((body) => body.points);
  const extent = (axis: V3) =>
    Math.max(...points.map((p) => dot(p, axis))) - Math.min(...points.map((p) => dot(p, axis)));
  const own = [thickness, width, length];
  const fitting = own.filter((axis) => near(extent(axis), part.length, record.precision + TOLERANCE));
  return fitting.length > 0 ? fitting : own;
}

function measured(hole: Hole, outer: readonly Side[], length: V3, pieces: readonly Convex[]) {
  const bores = stagesOf(hole);
  const least = (sides: readonly Side[], list: readonly Cylinder[]) =>
    Math.min(Infinity, ...sides.flatMap((side) => list.map((bore) => wood(bore, side))));
  const beside = outer.filter((side) => Math.abs(dot(side.normal, hole.direction)) < 0.2);
  const isEnd = (side: Side) => Math.abs(dot(side.normal, length)) > 0.7;
  const ahead = outer.filter((side) => dot(side.normal, hole.direction) > 0.2);
  // The pilot of a pocket leaves the end of the part; only the bore has wood under it.
  const deep = hole.kind === "pocket" ? bores.slice(0, 1) : bores;
  const under = hole.through ? Infinity : Math.min(least(ahead, deep), ...deep.map((bore) => beyond(bore, pieces)));
  return {
    // A recess may be open to the side.
    edge:
      hole.kind === "recess"
        ? Infinity
        : least(
            beside.filter((s) => !isEnd(s)),
            bores,
          ),
    end: least(beside.filter(isEnd), bores),
    under,
  };
}

/** From the surface of a bore, flat end included, to a plane. */
function wood({ from, axis, length, radius }: Cylinder, { normal, offset }: Side): number {
  const slope = dot(normal, axis);
  const reach = Math.max(0, slope * length) + radius * Math.sqrt(Math.max(0, 1 - slope * slope));
  return offset - dot(from, normal) - reach;
}

/** How much wood a bore would still go through, straight on from its bottom. */
function beyond({ from, axis, length }: Cylinder, pieces: readonly Convex[]): number {
  const spans = pieces.flatMap((piece) => {
    const span = inside(piece, from, axis);
    return span === undefined ? [] : [span];
  });
  let reached = length;
  for (const [start, end] of spans.sort((a, b) => a[0] - b[0]))
    if (start <= reached + TOLERANCE && end > reached) reached = end;
  return reached - length;
}

/** From where to where a ray runs within a body grown by `more`, as distances along it. */
export function inside(body: Convex, from: V3, axis: V3, more = 0): readonly [number, number] | undefined {
  let [start, end] = [-Infinity, Infinity];
  for (const { normal, offset } of body.faces) {
    const [slope, room] = [dot(axis, normal), offset + more - dot(from, normal)];
    if (Math.abs(slope) < 1e-12) {
      if (room < 0) return undefined;
    } else if (slope > 0) end = Math.min(end, room / slope);
    else start = Math.max(start, room / slope);
  }
  return start < end ? [start, end] : undefined;
}
