/**
 * The source as typed data. Every value knows where it was written. Types only: `src/parse` makes a Draft, `src/solve` reads it.
 * Names are normalised (lower case, blanks to hyphens); quantities are still formulas.
 */
import type { Located, Span } from "../findings/span.ts";
import type { Length } from "../units/length.ts";
import type { Rational } from "../units/rational.ts";

export type Axis = "across" | "deep" | "up";
export type Face = "left" | "right" | "front" | "back" | "bottom" | "top";
export type BoardSize = "thickness" | "width" | "length";
export type Units = "inch" | "mm";

/** A formula. A `number` takes its kind from its place: a length in the plan's units, or a plain number. */
export type Formula =
  | { readonly kind: "number"; readonly value: Rational; readonly at: Span }
  | { readonly kind: "measure"; readonly value: Length; readonly at: Span }
  | { readonly kind: "angle"; readonly degrees: Rational; readonly at: Span }
  | { readonly kind: "name"; readonly path: readonly string[]; readonly home?: readonly string[]; readonly at: Span }
  | { readonly kind: "negate"; readonly of: Formula; readonly at: Span }
  | {
      readonly kind: "operation";
      readonly operator: "+" | "-" | "*" | "/";
      readonly left: Formula;
      readonly right: Formula;
      readonly at: Span;
    }
  | { readonly kind: "call"; readonly name: FunctionName; readonly of: readonly Formula[]; readonly at: Span };

export type FunctionName = "min" | "max" | "round" | "round-down" | "round-up" | "longest" | "within";

/** The name of a part, group or `outside`, as a path: `back.top-rail` is ["back", "top-rail"]. */
export interface Reference {
  readonly path: readonly string[];
  /** The group in which it was written: what is named is looked for there first, then further out. Absent: outside every group. */
  readonly home?: readonly string[];
  readonly at: Span;
}
/** `post.left`: a face of something. */
export interface FaceReference extends Reference {
  readonly face: Face;
}

export interface Draft {
  readonly at: Span;
  readonly title: Located<string>;
  readonly subtitle?: Located<string>;
  readonly by?: Located<string>;
  readonly summary?: Located<string>;
  readonly edition?: Located<string>;
  readonly credits?: Located<readonly string[]>;
  readonly rights?: Located<string>;
  readonly support?: Located<string>;
  readonly units: Units;
  /** The smallest step the reader is asked to mark: 1/16 in or 1 mm when nothing is said. */
  readonly precision: Located<Length>;
  /** The finer step for fits, if the plan says one. */
  readonly fits?: Located<Length>;
  readonly outside: { readonly width?: SizeDraft; readonly depth?: SizeDraft; readonly height?: SizeDraft };
  readonly sizes: ReadonlyMap<string, SizeDraft>;
  /** What stays when a thickness changes: `outside` or a space; `inside` is that of the case that is not within another. Absent: the outside. */
  readonly hold?: Reference;
  readonly stock: ReadonlyMap<string, StockDraft>;
  readonly choices: readonly ChoiceDraft[];
  /** The option chosen in each choice, in the order of `choices`. */
  readonly chosen: ReadonlyMap<string, string>;
  readonly piece: readonly NodeDraft[];
  readonly joints: readonly JointDraft[];
  /** Hardware that is fixed to a part without joining it to another: knobs, feet, bumpers. */
  readonly fittings: readonly FittingDraft[];
  /** Hardware by the names that the plan gives it. */
  readonly hardware: ReadonlyMap<string, HardwareDraft>;
  /** Where it will stand. */
  readonly site?: SiteDraft;
  /** What it hangs on. */
  readonly wall?: WallDraft;
  /** What each part that lies flat carries, unless it says so itself. */
  readonly carries?: Located<LoadDraft>;
  readonly usedFor?: SeatsDraft;
  readonly finish?: readonly FinishDraft[];
  readonly order?: readonly WishDraft[];
  readonly notes?: readonly NoteDraft[];
  readonly tools?: ToolsDraft;
  readonly allow?: readonly AllowDraft[];
  /** Absent: nothing was said, and only what is glued up is left over its size. */
  readonly rough?: RoughDraft;
  /** Saw kerf, from the plan or the workshop, or the default 1/8 in (3.2 mm in a metric plan). */
  readonly kerf: Length;
  /** Absent: nothing is known of it. */
  readonly workshop?: WorkshopDraft;
}

