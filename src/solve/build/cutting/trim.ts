import { inches, type Length, millimetres, ZERO } from "../../../units/index.ts";

/** What comes off a board or sheet before parts are cut from it. */
export interface Trim {
  /** Off one long and one short edge of a sheet, so that both are straight and square to each other. */
  readonly sheet: Length;
  /** Off one end of a board, kerf not included: the sold end is rarely square. */
  readonly boardEnd: Length;
  /** Off one edge of a rough board, which is straightened before anything is ripped from it. */
  readonly roughEdge: Length;
  /** Whether its other edge is ripped off too; absent: it is. */
  readonly farEdge?: boolean;
}

/** Common practice, no source. */
export const TRIM: { readonly inch: Trim; readonly mm: Trim } = {
  inch: { sheet: inches(1, 8), boardEnd: inches(1, 4), roughEdge: inches(1, 4) },
  mm: { sheet: millimetres(3), boardEnd: millimetres(6), roughEdge: millimetres(6) },
};

/** Nothing comes off: for stock that is sold square, and for comparison with published results. */
export const NO_TRIM: Trim = { sheet: ZERO, boardEnd: ZERO, roughEdge: ZERO };
