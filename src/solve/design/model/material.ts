/** Stock, and how its wood behaves. Types only. */
import type { Span } from "../../../findings/span.ts";
import type { Length } from "../../../units/length.ts";

/** Change of size of solid wood for 1 % of moisture, between 6 and 14 %. */
export interface Movement {
  /** In the width of a board: tangential where it is flat-sawn, radial where it is quarter-sawn. */
  readonly wide: number;
  /** In its thickness, the other of the two. */
  readonly thick: number;
  /** In its width, from green to oven-dry, %; null where no figure is at hand. */
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

export interface SoldSize {
  readonly width: Length;
  readonly length: Length;
  readonly price: number | null;
}

/** Sheets, boards or offcuts of one size; the grain runs along the length. */
export interface PieceOnHand {
  /** In the workshop's file. */
  readonly at: Span;
  readonly width: Length;
  readonly length: Length;
  readonly count: number;
}

/** A material as this plan uses it. */
export interface Stock {
  readonly name: string;
  readonly at: Span;
  /** Panes are bought cut to size: nothing is sawn from them, worked or finished. */
  readonly form: "sheet" | "board" | "pane";
  /** Printed: "3/4 birch plywood", "2×4 pine", "white oak, 4/4 planed to 3/4". */
  readonly label: string;
  readonly species: string | null;
  readonly softwood: boolean;
  /** True for panels without grain: their parts may be turned on the sheet. */
  readonly grainless?: true;
  readonly thickness: Length;
  /** The thicknesses that the plan has to survive; absent where it promises one only, or the reader measured it. */
  readonly between?: { readonly low: Length; readonly high: Length };
  /** The reader measured it. */
  readonly measured?: true;
  /** Fixed width (2×4, square posts planed to size); null where parts are ripped to any width. */
  readonly width: Length | null;
  /** Widest board that is sold, or the sheet's width. */
  readonly soldWidth: Length;
  /** Lengths that are sold, shortest first; for a sheet its one length. */
  readonly soldLengths: readonly Length[];
  /** The sizes that are sold, with the price of one, where the maker wrote them so; else `soldWidth`, `soldLengths` and `price` say all. */
  readonly sold?: readonly SoldSize[];
  /** What lies in the workshop, which is used first. */
  readonly onHand?: readonly PieceOnHand[];
  /** Bought over what the parts have, as a share of it; absent: the usual. */
  readonly waste?: number;
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
