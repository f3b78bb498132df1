import type { Finding } from "../../../findings/finding.ts";
import type { FittingDraft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { negate } from "../../../units/rational.ts";
import type { Box, Hardware, Hole, Item, Part, Point } from "../../design.ts";
import type { AxisIndex } from "../space.ts";

/** Where a fitting goes. */
export interface FittingSite {
  /** Begins the ids of its hardware. */
  readonly id: string;
  readonly draft: FittingDraft;
  readonly item: Item;
  readonly part: Part;
  /** Named under `against`. */
  readonly against: Part | null;
  /** Passed by its screw before it reaches the part, nearest to the part first. */
  readonly through: readonly Part[];
  /** The outward direction of the face that it goes on. */
  readonly axis: AxisIndex;
  readonly sign: 1 | -1;
  /** The direction on the face along which its long side goes. */
  readonly run: AxisIndex;
  /** On that face, in the middle of what was said. */
  readonly at: Point;
  readonly body: Box;
}

export interface FitterContext {
  readonly report: (finding: Finding) => void;
  /** For findings. */
  readonly print: (length: Length) => string;
  readonly printItem: (length: Length) => string;
}

/** A distance away from the wood, along the axis of the face. */
export const outwards = ({ sign }: Pick<FittingSite, "sign">, by: Length): Length => (sign > 0 ? by : negate(by));

/** The hardware and holes of one fitting; null where it cannot be fixed, which has been reported. */
export type Fitter = (
  site: FittingSite,
  context: FitterContext,
) => { readonly hardware: readonly Hardware[]; readonly holes: readonly Hole[] } | null;
