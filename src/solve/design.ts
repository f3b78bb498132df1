/**
 * The piece as solids in space: choices made, sizes evaluated, parts placed and shaped, joints understood. Types only.
 * x runs across (left to right), y deep (front to back), z up. All lengths are exact, in units of 1/16 µm.
 */
import type { Span } from "../findings/span.ts";
import type { Contact, Placement, Solid } from "../geometry/index.ts";
import type { Axis, Face, LoadDraft, Method, Units } from "../parse/draft.ts";
import type { Length } from "../units/length.ts";

export type { Axis, Face, Units };

export interface Design {
  readonly title: string;
  readonly subtitle: string;
  readonly by: string;
  readonly summary: string;
  readonly edition: string;
  readonly units: Units;
  readonly precision: Length;
  /** The step to which what fits between two things is marked: the precision, or finer. */
  readonly fits: Length;
  readonly kerf: Length;
  /** Evaluated `sizes` and `outside`, by name. */
  readonly sizes: ReadonlyMap<string, Length>;
  readonly stock: readonly Stock[];
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  /** Paths of the groups of the piece, outermost first: parts of a group are built as a unit where that is possible. */
  readonly groups: readonly string[];
  /** Where it will stand; absent: a heated house. */
  readonly site?: Site;
  /** What each part that lies flat carries, unless it says so itself. */
  readonly carries?: Load;
  readonly seats?: Seats;
  /** Sizes of the bits that there are; absent: whatever is sold. */
  readonly tools?: { readonly mortiseBits?: readonly Length[]; readonly routerBits?: readonly Length[] };
  readonly accepted?: readonly Accepted[];
  /** What solid wood is left over its size when it is sawn; null where the plan says nothing of it. */
  readonly rough?: Rough | null;
}

/** A place, by the moisture that wood comes to in it, in % of its dry weight. */
export interface Site {
  /** In a sentence: "a heated house". */
  readonly name: string;
  readonly driest: number;
  readonly dampest: number;
  readonly basis: string;
}

/** What a part carries: things by their name, or kg. */
export type Load = LoadDraft;

/** Who sits on it. */
export interface Seats {
  readonly at: Span;
  readonly count: number;
  /** kg */
  readonly eachWeighs: number;
  /** Ids of the parts that they sit on; null: whatever lies flat and highest. */
  readonly on: readonly string[] | null;
}

/** A finding that the maker accepts. */
export interface Accepted {
  readonly at: Span;
  readonly rule: string;
  /** Ids of parts and names of stock that it is about; null: all. */
  readonly of: readonly string[] | null;
  readonly because: string;
}

/** Change of size of solid wood for 1 % of moisture, between 6 and 14 %. */
export interface Movement {
  readonly tangential: number;
  readonly radial: number;
  /** Tangential, from green to oven-dry, %; null where no figure is at hand. */
  readonly shrinkage: number | null;
  readonly basis: string;
}

/** Modulus of elasticity along the grain (of the faces) and across it, GPa. */
export interface Stiffness {
  readonly along: number;
  readonly across: number;
  readonly basis: string;
}

/** How thick a stock is bought. */
export interface Bought {
  readonly at: Span;
  /** In the words of the shop. */
  readonly words: string;
  readonly thickness: Length;
  readonly rough: boolean;
  /** Whether the plan has it planed. */
  readonly planed: boolean;
  /** A panel of which the maker says what it measures: by what measure it is called, and what such panels usually measure. */
  readonly named: { readonly name: Length; readonly usual: Length } | null;
}

/** Left over the finished size, in all. */
export interface More {
  readonly longer: Length;
  readonly wider: Length;
  readonly thicker: Length;
}
export interface Rough {
  readonly parts: More;
  /** Parts as thick as they are wide. */
  readonly legs: More;
  /** Parts glued up: until they are flat. */
  readonly slabs: More & { readonly eachBoardWider: Length };
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
  /** How many faces are fit to be seen, if the plan says so. */
  readonly goodFaces?: number;
  readonly price: number | null;
  /** When bought, % of its dry weight; absent: not said. */
  readonly moisture?: number;
  /** Solid wood only. */
  readonly movement?: Movement;
  readonly stiffness?: Stiffness;
  /** Absent where no shop's words were understood. */
  readonly bought?: Bought;
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
  /** What rounding to the next mark took off the body in each direction; below zero where it was added. */
  readonly leftOver: readonly [Length, Length, Length];
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
  readonly carries?: Load;
  /** Absent: one piece of wood, cut from the list. */
  readonly making?: Making;
  /** Of a part that is not square to the room only. Its body, blank and axes are those before it was turned. */
  readonly turned?: Turned;
}

