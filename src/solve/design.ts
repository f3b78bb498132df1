/**
 * The piece as solids in space: choices made, sizes evaluated, parts placed and shaped, joints understood. Types only.
 * x runs across (left to right), y deep (front to back), z up. All lengths are exact, in units of 1/16 µm.
 */
import type { Span } from "../findings/span.ts";
import type { Contact, Placement, Solid } from "../geometry/index.ts";
import type { Axis, Method, Units } from "../parse/draft.ts";
import type { Length } from "../units/length.ts";

export type { Axis, Units };

export interface Design {
  readonly title: string;
  readonly subtitle: string;
  readonly by: string;
  readonly summary: string;
  readonly edition: string;
  readonly units: Units;
  readonly precision: Length;
  readonly kerf: Length;
  /** Evaluated `sizes` and `outside`, by name. */
  readonly sizes: ReadonlyMap<string, Length>;
  readonly stock: readonly Stock[];
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  /** Paths of the groups of the piece, outermost first: parts of a group are built as a unit where that is possible. */
  readonly groups: readonly string[];
}

/** A material as this plan uses it. */
export interface Stock {
  readonly name: string;
  readonly at: Span;
  readonly form: "sheet" | "board";
  /** Printed: "3/4 birch plywood", "2×4 pine", "white oak, 4/4 planed to 3/4". */
  readonly label: string;
  readonly species: string | null;
  readonly softwood: boolean;
  /** True for panels without grain: their parts may be turned on the sheet. */
  readonly grainless?: true;
  readonly thickness: Length;
  /** Fixed width (2×4, square posts planed to size); null where parts are ripped to any width. */
  readonly width: Length | null;
  /** Widest board that is sold, or the sheet's width. */
  readonly soldWidth: Length;
  /** Lengths that are sold, shortest first; for a sheet its one length. */
  readonly soldLengths: readonly Length[];
  /** True where widths and lengths are not known from a catalogue but assumed. */
  readonly assumed: boolean;
  /** kg/m³ at the moisture of use. */
  readonly density: number;
  /** Thickness by which hardwood is sold, for board feet; null otherwise. */
  readonly roughThickness: Length | null;
  readonly price: number | null;
}

export interface Box {
  readonly low: readonly [Length, Length, Length];
  readonly high: readonly [Length, Length, Length];
}

export interface Part {
  /** Path: "left-end.top-rail", "slat.2". */
  readonly id: string;
  readonly at: Span;
  /** Printed name given by `called`, if any. */
  readonly called: string | null;
  readonly stock: string;
  /** Between shoulders, untapered. */
  readonly body: Box;
  /** Body, tongues and tenons: what the saw must yield. */
  readonly blank: Box;
  readonly axes: { readonly thickness: Axis; readonly width: Axis; readonly length: Axis };
  /** Extents of `blank` along the three board directions. */
  readonly thickness: Length;
  readonly width: Length;
  readonly length: Length;
  /** Where it stands in the finished piece, as are its features and holes. */
  readonly solid: Solid;
  readonly features: readonly Feature[];
  /** Holes that the maker drew as shapes. */
  readonly holes: readonly Hole[];
  readonly goodFace: string | null;
  /** Of a part that is not square to the room only. Its body, blank and axes are those before it was turned. */
  readonly turned?: Turned;
}

/** How a turned part lies in the room, and its solid and features as they were made, in the coordinates of its body. */
export interface Turned {
  readonly placement: Placement;
  readonly solid: Solid;
  readonly features: readonly Feature[];
}

export type Point = readonly [Length, Length, Length];
/** A unit vector, one of ±x, ±y, ±z but in parts that are turned. */
export type Direction = readonly [number, number, number];

/** A cut (or a tenon, which cuts nothing), in the coordinates of the finished piece. */
export type Feature =
  | {
      readonly kind: "dado" | "groove" | "rabbet" | "notch" | "mortise" | "half lap" | "tenon";
      /** Joint that needs it, or null for a shape of the part. */
      readonly for: string | null;
      /** A corner on the face that is cut into. */
      readonly origin: Point;
      readonly along: Direction;
      readonly across: Direction;
      /** [along, across, depth into the wood]. The depth runs along `into`. */
      readonly size: readonly [Length, Length, Length];
      readonly into: Direction;
    }
  | {
      /** As above, with a curve in that box: an arch's size is [width, thickness, rise]; a slot has half circles at its ends. */
      readonly kind: CurvedKind;
      readonly for: null;
      readonly origin: Point;
      readonly along: Direction;
      readonly across: Direction;
      readonly size: readonly [Length, Length, Length];
      readonly into: Direction;
      /** Of the true curve; the solid has flats within 0.05 mm of it, and never less wood. Zero: square corners. */
      readonly radius: Length;
    }
  | {
      readonly kind: "taper" | "chamfer" | "bevel" | "angled end";
      readonly for: null;
      /** A point of the cutting plane and its outward normal, in lowest whole numbers. */
      readonly origin: Point;
      readonly normal: Direction;
    };

export type CurvedKind = "arch" | "round-over" | "rounded corner" | "cut-out" | "slot";

export interface Joint {
  readonly id: string;
  readonly at: Span;
  /** [joined part, other part]. */
  readonly parts: readonly [string, string];
  readonly kind: "fixed" | "floating";
  readonly method: Method;
  readonly glue: boolean;
  /** What rounding leaves open, at most one step of precision. */
  readonly gap: Length;
  /** Measured from the finished solids. */
  readonly contact: readonly Contact[];
  /** Direction in which the joined part goes home (into the other), where the joint dictates one; else null. */
  readonly insertion: Direction | null;
  /** Complete sets of fasteners for this joint, best first; empty where it needs none. The order of work takes the first that can be driven. */
  readonly arrangements: readonly Arrangement[];
}

export interface Arrangement {
  readonly fasteners: readonly Fastener[];
  readonly holes: readonly Hole[];
}

export type FastenerKind = "pocket screw" | "wood screw" | "dowel" | "nail" | "brad";

export interface Fastener {
  readonly id: string;
  readonly joint: string;
  readonly kind: FastenerKind;
  /** Printed: "#8 × 2 1/2 in countersunk wood screw". */
  readonly item: string;
  readonly length: Length;
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
  /** Dowels travel in the joined part; null for what is driven in place. */
  readonly travelsWith: string | null;
}

export interface Hole {
  readonly part: string;
  readonly kind: "pocket" | "pilot" | "clearance" | "oversized" | "dowel" | "bolt" | "knob" | "cable";
  readonly at: Point;
  readonly direction: Direction;
  /** Widest first, each from the same mouth. */
  readonly stages: readonly { readonly diameter: Length; readonly depth: Length }[];
  readonly through: boolean;
  /** Fastener id, or null for a hole that the maker drew. */
  readonly for: string | null;
  readonly keep: { readonly edge: Length; readonly end: Length; readonly under: Length };
  /** Bored at the bench before assembly; false: drilled in place through its mate. */
  readonly atBench: boolean;
}
