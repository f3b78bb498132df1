import type { Finding } from "../../../findings/finding.ts";
import type { Solid } from "../../../geometry/index.ts";
import type { Formula, JointDraft, Units } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { type Rational, ZERO } from "../../../units/rational.ts";
import type { Box, Direction, FastenerKind, Feature, Point } from "../../design.ts";
import type { Items } from "../hardware/items.ts";
import type { Cut, Workpiece } from "../shapes/workpiece.ts";
import { type AxisIndex, sameBox } from "../space.ts";
import type { Pair } from "./pairs.ts";
import type { Section } from "./section.ts";

/** A pair with its number, while its wood is being cut. */
export interface Joining extends Pair {
  readonly id: string;
  /** Of a joint that lets wood move: those of other entries that hold one of its parts fast on the same side. */
  readonly besides?: readonly Joining[];
}

/** What a method adds to a joint beyond its wood. */
export interface Jointed {
  readonly joining: Joining;
  /** Way in which the joined part goes home, where the wood dictates it. */
  readonly insertion: Direction | null;
  /** Play left on purpose between the two. */
  readonly gap: Length;
  /** What is let half into each part, complete but for the names of its fasteners. */
  readonly loose?: readonly Loose[];
  /** A tenon that pegs hold: where it stands, and how long it is. */
  readonly pegged?: Pegged;
}

/** A spline, key, loose tenon or biscuit: its wood, and its axis from the joined part into the other. */
export interface Loose {
  readonly kind: Extract<FastenerKind, "spline" | "key" | "loose tenon" | "biscuit">;
  readonly item: string;
  readonly body: Solid;
  readonly from: Point;
  readonly direction: Direction;
  readonly length: Length;
  readonly thick: Length;
  /** Comes with the joined part; false: let in when the joint is together. */
  readonly travels: boolean;
}

export interface Pegged {
  readonly section: Section;
  readonly long: Length;
  /** Holes in the tongue that are longer, so that wood can move: how much to each side of the middle. */
  readonly slotted?: Length;
}

/** Reads the numbers of a joint and lengthens its parts. What it gives cuts the rest, once every part has its full length. Null: reported. */
export type Craft = (
  joining: Joining,
  bench: Bench,
  context: JoineryContext,
  /** Every pair of the same entry. */
  siblings: readonly Joining[],
) => (() => Jointed | null) | null;

/** The parts on the bench, changed in place as the joints are cut one after another. Lives inside one compile. */
export class Bench {
  readonly pieces: Map<string, Workpiece>;
  constructor(pieces: Iterable<Workpiece>) {
    this.pieces = new Map([...pieces].map((piece) => [piece.entry.id, piece]));
  }
  piece(id: string): Workpiece {
    const piece = this.pieces.get(id);
    if (!piece) throw new Error(`no workpiece ${id}`);
    return piece;
  }
  change(id: string, change: Partial<Workpiece>): void {
    this.pieces.set(id, { ...this.piece(id), ...change });
  }
  grow(id: string, grown: Box): void {
    this.change(id, { grown });
  }
  cut(id: string, cut: Cut, feature: Feature): void {
    this.cutAll(id, [cut], feature);
  }
  /** Cuts that are told together. */
  cutAll(id: string, cuts: readonly Cut[], feature: Feature): void {
    const piece = this.piece(id);
    this.change(id, { cuts: [...piece.cuts, ...cuts], features: [...piece.features, feature] });
  }
  addTongue(id: string, tongue: Box, feature: Feature): void {
    const piece = this.piece(id);
    this.change(id, { tongues: [...piece.tongues, tongue], features: [...piece.features, feature] });
  }
  /** Another size for a tongue that stands there already, with the feature that tells of it. */
  changeTongue(id: string, feature: Feature, [before, after]: readonly [Box, Box], changed: Feature): void {
    const { tongues } = this.piece(id);
    this.change(id, { tongues: tongues.map((box) => (sameBox(box, before) ? after : box)) });
    this.#tell(id, feature, changed);
  }
  /** Another size for what is cut already, with the feature that tells of it. */
  changeCut(id: string, feature: Feature, [before, after]: readonly [Box, Box], changed: Feature): void {
    const { cuts } = this.piece(id);
    const box = { kind: "box", box: after } as const;
    this.change(id, { cuts: cuts.map((cut) => (cut.kind === "box" && sameBox(cut.box, before) ? box : cut)) });
    this.#tell(id, feature, changed);
  }
  #tell(id: string, feature: Feature, changed: Feature): void {
    const { features } = this.piece(id);
    this.change(id, { features: features.map((each) => (each === feature ? changed : each)) });
  }
}

export interface JoineryContext {
  /** The hardware of the plan. */
  readonly items: Items;
  /** kg of a part and all that is joined to it for good. */
  readonly hangs: (id: string) => number;
  /** Its parts. */
  readonly hangsWith: (id: string) => readonly string[];
  /** Where it ends in a direction. */
  readonly reaches: (id: string, axis: AxisIndex, sign: 1 | -1) => Length | null;
  readonly units: Units;
  readonly precision: Length;
  /** The share of its width by which the wood of a part may move either way; null: not at all. */
  readonly movesBy: (part: string) => Rational | null;
  readonly measure: (formula: Formula) => Length | null;
  readonly report: (finding: Finding) => void;
  /** A whole number above zero, or null: reported. */
  readonly count: (formula: Formula) => number | null;
  /** For findings. */
  readonly print: (length: Length) => string;
  /** For the names of what is bought or made: true fractions. */
  readonly printItem: (length: Length) => string;
}

/** The formula's value, `fallback` when it is not given, null when it failed. */
export const measured = (formula: Formula | undefined, fallback: Length, context: JoineryContext): Length | null =>
  formula ? context.measure(formula) : fallback;

export const playOf = (draft: JointDraft, context: JoineryContext, fallback: Length = ZERO): Length | null =>
  measured(draft.play, fallback, context);