/** What a reader may choose. */
export interface ChoiceDraft {
  readonly name: string;
  readonly at: Span;
  readonly ask?: Located<string>;
  readonly options: readonly OptionDraft[];
  /** Name of the option that is taken when nothing is said. */
  readonly default: string;
  /** Under this option the whole piece is mirrored from left to right. */
  readonly mirror?: string;
}
export interface OptionDraft {
  readonly name: string;
  /** As the plan prints it. */
  readonly words: string;
}

export type SiteName = "heated house" | "dry desert" | "damp coast" | "unheated porch";
/** A place by its name, or by its air: relative humidity in %, from the driest to the dampest season. */
export type SiteDraft = { readonly at: Span } & (
  | { readonly name: SiteName }
  | { readonly humidity: { readonly low: number; readonly high: number }; readonly celsius: number }
);

/** Studs, so far apart from middle to middle, as usual where it is not said; or solid: a screw holds anywhere. */
export type WallDraft =
  | { readonly at: Span; readonly of: "studs"; readonly apart?: Formula }
  | { readonly at: Span; readonly of: "solid" };

export type LoadName = "books" | "jars" | "shoes" | "clothes" | "nothing";
/** What one part carries. */
export type LoadDraft = { readonly name: LoadName } | { readonly kilograms: number };

export interface SeatsDraft {
  readonly at: Span;
  readonly seats: Located<number>;
  /** kg */
  readonly eachWeighs?: number;
  readonly on?: Reference;
}

/** Sizes of what the maker has; absent: whatever is sold. */
export interface ToolsDraft {
  readonly mortiseBits?: readonly Formula[];
  readonly routerBits?: readonly Formula[];
}

/** A finding that the maker accepts. */
export interface AllowDraft {
  /** The name of the finding in the source. */
  readonly at: Span;
  readonly finding: string;
  /** A part, group or stock. */
  readonly of?: Located<string>;
  readonly because: string;
}

export interface SizeDraft {
  readonly at: Span;
  readonly value: Formula;
  readonly from?: Formula;
  readonly to?: Formula;
  readonly ask?: Located<string>;
}

export interface StockDraft {
  readonly name: string;
  readonly at: Span;
  /** What is bought, in the words of the shop: "2x4", "4/4", "3/4 birch plywood". */
  readonly soldAs?: Located<string>;
  /** Species: "white oak". */
  readonly wood?: Located<string>;
  /** What is no wood: panes that are bought cut to size. */
  readonly material?: Located<"glass">;
  /** Thickness as measured, or thickness and width. */
  readonly measures?: { readonly at: Span; readonly thick: Formula; readonly wide?: Formula };
  /** The reader's own thickness, which counts before any other. Never in the source. */
  readonly measured?: Formula;
  readonly planedTo?: Formula;
  /** Square stock or a fixed width planed from thicker boards: `planed to: { thick, wide }`. */
  readonly planedWide?: Formula;
  readonly between?: { readonly low: Formula; readonly high: Formula; readonly at: Span };
  readonly widths?: { readonly low: Formula; readonly high: Formula; readonly at: Span };
  readonly soldIn?: readonly LengthSold[];
  readonly sheet?: SheetDraft;
  /** Several sizes, of which the cheapest are bought. */
  readonly sheets?: readonly SheetSold[];
  readonly goodFaces?: Located<number>;
  /** When bought, % of the dry wood's weight. */
  readonly moisture?: Located<number>;
  readonly price?: Located<number>;
  /** Bought over what the parts have, %. */
  readonly waste?: Located<number>;
  /** What lies in the workshop. Never in the plan. */
  readonly onHand?: readonly WoodOnHand[];
}

