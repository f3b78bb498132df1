/**
 * What a convex piece hides: everything behind it, seen along a view, is again convex. Its half-spaces are the planes of the
 * piece that face the eye or lie in the line of sight, and for every edge of the outline the one combination of its front and
 * back plane that contains the line of sight. So a piece hides at most one interval of a line.
 *
 * Lines often lie exactly in a face, and in views along an axis exactly in a seam between two pieces of one part. So the
 * shadow is widened by 1 µm all round, lest a line shows through a seam, and drawn in by 1 µm from the front, so that what
 * lies on a face is seen.
 */
import type { Piece, PieceFace, Plane, Vec, Vertex } from "../types.ts";
import { dot, norm } from "../vec.ts";
import { position } from "../vertex.ts";
import { perView } from "./per-view.ts";
import { nearness, picturePoint, type View } from "./view.ts";

/** 1 µm. */
const MARGIN = 16;

/** normal·p < d, unit normal. */
export interface HalfSpace {
  readonly normal: Vec;
  readonly d: number;
}

export interface Shadow {
  readonly halves: readonly HalfSpace[];
  /** Bounds in the picture, and of nearness to the eye. */
  readonly low: readonly [number, number];
  readonly high: readonly [number, number];
  readonly nearest: number;
}

/** The shadow of a piece that is moved by `shift` (units of 1/16 µm). */
export function shadow(piece: Piece, view: View, shift: Vec): Shadow {
  const inPlace = shadowInPlace(piece, view);
  return shift.some((x) => x !== 0) ? moved(inPlace, view, shift) : inPlace;
}

function moved({ halves, low, high, nearest }: Shadow, view: View, shift: Vec): Shadow {
  const [u, v] = picturePoint(view, shift);
  return {
    halves: halves.map(({ normal, d }) => ({ normal, d: d + dot(normal, shift) })),
    low: [low[0] + u, low[1] + v],
    high: [high[0] + u, high[1] + v],
    nearest: nearest + nearness(view, shift),
  };
}

const shadowInPlace = perView((piece: Piece, view): Shadow => {
  const towards = view.towards.map((x) => BigInt(x)) as [bigint, bigint, bigint];
  const facing = new Map(piece.faces.map((face) => [face, facingOf(face.plane, towards)]));
  const halves: HalfSpace[] = [];
  const keep = (A: bigint, B: bigint, C: bigint, D: bigint, margin: number): void => {
    const [a, b, c] = [Number(A), Number(B), Number(C)];
    const size = norm([a, b, c]);
    const normal: Vec = [a / size, b / size, c / size];
    halves.push({ normal, d: Number(D) / size + margin });
  };
  for (const [{ plane }, toEye] of facing)
    if (toEye >= 0n) keep(plane.A, plane.B, plane.C, plane.D, toEye === 0n ? MARGIN : -MARGIN);
  for (const [front, back] of outline(facing)) {
    const [f, b] = [facing.get(front) ?? 0n, -(facing.get(back) ?? 0n)];
    const [p, q] = [front.plane, back.plane];
    keep(b * p.A + f * q.A, b * p.B + f * q.B, b * p.C + f * q.C, b * p.D + f * q.D, MARGIN);
  }
  return { halves, ...bounds(piece, view) };
});

const facingOf = (p: Plane, v: readonly [bigint, bigint, bigint]): bigint => p.A * v[0] + p.B * v[1] + p.C * v[2];

/** The pairs of faces, one towards the eye and one away from it, that share an edge. */
function* outline(facing: ReadonlyMap<PieceFace, bigint>): Generator<[PieceFace, PieceFace]> {
  const back = new Map<Vertex, Map<Vertex, PieceFace>>();
  for (const [face, toEye] of facing)
    if (toEye < 0n)
      for (const [u, w] of sides(face)) {
        const ends = back.get(u);
        if (ends) ends.set(w, face);
        else back.set(u, new Map([[w, face]]));
      }
  for (const [face, toEye] of facing)
    if (toEye > 0n)
      for (const [u, w] of sides(face)) {
        const other = back.get(w)?.get(u);
        if (other) yield [face, other];
      }
}

const sides = ({ vertices }: PieceFace): [Vertex, Vertex][] =>
  vertices.map((u, i) => [u, vertices[(i + 1) % vertices.length] ?? u]);

function bounds(piece: Piece, view: View): Pick<Shadow, "low" | "high" | "nearest"> {
  const points = piece.vertices.map(position);
  const flat = points.map((p) => picturePoint(view, p));
  const [us, vs] = [flat.map((p) => p[0]), flat.map((p) => p[1])];
  return {
    low: [Math.min(...us) - MARGIN, Math.min(...vs) - MARGIN],
    high: [Math.max(...us) + MARGIN, Math.max(...vs) + MARGIN],
    nearest: Math.max(...points.map((p) => nearness(view, p))),
  };
}
