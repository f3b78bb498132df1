/**
 * The piece as solids in space: choices made, sizes evaluated, parts placed and shaped, joints understood. Types only.
 * x runs across (left to right), y deep (front to back), z up. All lengths are exact, in units of 1/16 µm.
 */
import type { Span } from "../findings/span.ts";
import type { Placement, Solid } from "../geometry/index.ts";
import type { Axis, Face, LoadDraft, Units } from "../parse/draft.ts";
import type { Length } from "../units/length.ts";
import type { Feature } from "./design/model/feature.ts";
import type { Fitting } from "./design/model/fitting.ts";
import type { Hole, Joint } from "./design/model/joint.ts";
import type { Stock } from "./design/model/material.ts";
import type { Box } from "./design/model/points.ts";
import type { Note, Wish } from "./design/model/wish.ts";

export type * from "./design/model/button.ts";
export type * from "./design/model/feature.ts";
export type * from "./design/model/fitting.ts";
export type * from "./design/model/hardware.ts";
export type * from "./design/model/joint.ts";
export type * from "./design/model/material.ts";
export type * from "./design/model/points.ts";
export type { Axis, Face, Units };

export interface Design {
  readonly title: string;
  readonly subtitle: string;
  readonly by: string;
  readonly summary: string;
  readonly edition: string;
  /** Words of the maker's for the page of rights; absent where there are none. */
  readonly credits?: readonly string[];
  readonly rights?: string;
  readonly support?: string;
  readonly units: Units;
  readonly precision: Length;
  /** The step to which what fits between two things is marked: the precision, or finer. */
  readonly fits: Length;
  readonly kerf: Length;
  /** What the reader may choose, and what is chosen in this design; absent: nothing. */
  readonly choices?: readonly Choice[];
  /** Evaluated `sizes` and `outside`, by name. */
  readonly sizes: ReadonlyMap<string, Length>;
  readonly stock: readonly Stock[];
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly fittings: readonly Fitting[];
  /** Paths of the groups of the piece, outermost first: parts of a group are built as a unit where that is possible. */
  readonly groups: readonly string[];
  /** Those of them that are no part of what they stand in: the drawers and doors of a case. */
  readonly apart?: readonly string[];
  /** Where it will stand; absent: a heated house. */
  readonly site?: Site;
  /** What it hangs on; absent: nothing is said of it. */
  readonly wall?: Wall;
  /** What each part that lies flat carries, unless it says so itself. */
  readonly carries?: Load;
  readonly seats?: Seats;
  /** Sizes of the bits that there are; absent: whatever is sold. */
  readonly tools?: { readonly mortiseBits?: readonly Length[]; readonly routerBits?: readonly Length[] };
  readonly accepted?: readonly Accepted[];
  /** What solid wood is left over its size when it is sawn; null where the plan says nothing of it. */
  readonly rough?: Rough | null;
  /** Absent: nothing is said of it. */
  readonly finishes?: readonly Finish[];
  /** Of the order of work; absent: none. */
  readonly wishes?: readonly Wish[];
  /** Words of the maker's; absent: none. */
  readonly notes?: readonly Note[];
  /** The workshop in which the plan is made; absent: nothing is known of it. What it has of each stock stands with the stock. */
  readonly workshop?: Workshop;
}

/** What some parts are finished with. */
export interface Finish {
  /** As the plan calls it: "top", "everything else". */
  readonly surface: string;
  readonly parts: readonly string[];
  readonly product: string;
  readonly coats: number;
  /** m² that a litre covers in one coat; absent: what such products usually do. */
  readonly covers?: number;
  /** Minutes between two coats; absent: what such products usually take. */
  readonly dries?: number;
  /** Coats inside; absent: as many as outside. */
  readonly inside?: number;
  /** Where none of it may go. */
  readonly keepOff?: string;
  /** Parts that are finished on both faces before they are put on. */
  readonly alike?: readonly string[];
}

/** What there is in a workshop and what things cost there. */
export interface Workshop {
  /** The name of its file. */
  readonly file: string;
  readonly squaring?: Length;
  /** The largest piece that can be brought home. */
  readonly carries?: { readonly width: Length; readonly length: Length };
  readonly longestClamp?: Length;
  readonly paper?: "letter" | "a4";
  /** By trade name: see `tradeName`. */
  readonly supplies: ReadonlyMap<string, number>;
  readonly prices: ReadonlyMap<string, number>;
}

export interface Choice {
  readonly name: string;
  /** The question that the reader answers; empty: none. */
  readonly ask: string;
  /** The option chosen. */
  readonly option: string;
  /** What may be chosen, with the words that the plan prints for it. */
  readonly options: readonly { readonly name: string; readonly words: string }[];
}

/** A place, by the moisture that wood comes to in it, in % of its dry weight. */
export interface Site {
  /** In a sentence: "a heated house". */
  readonly name: string;
  readonly driest: number;
  readonly dampest: number;
  readonly basis: string;
}

/** Studs, so far apart from middle to middle; null: solid, a screw holds anywhere. */
export interface Wall {
  readonly studs: Length | null;
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

export interface Part {
  /** Path: "left-end.top-rail", "slat.2". */
  readonly id: string;
  readonly at: Span;
  /** Printed name given by `called`, if any. */
  readonly called: string | null;
  readonly stock: string;
  /** Between shoulders, untapered. */
  readonly body: Box;
  /** The body lengthened by what is let in over its whole section, where a joint does. */
  readonly whole?: Box;
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
  /** The plan itself says how it is cut. */
  readonly said?: true;
  /** Of a part that is cut to the piece because it comes tight between faces that stand by then: in which of its sizes, and between which parts. */
  readonly between?: readonly Between[];
  /** Ids of what stands by then and goes through its notches: those are marked from it. Absent: none. */
  readonly notchedRound?: readonly string[];
  /** What it is cut over its size, in all, until it is fitted or trimmed flush; zero where it is cut from the list. */
  readonly over: Length;
  /** The strip that it is cut from, and the parts from the same sheet: a name that they share. */
  readonly strip: string | null;
  readonly alike: string | null;
}

export interface Between {
  readonly size: "length" | "width";
  /** Ids of the parts at its low and its high end. */
  readonly parts: Pair;
  /** The same where others meet it farther along, as the back legs do where its front is between the front ones. */
  readonly also?: readonly Pair[];
  /** It lies in both, as a back does in its rabbets. */
  readonly letIn?: true;
  /** It is mitred at both ends and reaches round these instead: the heels of its mitres come to their outer faces. */
  readonly round?: true;
  /** It lies on both of these, or the one that both are, when it is shut, mitred as they are, and ends flush with them. */
  readonly flush?: true;
}

export type Pair = readonly [low: string, high: string];

export interface Band {
  readonly edge: Face;
  /** As bought: "maple edging, 0.02 in thick". */
  readonly item: string;
  readonly thickness: Length;
  /** The solid includes the band, and the part is cut smaller by it. */
  readonly deducted: boolean;
}