export interface SheetDraft {
  readonly wide: Formula;
  readonly long: Formula;
  readonly at: Span;
}
export interface SheetSold extends SheetDraft {
  readonly price?: number;
}
export interface LengthSold {
  readonly long: Formula;
  readonly price?: number;
}

export interface FinishDraft {
  readonly at: Span;
  /** A part or group; null: everything else. */
  readonly of: Reference | null;
  readonly with: string;
  readonly coats: number;
  /** m² that a litre covers in one coat. */
  readonly covers?: number;
  /** Minutes between two coats. */
  readonly dries?: number;
  /** Coats inside, where that is another number. */
  readonly inside?: number;
  readonly keepOff?: string;
  /** Finished on both faces before they are put on. */
  readonly alike?: readonly Reference[];
}

export type Verb = "glue" | "cut" | "plane" | "drill" | "join" | "fit" | "finish" | "shape" | "band";

/** What a wish or note is about: work of a kind, on a part or on any; or the step in which a part is joined. */
export interface SubjectDraft {
  readonly at: Span;
  readonly said: string;
  readonly verb?: Verb;
  /** Kinds of feature, or "hole". */
  readonly cuts?: readonly string[];
  /** Null: whatever there is of that work. */
  readonly of: Reference | null;
}

/** A wish about the order of work. */
export type WishDraft = { readonly at: Span } & (
  | { readonly kind: "before"; readonly first: readonly SubjectDraft[]; readonly next: readonly SubjectDraft[] }
  | { readonly kind: "first" | "last"; readonly what: readonly SubjectDraft[] }
  | { readonly kind: "dry fit"; readonly of: readonly Reference[]; readonly check?: string }
  | { readonly kind: "unit"; readonly of: readonly Reference[] }
  | { readonly kind: "one step"; readonly what: readonly SubjectDraft[]; readonly title?: string }
  | { readonly kind: "own step"; readonly what: SubjectDraft }
  | { readonly kind: "title"; readonly step: SubjectDraft; readonly title: string }
);

/** Words of the maker's for the reader. */
export interface NoteDraft {
  readonly about: SubjectDraft;
  readonly say?: string;
  readonly tip?: string;
  readonly caution?: string;
}

/** What there is in a workshop and what things cost there: `workshop.yaml`. */
export interface WorkshopDraft {
  /** The name of its file. */
  readonly file: string;
  readonly kerf?: Length;
  /** Taken off one long and one short edge of a sheet before anything else. */
  readonly squaring?: Length;
  /** The largest piece that can be brought home. */
  readonly carries?: { readonly width: Length; readonly length: Length };
  readonly paper?: "letter" | "a4";
  readonly wood: readonly WoodOnHand[];
  readonly supplies: readonly SupplyOnHand[];
  readonly prices: readonly PriceDraft[];
  readonly tools?: ToolsDraft;
  readonly longestClamp?: Length;
}

/** Sheets, boards and offcuts of one size. `of` is what they were sold as. */
export interface WoodOnHand {
  readonly at: Span;
  readonly of: string;
  /** Absent: as wide as the stock is sold. */
  readonly wide?: Length;
  readonly long: Length;
  readonly count: number;
}

export interface SupplyOnHand {
  readonly of: string;
  readonly count: number;
}

/** Of one sheet, board, board foot, box or piece; or by size. */
export interface PriceDraft {
  readonly of: string;
  readonly at: Span;
  readonly each?: Located<number>;
  readonly sheets?: readonly SheetSold[];
  readonly lengths?: readonly LengthSold[];
}

export type NodeDraft = GroupDraft | PartDraft;

export interface GroupDraft {
  readonly kind: "group";
  readonly path: readonly string[];
  readonly at: Span;
  readonly children: readonly NodeDraft[];
  /** Not meant by the names of groups around it: a door, a drawer of a case. */
  readonly apart?: true;
}

