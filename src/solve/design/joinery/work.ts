import type { Finding } from "../../../findings/finding.ts";
import type { Formula, JointDraft, Method, Units } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { ZERO } from "../../../units/rational.ts";
import type { Box, Direction, Feature } from "../../design.ts";
import type { Cut, Workpiece } from "../shapes/workpiece.ts";
import type { Pair } from "./pairs.ts";

/** A pair with its number, while its wood is being cut. */
export interface Joining extends Pair {
  readonly id: string;
}

/** What a method adds to a joint beyond its wood. */
export interface Jointed {
  readonly joining: Joining;
  /** Way in which the joined part goes home, where the wood dictates it. */
  readonly insertion: Direction | null;
  /** Play left on purpose between the two. */
  readonly gap: Length;
}

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
    const piece = this.piece(id);
    this.change(id, { cuts: [...piece.cuts, cut], features: [...piece.features, feature] });
  }
  addTongue(id: string, tongue: Box, feature: Feature): void {
    const piece = this.piece(id);
    this.change(id, { tongues: [...piece.tongues, tongue], features: [...piece.features, feature] });
  }
}

export interface JoineryContext {
  readonly units: Units;
  readonly precision: Length;
  readonly measure: (formula: Formula) => Length | null;
  readonly count: (formula: Formula) => number | null;
  readonly report: (finding: Finding) => void;
  readonly print: (length: Length) => string;
}

/** Methods whose joined part is let into the other over its whole section. */
export const HOUSINGS: readonly Method[] = ["dado", "rabbet", "groove"];

/** The formula's value, `fallback` when it is not given, null when it failed. */
export const measured = (formula: Formula | undefined, fallback: Length, context: JoineryContext): Length | null =>
  formula ? context.measure(formula) : fallback;

export const playOf = (draft: JointDraft, context: JoineryContext, fallback: Length = ZERO): Length | null =>
  measured(draft.play, fallback, context);
