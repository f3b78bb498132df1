/** What is bought, and finish with its areas. Types only. */
import type { Face, Finish } from "../../design.ts";

/** `area` in m²: what of its parts is not against another part. */
export interface Finishing extends Finish {
  readonly area: number;
  /** Parts of the plan's surface that stay bare all the same; absent: none. */
  readonly bare?: readonly string[];
  /** What that is in words, and faces of other parts: "drawer boxes", "the faces inside". Absent: nothing stays bare. */
  readonly bareWhat?: readonly string[];
  /** Which faces of which parts those inside are; all of a part that names none. Absent: none. */
  readonly bareFaces?: readonly { readonly part: string; readonly sides: readonly Face[] }[];
  /** Where it has as many coats as `inside` says, in the same way. Absent: nowhere. */
  readonly insideFaces?: readonly { readonly part: string; readonly sides: readonly Face[] }[];
  /** m² of those; absent: none. */
  readonly insideArea?: number;
  /** Panels that are coated on both faces all the same, though one of them is shut in. Absent: none. */
  readonly bothFaces?: readonly string[];
  /** Doors and lids before what is shut in, each with the ids of its parts: they are coated on both faces too. Absent: none. */
  readonly leaves?: readonly (readonly string[])[];
}

export interface Purchase {
  readonly section: "sheets" | "lumber" | "panes" | "hardware" | "fasteners" | "supplies";
  readonly item: string;
  readonly quantity: number;
  readonly unit: string;
  /** Of the whole line. */
  readonly price: number | null;
  /** Used up of what there is in the workshop, in what is counted: pieces, not boxes. */
  readonly onHand: number;
  /** Share of what is bought that does not end in parts, 0 to 1. */
  readonly waste: number;
  /** What is in one box or roll; absent: sold singly. */
  readonly content?: { readonly count: number; readonly of: string };
  /** What the reader should know when buying it; no sentence, without a full stop. */
  readonly note?: string;
}
