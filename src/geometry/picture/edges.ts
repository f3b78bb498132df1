/**
 * The edges one would see on the wood. A solid is a partition into convex pieces, whose seams are no edges; so around every
 * stretch of an edge of a piece the wedges of all pieces that meet there are added up. What is left are the faces of the
 * solid that end there: none inside the wood, two in one plane on a flat face, otherwise a real edge.
 */
import { once } from "../once.ts";
import { comparePlanes, flip } from "../plane.ts";
import type { Edge, Piece, Plane, Solid, Vec, Vertex } from "../types.ts";
import { cross, dot, minus } from "../vec.ts";
import { position, side } from "../vertex.ts";
import { between, type Interval, merge } from "./intervals.ts";
import { compareEdges } from "./order.ts";

/** Parameters closer than this on an edge are the same place: rounding, not wood. */
const SAME = 1e-12;
/** In units of 1/16 µm: a gap between two runs of one edge that is only rounding. */
const ROUNDING = 1;

/** Sorted by coordinates; each edge in full length once, `from` before `to`. Coordinates in units of 1/16 µm. */
export const realEdges = once((solid: Solid): readonly Edge[] => {
  const lines = new Lines();
  for (const [u, w] of pieceEdges(solid.pieces)) {
    const [from, to] = [position(u), position(w)];
    const meeting: Meeting[] = [];
    for (const piece of solid.pieces) {
      const met = meet(piece, u, w, from, to);
      if (met) meeting.push(met);
    }
    const stops = [...new Set(meeting.flatMap((m) => m.run))].sort((a, b) => a - b);
    for (let i = 0; i + 1 < stops.length; i++) {
      const [a, b] = [stops[i] ?? 0, stops[i + 1] ?? 0];
      if (b - a < SAME) continue;
      const middle = (a + b) / 2;
      const here = meeting.filter((m) => m.run[0] < middle && middle < m.run[1]);
      const faces = facesAround(here, minus(to, from));
      if (!faces) continue;
      const smooth = faces.every((face) => solid.smooth?.has(face)) ? outwards(faces, here) : undefined;
      lines.add(faces, between(from, to, a), between(from, to, b), smooth);
    }
  }
  return lines.edges();
});

/** Each edge of each piece once, as a pair of vertices. */
function pieceEdges(pieces: readonly Piece[]): [Vertex, Vertex][] {
  const out: [Vertex, Vertex][] = [];
  const seen = new Map<Vertex, Set<Vertex>>();
  for (const { faces } of pieces)
    for (const { vertices } of faces)
      vertices.forEach((u, i) => {
        const w = vertices[(i + 1) % vertices.length] ?? u;
        if (seen.get(u)?.has(w) || seen.get(w)?.has(u)) return;
        const ends = seen.get(u);
        if (ends) ends.add(w);
        else seen.set(u, new Set([w]));
        out.push([u, w]);
      });
  return out;
}

interface Meeting {
  readonly run: Interval;
  /** The piece's planes that hold the edge: one on a face, two on an edge of the piece. */
  readonly on: readonly Plane[];
}

/** Where the edge u–w runs along the surface of the piece. */
function meet(piece: Piece, u: Vertex, w: Vertex, from: Vec, to: Vec): Meeting | null {
  for (const i of [0, 1, 2] as const) {
    if (Math.max(from[i], to[i]) < piece.low[i] - ROUNDING || Math.min(from[i], to[i]) > piece.high[i] + ROUNDING)
      return null;
  }
  let start = 0;
  let end = 1;
  const on: Plane[] = [];
  for (const { plane } of piece.faces) {
    const [a, b] = [side(u, plane), side(w, plane)];
    if (a === 0 && b === 0) on.push(plane);
    else if (a >= 0 && b >= 0) return null;
    else if (a > 0 || b > 0) {
      const p = distance(plane, from);
      const t = p / (p - distance(plane, to));
      if (a > 0) start = Math.max(start, t);
      else end = Math.min(end, t);
    }
  }
  return end - start > SAME ? { run: [start, end], on } : null;
}

const normal = (p: Plane): Vec => [p.a, p.b, p.c];
const distance = (p: Plane, at: Vec): number => dot(normal(p), at) - p.d;
const canonical = (p: Plane): Plane => {
  const turned = flip(p);
  return comparePlanes(p, turned) > 0 ? p : turned;
};

/** The two faces of the solid (as canonical planes, sorted) that end along a stretch, or null where there is no edge. */
function facesAround(here: readonly Meeting[], along: Vec): readonly [Plane, Plane] | null {
  // A face seen along the edge is a ray; +1 and −1 count wood on either side of it, so that a seam adds up to nothing.
  const rays = new Map<Plane, [number, number]>();
  const add = (plane: Plane, sense: boolean): void => {
    const key = canonical(plane);
    const turned = key !== plane;
    const sums = rays.get(key) ?? [0, 0];
    sums[sense === turned ? 0 : 1] += turned ? 1 : -1;
    rays.set(key, sums);
  };
  for (const { on } of here) {
    const [p, q] = on;
    if (!p) return null;
    if (!q) {
      add(p, true);
      add(p, false);
    } else {
      add(p, dot(cross(along, normal(p)), normal(q)) < 0);
      add(q, dot(cross(along, normal(q)), normal(p)) < 0);
    }
  }
  const left = [...rays].filter(([, sums]) => sums[0] !== 0 || sums[1] !== 0).map(([plane]) => plane);
  const [first, second] = left.sort(comparePlanes);
  return first && second ? [first, second] : null;
}

/** The outward normals of two faces, as the pieces that have them say. */
const outwards = (faces: readonly [Plane, Plane], here: readonly Meeting[]): readonly [Vec, Vec] => {
  const [p, q] = faces.map((face) => here.flatMap(({ on }) => on).find((plane) => canonical(plane) === face) ?? face);
  return [normal(p ?? faces[0]), normal(q ?? faces[1])];
};

interface Line {
  readonly origin: Vec;
  readonly along: Vec;
  readonly runs: Interval[];
  readonly smooth: readonly [Vec, Vec] | undefined;
}

/** Collects stretches by the two planes that meet in them, so that collinear ones join without comparing directions. */
class Lines {
  private readonly found = new Map<Plane, Map<Plane, Line>>();

  add([p, q]: readonly [Plane, Plane], from: Vec, to: Vec, smooth: Line["smooth"]): void {
    const others = this.found.get(p) ?? new Map<Plane, Line>();
    this.found.set(p, others);
    const line = others.get(q) ?? { origin: from, along: minus(to, from), runs: [], smooth };
    others.set(q, line);
    const axis = dominant(line.along);
    line.runs.push([Math.min(from[axis], to[axis]), Math.max(from[axis], to[axis])]);
  }

  edges(): Edge[] {
    const out: Edge[] = [];
    for (const others of this.found.values())
      for (const { origin, along, runs, smooth } of others.values()) {
        const axis = dominant(along);
        const at = (x: number): Vec =>
          [0, 1, 2].map((i) =>
            i === axis ? x : (origin[i] ?? 0) + ((x - origin[axis]) / along[axis]) * (along[i] ?? 0),
          ) as unknown as Vec;
        for (const [low, high] of merge(runs, ROUNDING))
          out.push({ from: at(low), to: at(high), ...(smooth && { smooth }) });
      }
    return out.sort(compareEdges);
  }
}

const dominant = (v: Vec): 0 | 1 | 2 => {
  const [x, y, z] = [Math.abs(v[0]), Math.abs(v[1]), Math.abs(v[2])];
  return x >= y && x >= z ? 0 : y >= z ? 1 : 2;
};
