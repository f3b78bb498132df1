/** Joints, what fastens them, and the holes for that. Types only. */
import type { Span } from "../../../findings/span.ts";
import type { Contact, Solid } from "../../../geometry/index.ts";
import type { Axis, Face, Method } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import type { Button } from "./button.ts";
import type { Hardware, Motion } from "./hardware.ts";
import type { Direction, Point } from "./points.ts";

export interface Joint {
  readonly id: string;
  readonly at: Span;
  /** [joined part, other part]. */
  readonly parts: readonly [string, string];
  /** Floating: without glue in a groove. Sliding: held face to face, free to swell and shrink. Resting: lies on pins, its ends open. Hinged and running: it moves for use. */
  readonly kind: "fixed" | "floating" | "sliding" | "resting" | "hinged" | "running";
  readonly method: Method;
  readonly glue: boolean;
  /** Play, or what rounding leaves open, at most one step of precision; more where the parts stand apart on purpose. */
  readonly gap: Length;
  /** The gap comes from rounding. */
  readonly roundedGap?: true;
  /** Of a sliding joint: the line across the grain of the wood that moves at which it does not. */
  readonly still?: Still;
  /** Measured from the finished solids. */
  readonly contact: readonly Contact[];
  /** Direction in which the joined part goes home (into the other), where the joint dictates one; else null. */
  readonly insertion: Direction | null;
  /** Wedges are driven into the end of its tenon. */
  readonly wedged?: true;
  /** The second part is screwed on in its place, which this finds: the front of a drawer. */
  readonly setWith?: "shims" | "tape";
  /** Complete sets of fasteners for this joint, best first; empty where it needs none. The order of work takes the first that can be driven. */
  readonly arrangements: readonly Arrangement[];
}

export interface Still {
  /** The part that moves, and the direction across its grain. */
  readonly part: string;
  readonly across: Axis;
  readonly at: Length;
  /** As the maker said it. */
  readonly side: Face | "middle";
}

export interface Arrangement {
  readonly fasteners: readonly Fastener[];
  readonly holes: readonly Hole[];
  readonly hardware?: readonly Hardware[];
  /** Of a hinged or running joint: how the joined part moves. */
  readonly motion?: Motion;
}

export type FastenerKind =
  | "pocket screw"
  | "wood screw"
  | "lag screw"
  | "bolt"
  | "dowel"
  | "shelf pin"
  | "nail"
  | "brad"
  | "staple"
  | "peg"
  | "spline"
  | "key"
  | "loose tenon"
  | "biscuit";

export interface Fastener {
  readonly id: string;
  readonly joint: string;
  readonly kind: FastenerKind;
  /** Printed: "#8 × 2 1/2 in countersunk wood screw". */
  readonly item: string;
  readonly length: Length;
  /** Of one, where the plan says it. */
  readonly price?: number;
  /** Diameter of the shank. */
  readonly rod: Length;
  readonly head: {
    readonly at: Point;
    readonly diameter: Length;
    readonly height: Length;
    readonly seat: "proud" | "flush" | "sunk" | "pocket" | "plugged";
  };
  /** Unit vector, head to point. Pocket screws are inclined, so these are doubles. */
  readonly direction: Direction;
  /** Parts passed, in order, then the part that holds the point. */
  readonly through: readonly string[];
  readonly into: string;
  /** Dowels travel in the joined part, pins in the side; null for what is driven in place. */
  readonly travelsWith: string | null;
  /** Bought or made with each one, as printed: its washer, nut, plug, button. */
  readonly with?: readonly string[];
  /** Where a bolt's nut is put on or in: where it comes to lie against, or the mouth of its bore, and the way that it goes there. */
  readonly nut?: {
    readonly at: Point;
    readonly direction: Direction;
    readonly diameter: Length;
    readonly height: Length;
  };
  /** How far either way the wood that it holds can move here, along x, y and z; absent: held fast. */
  readonly slack?: readonly [Length, Length, Length];
  /** What it is driven through, where that is a wooden button. */
  readonly button?: Button;
  /** Its wood, where it is not round: splines, keys, loose tenons and biscuits fill a slot. */
  readonly body?: Solid;
}

export interface Hole {
  readonly part: string;
  readonly kind:
    | "pocket"
    | "pilot"
    | "clearance"
    | "oversized"
    | "slot"
    | "dowel"
    | "pin"
    | "bolt"
    | "nut"
    /** May break out of the side of its part. */
    | "recess"
    | "cup"
    | "knob"
    | "cable";
  readonly at: Point;
  readonly direction: Direction;
  /** Widest first, each from the same mouth. A cone is as wide as the head of its screw, and cut until that lies flush. */
  readonly stages: readonly { readonly diameter: Length; readonly depth: Length; readonly cone?: true }[];
  readonly through: boolean;
  /** Of a slot: the hole is drawn out along a direction, its last stage to this length from end to end; `at` is its middle. */
  readonly slot?: { readonly along: Direction; readonly length: Length };
  /** Id of a fastener or of hardware, or null for a hole that the maker drew. */
  readonly for: string | null;
  readonly keep: { readonly edge: Length; readonly end: Length; readonly under: Length };
  /** Bored at the bench before assembly; false: drilled in place through its mate. */
  readonly atBench: boolean;
  /** One more place for a pin: it is left out where it comes near another hole. */
  readonly spare?: true;
}
