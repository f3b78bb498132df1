/**
 * Solids as convex pieces, made the way wood is made: start from the blank, cut with planes. Types only.
 * All coordinates are in units of 1/16 µm; `Vec` holds doubles, `Point` exact values.
 */
import type { Rational } from "../units/rational.ts";

export type Vec = readonly [number, number, number];
export type Point = readonly [Rational, Rational, Rational];

/**
 * The half-space a·x + b·y + c·z ≤ d, whole-number coefficients in lowest terms.
 * Interned: equal planes are the same object, so coplanar faces are found by identity.
 */
export interface Plane {
  readonly A: bigint;
  readonly B: bigint;
  readonly C: bigint;
  readonly D: bigint;
  /** The same as doubles. */
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  /** Exact in doubles. */
  readonly safe: boolean;
  /** Length of the normal (a, b, c). */
  readonly norm: number;
}

/** The meeting of three given planes: homogeneous (X : Y : Z : W), W > 0, and doubles. Interned like planes. */
export interface Vertex {
  readonly X: bigint;
  readonly Y: bigint;
  readonly Z: bigint;
  readonly W: bigint;
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A face of a piece: its plane (outward) and its corners, counter-clockwise seen from outside. */
export interface PieceFace {
  readonly plane: Plane;
  readonly vertices: readonly Vertex[];
}

/** A convex, closed, non-empty body. */
export interface Piece {
  readonly faces: readonly PieceFace[];
  readonly vertices: readonly Vertex[];
  readonly low: Vec;
  readonly high: Vec;
}

/** A partition into convex pieces. The seams between them are neither edges nor faces of the solid. */
export interface Solid {
  readonly pieces: readonly Piece[];
  /** Planes of flats that stand for curves, both sides of each: an edge between two of them is seen only as an outline. */
  readonly smooth?: ReadonlySet<Plane>;
  readonly low: Vec;
  readonly high: Vec;
}

/** An edge of a solid as one would see it on the wood. */
export interface Edge {
  readonly from: Vec;
  readonly to: Vec;
  /** Between two flats of a curve: their outward normals. It is a line only where one of them is seen and the other is not. */
  readonly smooth?: readonly [Vec, Vec];
}

/** Where two solids touch face to face. */
export interface Contact {
  readonly centre: Vec;
  /** Unit vector, out of the first solid into the second. */
  readonly normal: Vec;
  /** In square units. */
  readonly area: number;
  /** The plane, out of the first solid. */
  readonly plane: Plane;
  /** The touching areas, convex polygons. */
  readonly polygons: readonly (readonly Vec[])[];
}

/** A convex body in doubles, for the envelopes of tools. Judged with the one tolerance. */
export interface Hull {
  /** Half-spaces with unit normals: n·p ≤ d. */
  readonly planes: readonly { readonly normal: Vec; readonly d: number }[];
  readonly vertices: readonly Vec[];
  /** Unit directions of the edges, one of each pair of opposite ones. */
  readonly edges: readonly Vec[];
}

/** One thing in a picture. */
export interface SceneItem {
  readonly id: string;
  readonly solid: Solid;
}

/** A point of a picture, in the plane of view: u to the right, v up. */
export type Point2 = readonly [number, number];

/** What a picture of one item consists of; segments in picture units (the length of a unit vector seen square on is 1). */
export interface PictureItem {
  readonly id: string;
  readonly visible: readonly (readonly [Point2, Point2])[];
  readonly hidden: readonly (readonly [Point2, Point2])[];
}

/** The parts of an item's faces that are seen, as convex polygons, with the face's outward unit normal. */
export interface VisibleFace {
  readonly id: string;
  readonly normal: Vec;
  readonly polygons: readonly (readonly Point2[])[];
}
