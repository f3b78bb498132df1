/** How the sizes of a build change with the thickness of its stock. Types only. */
import type { Length } from "../../../units/length.ts";

/** Change of each size with the thickness of a stock: mm for each mm. */
export interface Slope {
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
}

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
}
