/** Convex pieces and the one operation on them: the cut with a plane. */
import { bounds } from "./convex.ts";
import { boxPlanes, flip } from "./plane.ts";
import type { Piece, PieceFace, Plane, Point, Vertex } from "./types.ts";
import { meet, position, side, vertexAt } from "./vertex.ts";

export { volume6 } from "./volume.ts";

/** A piece from its faces. */
export function pieceOf(faces: readonly PieceFace[]): Piece {
  const vertices = new Set<Vertex>();
  for (const face of faces) for (const vertex of face.vertices) vertices.add(vertex);
  const all = [...vertices];
  return { faces, vertices: all, ...bounds(all.map(position)) };
}

/** A box; low must be below high along every axis. */
export function boxPiece(low: Point, high: Point): Piece {
  const corner = (x: 0 | 1, y: 0 | 1, z: 0 | 1) =>
    vertexAt([x ? high[0] : low[0], y ? high[1] : low[1], z ? high[2] : low[2]]);
  const loops = [
    [corner(0, 0, 0), corner(0, 0, 1), corner(0, 1, 1), corner(0, 1, 0)],
    [corner(1, 0, 0), corner(1, 1, 0), corner(1, 1, 1), corner(1, 0, 1)],
    [corner(0, 0, 0), corner(1, 0, 0), corner(1, 0, 1), corner(0, 0, 1)],
    [corner(0, 1, 0), corner(0, 1, 1), corner(1, 1, 1), corner(1, 1, 0)],
    [corner(0, 0, 0), corner(0, 1, 0), corner(1, 1, 0), corner(1, 0, 0)],
    [corner(0, 0, 1), corner(1, 0, 1), corner(1, 1, 1), corner(0, 1, 1)],
  ];
  const planes = boxPlanes(low, high);
  return pieceOf(planes.map((plane, i) => ({ plane, vertices: loops[i] ?? [] })));
}

/** Both sides of a cut; a side without volume is null. A piece that the plane does not cut is returned as it is. */
export function split(piece: Piece, plane: Plane): { inside: Piece | null; outside: Piece | null } {
  const sides = sidesOf(piece, plane);
  if (!sides.outside) return { inside: piece, outside: null };
  if (!sides.inside) return { inside: null, outside: piece };
  const crossings = cutEdges(piece, plane, sides.of);
  const turned = new Map([...sides.of].map(([v, s]) => [v, -s]));
  return {
    inside: half(piece, plane, sides.of, crossings),
    outside: half(piece, flip(plane), turned, crossings),
  };
}

/** What is inside the plane, or null. */
export function clip(piece: Piece, plane: Plane): Piece | null {
  const sides = sidesOf(piece, plane);
  if (!sides.outside) return piece;
  if (!sides.inside) return null;
  return half(piece, plane, sides.of, cutEdges(piece, plane, sides.of));
}

/** On which side each vertex lies, and whether there are any inside and outside. */
function sidesOf(piece: Piece, plane: Plane) {
  const of = new Map<Vertex, number>();
  let [inside, outside] = [false, false];
  for (const vertex of piece.vertices) {
    const s = side(vertex, plane);
    of.set(vertex, s);
    if (s < 0) inside = true;
    else if (s > 0) outside = true;
  }
  return { of, inside, outside };
}

/** What is inside all the planes, or null. */
export function intersect(piece: Piece, planes: readonly Plane[]): Piece | null {
  let rest: Piece | null = piece;
  for (const plane of planes) {
    if (!rest) return null;
    rest = clip(rest, plane);
  }
  return rest;
}

/** Where the plane meets the edges that cross it, by either end. Each edge is the meeting of its two faces. */
type Crossings = Map<Vertex, Map<Vertex, Vertex>>;

function cutEdges(piece: Piece, plane: Plane, sides: Map<Vertex, number>): Crossings {
  const faceAlong = new Map<Vertex, Map<Vertex, PieceFace>>();
  const crossings: Crossings = new Map();
  for (const face of piece.faces) {
    eachEdge(face.vertices, (u, w) => {
      if ((sides.get(u) ?? 0) * (sides.get(w) ?? 0) >= 0) return;
      const across = faceAlong.get(w)?.get(u);
      if (!across) {
        nested(faceAlong, u).set(w, face);
        return;
      }
      const at = meet(face.plane, across.plane, plane);
      nested(crossings, u).set(w, at);
      nested(crossings, w).set(u, at);
    });
  }
  return crossings;
}

/** What is inside: the loops of the faces up to the cut, and the cut itself as a new face. */
function half(piece: Piece, plane: Plane, sides: Map<Vertex, number>, crossings: Crossings): Piece {
  const faces: PieceFace[] = [];
  const next = new Map<Vertex, Vertex>();
  for (const face of piece.faces) {
    const loop: Vertex[] = [];
    let inside = false;
    eachEdge(face.vertices, (u, w) => {
      const s = sides.get(u) ?? 0;
      if (s <= 0) loop.push(u);
      if (s < 0) inside = true;
      const at = crossings.get(u)?.get(w);
      if (at) loop.push(at);
    });
    if (!inside) continue;
    faces.push({ plane: face.plane, vertices: loop });
    eachEdge(loop, (u, w) => {
      if ((sides.get(u) ?? 0) === 0 && (sides.get(w) ?? 0) === 0) next.set(w, u);
    });
  }
  const cut: Vertex[] = [];
  const [start] = next.keys();
  for (let v = start; v && cut.length < next.size; v = next.get(v)) cut.push(v);
  faces.push({ plane, vertices: cut });
  return pieceOf(faces);
}

function eachEdge(loop: readonly Vertex[], visit: (from: Vertex, to: Vertex) => void): void {
  let from = loop[loop.length - 1];
  for (const to of loop) {
    if (from) visit(from, to);
    from = to;
  }
}

function nested<K, V>(map: Map<K, Map<K, V>>, key: K): Map<K, V> {
  let inner = map.get(key);
  if (!inner) {
    inner = new Map();
    map.set(key, inner);
  }
  return inner;
}