export interface PartDraft {
  /** Made by an assembly, which the maker named this. */
  readonly made?: readonly string[];
  /** By direction, what the maker may write where it is in the place of another part: "{by}" stands for how far. */
  readonly cures?: Readonly<Partial<Record<Axis, string>>>;
  readonly kind: "part";
  readonly path: readonly string[];
  /** The part's name in the source. */
  readonly at: Span;
  readonly madeOf?: Located<string>;
  readonly like?: Reference;
  readonly mirrorOf?: Reference;
  /** The direction that a mirror turns round: `about: across` swaps left and right. */
  readonly about?: Located<Axis>;
  readonly attitude?: Located<"lying flat" | "on edge" | "upright">;
  readonly facing?: Located<Face>;
  readonly grain?: Located<Axis>;
  /** Room without wood: a place that others can name. */
  readonly space?: true;
  /** Which way its size is rounded to what can be marked; absent: down, and to the nearest where it is said outright. */
  readonly rounded?: Located<"down" | "up" | "nearest">;
  readonly placing: readonly PlaceDraft[];
  readonly repeat?: RepeatDraft;
  readonly shapes: readonly ShapeDraft[];
  /** Turned after it has been placed square to the room, one turn after another. */
  readonly turn?: readonly TurnDraft[];
  /** Laid along the line between two points. */
  readonly line?: { readonly from: PointDraft; readonly to: PointDraft; readonly at: Span };
  /** Cut off, or made long enough to end, on the planes of these faces. */
  readonly endsOn?: readonly PlaneDraft[];
  /** The printed name. */
  readonly called?: Located<string>;
  readonly goodFace?: Located<string>;
  readonly carries?: Located<LoadDraft>;
  /** Boards glued edge to edge, and layers glued face to face; 2 or more. */
  readonly boards?: Located<number>;
  readonly layers?: Located<number>;
  readonly banding?: BandingDraft;
  /** A strip from which parts are cut in one row, by its name. */
  readonly strip?: Located<string>;
  /** Parts from the same sheet. */
  readonly alike?: readonly Reference[];
  readonly cut?: CutDraft;
}

export interface BandingDraft {
  readonly at: Span;
  readonly edges: readonly Face[];
  readonly item?: string;
  readonly thick?: Formula;
  readonly deducted?: Located<boolean>;
}

/** `by` only with "over". */
export interface CutDraft {
  readonly at: Span;
  readonly how: "list" | "opening" | "piece" | "over";
  readonly by?: Formula;
}

/** What wood is left over its size when it is sawn from the board; absent: the usual. */
export interface MoreDraft {
  readonly longer?: Formula;
  readonly wider?: Formula;
  readonly thicker?: Formula;
}
export interface RoughDraft {
  readonly at: Span;
  readonly parts: MoreDraft;
  readonly legs: MoreDraft;
  readonly slabs: MoreDraft & { readonly eachBoardWider?: Formula };
}

/** Right-handed about a direction of the piece, through the middle of an edge, or of the part where none is named. */
export interface TurnDraft {
  readonly at: Span;
  readonly about: Located<Axis>;
  readonly by: Formula;
  readonly edge?: EdgeDraft;
}

/** `part.face`: its centre; `part.edge`: its middle; `part.edge.end`: a corner. */
export type PointDraft =
  | { readonly kind: "named"; readonly of: Reference; readonly faces: readonly Face[]; readonly at: Span }
  | { readonly kind: "place"; readonly place: readonly [Formula, Formula, Formula]; readonly at: Span };

/** `post.left taper`: the tapered face of a part instead of the plane that it had before. `floor` is the bottom of the outside. */
export interface PlaneDraft extends FaceReference {
  readonly tapered: boolean;
}

/** One statement about where a part is or how big. `key` is the source key that said it, `at` its place. */
export type PlaceDraft = { readonly key: string; readonly at: Span } & (
  | { readonly word: "face"; readonly face: Face; readonly value: Formula }
  | { readonly word: "extent"; readonly axis: Axis; readonly value: Formula }
  | { readonly word: "board"; readonly size: BoardSize; readonly value: Formula }
  /** My `face` lies at a face of something, moved by `offset` inwards (set back) or outwards (proud) along the target's normal. */
  | {
      readonly word: "against";
      readonly face: Face;
      readonly target: FaceReference;
      readonly offset?: Formula;
      readonly toward?: "inwards" | "outwards";
    }
  | { readonly word: "between"; readonly axis?: Axis; readonly first: Reference; readonly second: Reference }
  | { readonly word: "centred"; readonly axis?: Axis; readonly on: Reference }
  | { readonly word: "middle"; readonly axis?: Axis }
);

