import type { Finding } from "../../../findings/finding.ts";
import type { Face, Formula } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { add, equal, subtract } from "../../../units/rational.ts";
import type { Box, Feature, Hole } from "../../design.ts";
import type { Frame } from "../placing/attitude.ts";
import {
  type AxisIndex,
  extent,
  faceAxis,
  faceOf,
  facePosition,
  INDICES,
  isHigh,
  opposite,
  otherAxes,
  setFace,
  triple,
} from "../space.ts";
import { boxFeature, type Cut } from "./workpiece.ts";

/** What a shape does to a part. */
export interface Shaped {
  readonly cuts: readonly Cut[];
  readonly tongues: readonly Box[];
  readonly features: readonly Feature[];
  readonly holes: readonly Hole[];
}

/** Evaluates the formulas of a shape; null when one failed and has been reported. */
export type Measure = (formula: Formula) => Length | null;

/** What shaping a part may ask of the rest of the piece. */
export interface Shaping {
  readonly part: string;
  /** The body lengthened by what is let in over its whole section: the ends and edges that there are on the bench. */
  readonly whole: Box;
  readonly measure: Measure;
  readonly report: (finding: Finding) => void;
  readonly print: (length: Length) => string;
}

export const NOTHING: Shaped = { cuts: [], tongues: [], features: [], holes: [] };

/** Several shapes as one; null when one of them failed. */
export function together(shapes: readonly (Shaped | null)[]): Shaped | null {
  const done = shapes.filter((shape) => shape !== null);
  if (done.length < shapes.length) return null;
  return {
    cuts: done.flatMap((shape) => shape.cuts),
    tongues: done.flatMap((shape) => shape.tongues),
    features: done.flatMap((shape) => shape.features),
    holes: done.flatMap((shape) => shape.holes),
  };
}

/** The way from a face into the wood. */
export const inward = (face: Face): { axis: AxisIndex; sign: 1 | -1 } => ({
  axis: faceAxis(face),
  sign: isHigh(face) ? -1 : 1,
});

export const boxCut = (
  kind: "notch" | "rabbet" | "groove" | "dado" | "mortise",
  box: Box,
  face: Face,
  along: AxisIndex,
): Shaped => ({
  ...NOTHING,
  cuts: [{ kind: "box", box }],
  features: [boxFeature(kind, null, box, inward(face), along)],
});

/** A cut that is open to a face of the body, open to where the wood ends there; in all directions, or those that are named. */
export const opened = (cut: Box, body: Box, whole: Box, axes: readonly AxisIndex[] = INDICES): Box => ({
  low: triple((i) => (axes.includes(i) && equal(cut.low[i], body.low[i]) ? whole.low[i] : cut.low[i])),
  high: triple((i) => (axes.includes(i) && equal(cut.high[i], body.high[i]) ? whole.high[i] : cut.high[i])),
});

/** The slab of a box that lies within `depth` of a face. */
export const slab = (box: Box, face: Face, depth: Length): Box =>
  setFace(
    box,
    opposite(face),
    isHigh(face) ? subtract(facePosition(box, face), depth) : add(facePosition(box, face), depth),
  );

export const cornerBox = (body: Box, first: Face, inFirst: Length, second: Face, inSecond: Length): Box =>
  slab(slab(body, first, inFirst), second, inSecond);

/**
 * The edges that a hand or an eye meets first, each with the broad face first: the long ones of a square part, else all four of the
 * broad face that looks up, to the front or to the right.
 */
export function shownEdges(body: Box, frame: Frame): readonly (readonly [Face, Face])[] {
  const edges = (a: Face, axis: AxisIndex): readonly (readonly [Face, Face])[] => [
    [a, faceOf(axis, false)],
    [a, faceOf(axis, true)],
  ];
  const { thickness: thin, width: broad } = frame;
  if (equal(extent(body, thin), extent(body, broad)))
    return [...edges(faceOf(thin, false), broad), ...edges(faceOf(thin, true), broad)];
  const face = faceOf(thin, thin !== 1);
  return otherAxes(thin).flatMap((axis) => edges(face, axis));
}
