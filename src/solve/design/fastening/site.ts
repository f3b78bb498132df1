import type { Finding } from "../../../findings/finding.ts";
import type { Placement, Solid } from "../../../geometry/index.ts";
import type { FastenersDraft, Formula, JointDraft, Units } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import type { Rational } from "../../../units/rational.ts";
import type { Arrangement, Box, Feature, Still } from "../../design.ts";
import type { Items } from "../hardware/items.ts";
import type { Frame } from "../placing/attitude.ts";
import type { AxisIndex } from "../space.ts";

/** A finished part, as fasteners see it. */
export interface Member {
  readonly id: string;
  readonly solid: Solid;
  readonly body: Box;
  readonly frame: Frame;
  /** How it lies in the room; null: square to it. */
  readonly placement: Placement | null;
  readonly softwood: boolean;
  readonly features: readonly Feature[];
  /** Its broad faces lie at an angle to the coordinates that it is told in. */
  readonly slanting?: boolean;
  /** Some of its faces do: what lies ahead of a screw may slope away from it. */
  readonly askew?: boolean;
}

export interface FasteningContext {
  /** The hardware of the plan. */
  readonly items: Items;
  /** kg of a part and all that is joined to it for good: what hangs on its hinges. */
  readonly hangs: (id: string) => number;
  /** Where a part and all that is joined to it for good ends in a direction; null where that is not known. */
  readonly reaches: (id: string, axis: AxisIndex, sign: 1 | -1) => Length | null;
  readonly units: Units;
  /** The share of its width by which the wood of a part may move either way; null: not at all. */
  readonly movesBy: (part: string) => Rational | null;
  readonly measure: (formula: Formula) => Length | null;
  readonly count: (formula: Formula) => number | null;
  readonly report: (finding: Finding) => void;
  /** For findings. */
  readonly print: (length: Length) => string;
  /** For the plan: true fractions. */
  readonly printItem: (length: Length) => string;
  /** The middle of the piece: heads look that way where there is a choice. */
  readonly centre: readonly [number, number, number];
}

/** Where the fasteners of one joint go. */
export interface Site {
  readonly joint: string;
  readonly draft: JointDraft;
  /** The part under the head, and the one that holds the point. */
  readonly head: Member;
  readonly hold: Member;
  /** From the head's part into the holding one, along an axis. */
  readonly axis: AxisIndex;
  readonly sign: 1 | -1;
  /** The rectangle of the contact. */
  readonly area: Box;
  /** Where the part that holds the point is still, in a joint that lets it move. */
  readonly still: Still | null;
}

/** What the maker said about the fasteners of a joint. */
export const options = (draft: JointDraft): Partial<FastenersDraft> => draft.fasteners ?? {};

/** A row other than the one described: moved along, drawn in at both ends, or along the other direction of the contact. */
export interface RowShift {
  readonly by: Length;
  readonly in?: Length;
  readonly turned: boolean;
  /** Heads that stand proud are let into the wood: what lies behind them needs their room. */
  readonly sunk?: true;
}

/** Makes the fasteners of a site, with its row shifted. */
export type Maker = (site: Site, shift: RowShift, context: FasteningContext) => readonly Arrangement[];
