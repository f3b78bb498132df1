/** How the sizes of a build change with the thickness of its stock. Types only. */
import type { Face } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";

/** Change of each size with the thickness of a stock: mm for each mm. */
export interface Slope {
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
}

/** A size that is larger than drawn somewhere in the ranges of thickness, and the thicknesses at which it is largest. */
export interface Reserved {
  readonly size: "width" | "length";
  /** As printed. */
  readonly largest: Length;
  readonly at: ReadonlyMap<string, Length>;
}

/** The sizes that a layout keeps room for, by part; parts that are never larger than drawn are left out. */
export type LargestSizes = ReadonlyMap<string, readonly Reserved[]>;

/** The sizes of the cut list that change with the thickness of a stock, as printed. */
export interface ChangingSizes {
  readonly stock: string;
  /** Up to five of its range, rising. */
  readonly thicknesses: readonly Length[];
  /** One size for each thickness. */
  readonly rows: readonly {
    readonly mark: string;
    readonly size: "width" | "length";
    readonly sizes: readonly Length[];
  }[];
  /** Of the sticks that a step cuts to hold two parts apart; one size for each thickness. */
  readonly sticks: readonly { readonly step: number; readonly sizes: readonly Length[] }[];
  /** Of the parts that change. */
  readonly moving: readonly MovingPlaces[];
  /** Marks of parts on which other places change too, or whose own place does. */
  readonly shifting: readonly string[];
}

/** What is cut and bored from some distance from one end of a part on keeps its distance from the other, while the size between them changes. */
export interface MovingPlaces {
  readonly mark: string;
  readonly size: "width" | "length";
  /** As drawn, from the near end. */
  readonly from: Length;
  readonly near: Face;
  readonly far: Face;
}