export interface RepeatDraft {
  readonly at: Span;
  readonly count: Formula;
  /** The row lies between these two, along `axis` where both directions would fit. */
  readonly spread?: { readonly axis?: Axis; readonly first: Reference; readonly second: Reference; readonly at: Span };
  readonly gaps?: Located<"inside" | "both ends">;
  readonly gap?: Formula;
  readonly every?: Formula;
}

/** An edge is named by its two faces, the first being the one cut into. */
export type EdgeDraft = { readonly faces: readonly [Face, Face]; readonly at: Span };

/** Where a cut begins and ends along its run, written like any position; `left + 1` means the part's own left face. */
export interface RunDraft {
  readonly from?: Formula;
  readonly to?: Formula;
}

export type ShapeDraft = { readonly at: Span } & (
  | {
      readonly shape: "taper";
      readonly faces: readonly Face[];
      /** The end that gets thin. */
      readonly end: Located<Face>;
      readonly to: Formula;
      readonly over: Formula;
    }
  /** 45 degrees: `by` is taken off both faces. */
  | { readonly shape: "chamfer"; readonly along: EdgeDraft; readonly by: Formula }
  /** A flat that starts `wide` in on the first face and runs out `deep` down on the second. */
  | { readonly shape: "bevel"; readonly along: EdgeDraft; readonly wide: Formula; readonly deep: Formula }
  /** A corner cut out along the whole third direction: `wide` from the first face named, `deep` from the second. */
  | { readonly shape: "notch"; readonly along: EdgeDraft; readonly wide: Formula; readonly deep: Formula }
  /** Cut `deep` into the first face, reaching `wide` in from the second, right through or between two positions. */
  | ({ readonly shape: "rabbet"; readonly along: EdgeDraft; readonly wide: Formula; readonly deep: Formula } & RunDraft)
  /** A channel (or with both ends given a pocket) in face `in`; its near side lies `inFrom` from face `near`. */
  | ({
      readonly shape: "groove" | "dado" | "mortise";
      readonly in: Face;
      readonly near: Face;
      readonly inFrom: Formula;
      readonly wide: Formula;
      readonly deep: Formula;
    } & RunDraft)
  /** A tongue standing out of the end `on`: thick and wide centred unless shoulders are given. */
  | {
      readonly shape: "tenon";
      readonly on: Face;
      readonly long: Formula;
      readonly thick: Formula;
      readonly wide?: Formula;
    }
  /** Bored into face `in`, its centre measured from two other faces. */
  | {
      readonly shape: "hole";
      readonly in: Face;
      readonly centre: readonly [
        { readonly from: Face; readonly distance: Formula },
        { readonly from: Face; readonly distance: Formula },
      ];
      readonly diameter: Formula;
      /** Absent: right through. */
      readonly deep?: Formula;
      readonly counterbore?: { readonly diameter: Formula; readonly deep: Formula };
    }
  /** A circular arc cut out of the edge that face `in` is, right through the part: `deep` in its middle, as wide as the face unless said. */
  | {
      readonly shape: "arch";
      readonly in: Face;
      readonly deep: Formula;
      readonly from?: Formula;
      readonly to?: Formula;
    }
  /** A quarter circle along an edge. */
  | { readonly shape: "round-over"; readonly along: EdgeDraft; readonly radius: Formula }
  /** Corners of a panel, each named by the two faces that meet there. */
  | { readonly shape: "corner radius"; readonly corners: readonly EdgeDraft[]; readonly radius: Formula }
  /** Right through from face `in`; centred in each direction in which no face is given. */
  | {
      readonly shape: "cut-out";
      readonly in: Face;
      readonly wide: Formula;
      readonly high: Formula;
      /** From a face to the nearer side of the opening. */
      readonly placed: readonly { readonly from: Face; readonly distance: Formula }[];
      readonly radius?: Formula;
    }
  /** A long hole with round ends, from end to end `from` – `to`; its nearer side lies `inFrom` from face `near`. */
  | {
      readonly shape: "slot";
      readonly in: Face;
      readonly near: Face;
      readonly inFrom: Formula;
      readonly wide: Formula;
      /** Absent: right through. */
      readonly deep?: Formula;
      readonly from: Formula;
      readonly to: Formula;
    }
  /** All edges of the broad face that is seen, or all long edges of a square part. */
  | { readonly shape: "edges"; readonly how: "chamfer" | "round-over"; readonly by: Formula; readonly except?: Face }
);

