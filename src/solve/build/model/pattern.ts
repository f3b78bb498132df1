/** What is easier traced or pricked through than measured: curves, tapers, and the holes of hardware. Types only. */
import type { Length } from "../../../units/length.ts";
import type { Uses } from "./jig.ts";

/** From the lower left corner of the pattern: to the right, and up. */
export type Spot = readonly [Length, Length];

interface Any {
  /** Printed, with a capital where it begins a sentence: "pattern 1". */
  readonly id: string;
  /** "the arch of the long aprons (C)", "butt hinge, long 2 in". */
  readonly what: string;
  /** Of the parts that it is laid on, each once. */
  readonly marks: readonly string[];
  readonly width: Length;
  readonly height: Length;
  /** It is drawn in its true size: a curve that goes on at most four sheets of either paper, holes that go on one beside others. */
  readonly full: boolean;
  readonly uses: Uses;
}

export interface CurvePattern extends Any {
  readonly of: "curve";
  /** What is sawn to. Arcs turn to the left or right about their centre, by less than half a circle. */
  readonly outline: readonly Stroke[];
  /** Edges of the part, and lines that are laid on its middle: each with what it is. Where an edge is `gone` its wood is sawn away; `first`: what else is told where it begins. */
  readonly edges: readonly {
    readonly from: Spot;
    readonly to: Spot;
    readonly is: string;
    readonly first?: string;
    readonly gone?: true;
  }[];
  /** It is one half: turned over on its right edge for the other. */
  readonly half: boolean;
  /** Points of the curve from the lower left corner of the pattern, to the step in which the plan is marked out. Absent: it is full size. */
  readonly offsets?: readonly Spot[];
}

export type Stroke =
  | { readonly is: "line"; readonly from: Spot; readonly to: Spot }
  | { readonly is: "arc"; readonly from: Spot; readonly to: Spot; readonly centre: Spot };

export interface HolePattern extends Any {
  readonly of: "hardware";
  /** "butt hinge". */
  readonly kind: string;
  /** How many sets of such holes there are. */
  readonly count: number;
  /** From the sides that it is measured from: along x and y. */
  readonly x: Side;
  readonly y: Side;
  readonly holes: readonly {
    readonly x: Length;
    readonly y: Length;
    readonly diameter: Length;
    /** Into the wood; null: right through. */
    readonly depth: Length | null;
    /** Length of a slot from end to end along x or y. */
    readonly slot?: readonly ["x" | "y", Length];
  }[];
  /** "face", "edge", "face or edge": what is bored into. */
  readonly into: string;
  /** Looked at as the first of its parts is bored, with x to the right, y runs down. */
  readonly down: boolean;
  /** On other parts it lies the other way round: the sheet is turned over. */
  readonly over: boolean;
}

/** `edge`: distances are from this side of each part. Else they are from the first hole, which is so far from the side that is told, on each part. */
export type Side =
  | { readonly edge: readonly { readonly side: string; readonly marks: readonly string[] }[] }
  | {
      readonly edge: null;
      readonly first: readonly { readonly mark: string; readonly at: Length; readonly from: string }[];
    };

export type Pattern = CurvePattern | HolePattern;