/** How a turned part lies in the room, and its solid and features as they were made, in the coordinates of its body. */
export interface Turned {
  readonly placement: Placement;
  readonly solid: Solid;
  readonly features: readonly Feature[];
}

/** What a part is made from and how it comes to its size. */
export interface Making {
  /** Boards glued edge to edge, layers glued face to face: 1 where it is one. */
  readonly boards: number;
  readonly layers: number;
  readonly banding: readonly Band[];
  readonly cut: "list" | "opening" | "piece" | "over";
  /** What it is cut over its size, in all, until it is fitted or trimmed flush; zero where it is cut from the list. */
  readonly over: Length;
  /** The strip that it is cut from, and the parts from the same sheet: a name that they share. */
  readonly strip: string | null;
  readonly alike: string | null;
}

export interface Band {
  readonly edge: Face;
  /** As bought: "maple edging, 0.02 in thick". */
  readonly item: string;
  readonly thickness: Length;
  /** The solid includes the band, and the part is cut smaller by it. */
  readonly deducted: boolean;
}

export type Point = readonly [Length, Length, Length];
/** A unit vector, one of ±x, ±y, ±z but in parts that are turned. */
export type Direction = readonly [number, number, number];

/**
 * Cheeks are taken off beside the tongue of a bridle, whose slot is called bridle here; sockets are what is cut out between fingers
 * and tails, as the box around them; slots receive splines, keys and biscuits. Tenons, tongues and haunches stand out and cut nothing.
 */
export type BoxKind =
  | "dado"
  | "groove"
  | "rabbet"
  | "notch"
  | "mortise"
  | "half lap"
  | "cheek"
  | "bridle"
  | "socket"
  | "slot"
  | "tenon"
  | "tongue"
  | "haunch";
export type PlaneKind = "taper" | "chamfer" | "bevel" | "mitre" | "angled end";

/** A cut (or a tenon, which cuts nothing), in the coordinates of the finished piece. */
export type Feature =
  | {
      readonly kind: BoxKind;
      /** Joint that needs it, or null for a shape of the part. */
      readonly for: string | null;
      /** A corner on the face that is cut into. */
      readonly origin: Point;
      readonly along: Direction;
      readonly across: Direction;
      /** [along, across, depth into the wood]. The depth runs along `into`. */
      readonly size: readonly [Length, Length, Length];
      readonly into: Direction;
      /** Cut when the joint is together: the slot of a key. Absent: at the bench. */
      readonly inPlace?: true;
      /** Socket of a dovetail: so much narrower on each side at its other end than the size says. */
      readonly lean?: Length;
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
      readonly kind: PlaneKind;
      readonly for: string | null;
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
  /** Floating: without glue in a groove. Sliding: held face to face, free to swell and shrink. Resting: lies on pins, its ends open. */
  readonly kind: "fixed" | "floating" | "sliding" | "resting";
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
    | "knob"
    | "cable";
  readonly at: Point;
  readonly direction: Direction;
  /** Widest first, each from the same mouth. */
  readonly stages: readonly { readonly diameter: Length; readonly depth: Length }[];
  readonly through: boolean;
  /** Of a slot: the hole is drawn out along a direction, its last stage to this length from end to end; `at` is its middle. */
  readonly slot?: { readonly along: Direction; readonly length: Length };
  /** Fastener id, or null for a hole that the maker drew. */
  readonly for: string | null;
  readonly keep: { readonly edge: Length; readonly end: Length; readonly under: Length };
  /** Bored at the bench before assembly; false: drilled in place through its mate. */
  readonly atBench: boolean;
}