export type Method =
  | "pocket screws"
  | "screws"
  | "dowels"
  | "dado"
  | "rabbet"
  | "groove"
  | "mortise and tenon"
  | "through tenon"
  | "haunched tenon"
  | "drawbored tenon"
  | "loose tenon"
  | "bridle"
  | "mitre"
  | "splined mitre"
  | "keyed mitre"
  | "box joint"
  | "dovetail"
  | "sliding dovetail"
  | "tongue and groove"
  | "spline"
  | "biscuits"
  | "breadboard end"
  | "half lap"
  | "glue"
  | "nails"
  | "brads"
  | "staples"
  | "cleats"
  | "slotted screws"
  | "oversized holes with washers"
  | "buttons in a groove"
  | "buttons in mortises"
  | "clips"
  | "figure-eight fasteners"
  | "bolts"
  | "bolts and cross dowels"
  | "lag screws"
  | "shelf pins"
  /** A pane in its rabbet, and what lies over its edge: nothing goes into the glass. */
  | "glazed"
  /** It only stands there. */
  | "loose"
  /** Nothing holds them together: one lies or runs on the other. */
  | "runs on"
  /** By a bevel over the bevel of a cleat on the wall. */
  | "hangs on"
  | "cup hinges"
  | "butt hinges"
  | "continuous hinge"
  | "slides"
  | "undermount slides";

export interface JointDraft {
  readonly at: Span;
  /** Made by an assembly. */
  readonly made?: true;
  readonly join: readonly Reference[];
  readonly to: readonly Reference[];
  readonly with: Located<Method>;
  readonly glue?: Located<boolean>;
  /** Which of the plan's hardware it uses; absent: the usual of its kind. */
  readonly hardware?: Located<string>;
  /** The way that a door, lid or drawer opens: to the front, and a lid upwards, when nothing is said. */
  readonly opens?: Located<Face>;
  /** From the front of the opening to the front of a slide or plate; and from below the moved part to the middle of a slide. */
  readonly setBack?: Formula;
  readonly upFromBottom?: Formula;
  /** The part under the screw or nail head: one side of the joint. Default: `join`. */
  readonly from?: Reference;
  /** How far the joined part is let in (dado, rabbet, groove). */
  readonly deep?: Formula;
  /** Room left round what is let in, in all, across its thickness and at its end. */
  readonly play?: Formula;
  /** The housing ends this far short of a face of the housed part. */
  readonly stopped?: { readonly by: Formula; readonly from: Face; readonly at: Span };
  /** Half lap: the face on whose side `join` stays whole. */
  readonly joinSide?: Located<Face>;
  readonly tenon?: TenonDraft;
  readonly mortiseDeeper?: Formula;
  /** Where wood that is free to move is held: the line that it swells and shrinks away from. Default: its middle. */
  readonly holdStill?: Located<Face | "middle">;
  /** Left open between a button or clip and the rail, or at the end of a shelf on pins. */
  readonly gap?: Formula;
  /** What is let half into each part: a spline, a key, a loose tenon. */
  readonly loose?: { readonly at: Span; readonly thick?: Formula; readonly wide?: Formula; readonly long?: Formula };
  /** Box joint: width of a finger. */
  readonly finger?: Formula;
  /** Dovetail: how many tails, how wide a pin is at its narrow side, and how many steps along make one across. */
  readonly tails?: Formula;
  readonly pin?: Formula;
  readonly slope?: Located<number>;
  /** Number of a biscuit: 0, 10 or 20. */
  readonly biscuit?: Located<number>;
  /** What holds a tenon: its thickness, and how far the hole in the tenon stands nearer to the shoulder. */
  readonly peg?: { readonly at: Span; readonly diameter?: Formula; readonly offset?: Formula };
  readonly fasteners?: FastenersDraft;
  /** It is screwed on where it will stay, held there by shims or tape: the front of a drawer. */
  readonly setWith?: Located<"shims" | "tape">;
}

