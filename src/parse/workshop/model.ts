/** What there is in a workshop and what things cost there, as it was read. Types only. */
import type { Located, Span } from "../../findings/span.ts";
import type { Length } from "../../units/length.ts";
import type { LengthSold, SheetSold, ToolsDraft } from "../draft.ts";

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
