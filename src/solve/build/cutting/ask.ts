import type { Finding } from "../../../findings/finding.ts";
import type { Span } from "../../../findings/span.ts";
import type { Units } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import type { Layout, LayoutProof } from "../../build.ts";
import type { Trim } from "./trim.ts";

/** How long a layout is looked for. Counted in steps: a slow machine finds the same layout. About 0.1 s, 1 s and 5 s a stock. */
export type CuttingEffort = "quick" | "normal" | "thorough";

/** `plain`: only simple rules, for what is looked at and not printed. */
export type LayoutEffort = CuttingEffort | "plain";

/** A size of sheet or board that can be bought. */
export interface Sold {
  readonly width: Length;
  readonly length: Length;
  /** Of one piece, in whole cents; null where it is not known. Without all prices of a stock, area is what counts. */
  readonly price: number | null;
}

/** Sheets, boards or offcuts that lie there. They are used before anything is bought, and cost nothing. */
export interface OnHand {
  /** As the maker calls it; it comes back with the layout. */
  readonly name: string;
  readonly width: Length;
  readonly length: Length;
  readonly count: number;
  /** Its edges are straight and square already: nothing is trimmed off. */
  readonly squared?: boolean;
}

/** What there is of one stock, and how it may be cut. Lists may be empty. */
export interface Supply {
  readonly sold: readonly Sold[];
  readonly onHand: readonly OnHand[];
  /** What the first cuts make must fit this, the shorter side the shorter: a car, a doorway, a small saw. */
  readonly carry?: { readonly shorter: Length; readonly longer: Length };
}

export interface LayoutOptions {
  /** For the customs of trimming and the words of the proof; inches when absent. */
  readonly units?: Units;
  /** Where each part is written, by its id: findings point there. Absent: at the stock. */
  readonly spans?: ReadonlyMap<string, Span>;
  readonly trim?: Trim;
  /** By the name of the stock. A stock that is not in it is bought in the sizes the design gives, without prices. */
  readonly supply?: ReadonlyMap<string, Supply>;
  /** Quick when absent. */
  readonly effort?: LayoutEffort;
  /** By the name of a stock, that of which it is sawn from the boards. Absent: each has its own. */
  readonly boards?: ReadonlyMap<string, string>;
  /** How often the direction of cutting changes on a sheet, trimming not counted; three when absent: rips, crosscuts, rips again. */
  readonly stages?: 2 | 3 | "any";
}

export interface LaidOut {
  /** `Layout.source` tells what is bought; `Layout.piece` is the name of what lay there. */
  readonly layouts: readonly Layout[];
  /** One for each stock that is used, and those sawn from the same boards. */
  readonly proof: readonly LayoutProof[];
  readonly findings: readonly Finding[];
}