/** A piece of hardware, as the plan describes it. */
export interface HardwareDraft {
  readonly name: string;
  readonly at: Span;
  /** The name of its kind in `src/parse/hardware`. */
  readonly kind: string;
  readonly called?: Located<string>;
  readonly price?: Located<number>;
  /** By the names of the kind's fields. */
  readonly values: ReadonlyMap<string, HardwareValue & { readonly at: Span }>;
}
export type HardwareValue =
  | { readonly is: "measure"; readonly value: Formula }
  | { readonly is: "range"; readonly low: Formula; readonly high: Formula }
  | { readonly is: "measures"; readonly values: readonly Formula[] }
  /** A count, degrees, or kg. */
  | { readonly is: "number"; readonly value: number }
  | { readonly is: "word"; readonly value: string };

export interface FittingDraft {
  readonly at: Span;
  /** A name of `hardware`, or a kind of it. */
  readonly fit: Located<string>;
  readonly to: readonly Reference[];
  /** The part that it works against or reaches to: of a catch, what carries the strike; of a lid support, the lid. */
  readonly against?: Reference;
  /** Which face of the part it goes on. Default: what its kind is usually put on. */
  readonly face?: Located<Face>;
  /** Where its middle is, as formulas of positions in the piece; absent: in the middle of the face. */
  readonly place: Partial<Readonly<Record<Axis, Formula>>>;
  /** Which way its long side goes. Default: along the longer direction of the face. */
  readonly along?: Located<Axis>;
  /** Parts that its screw passes before it reaches this one. */
  readonly through?: readonly Reference[];
  readonly count?: Formula;
  /** The head of its screw lies sunk in the wood. */
  readonly sunk?: Located<boolean>;
}

export interface TenonDraft {
  readonly at: Span;
  readonly thick?: Formula;
  readonly long?: Formula;
  /** Distance of the tenon's cheek from the joined part's face; absent: centred. */
  readonly inFrom?: { readonly distance: Formula; readonly face: Face; readonly at: Span };
  /** Shoulder on the high side (above, behind, right) and low side (below, in front, left) of the width. */
  readonly shoulderAbove?: Formula;
  readonly shoulderBelow?: Formula;
  readonly ends?: Located<"square" | "mitred">;
  /** How long the stub is that fills the shoulder of a haunched tenon. */
  readonly haunch?: Formula;
  readonly wedges?: Located<boolean>;
}

export interface FastenersDraft {
  readonly at: Span;
  /** Which of the keys screw, dowel, nail, brad, staple, bolt or pin described it; absent where none did. */
  readonly kind?: "screw" | "dowel" | "nail" | "brad" | "staple" | "bolt" | "pin";
  readonly count?: Formula;
  /** Centre to centre at most. */
  readonly spacing?: Formula;
  /** From the end of the contact to the first. */
  readonly inFromEnds?: Formula;
  readonly length?: Formula;
  /** Screw gauge: 8 for "#8"; in a metric plan the diameter is given instead. */
  readonly gauge?: Located<number>;
  readonly diameter?: Formula;
  readonly head?: Located<"countersunk" | "round" | "plugged">;
  /** The face of the headed part that the head is on, where there is a choice (pocket holes). */
  readonly side?: Located<Face>;
  /** Head sunk this deep in a counterbore. */
  readonly counterbore?: Formula;
  /** Clearance hole made larger so that wood can move: the hole's diameter. */
  readonly oversized?: Formula;
  /** How long the slots are that let wood move, from end to end. */
  readonly slot?: Formula;
  /** Pins: how many more holes above and below each, and how far apart. */
  readonly spare?: Formula;
  readonly apart?: Formula;
}
