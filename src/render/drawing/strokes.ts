/** Line widths after ISO 128-2: wide to narrow 2 : 1, and a step's new parts wider still. In points. */
import type { Stroke } from "../document.ts";
import { ACCENT, BLACK, GREY } from "../palette.ts";

/** Visible edges. */
export const OUTLINE: Stroke = { width: 0.7, ink: BLACK, cap: "round" };
/** Visible edges of what is there already. */
export const PRESENT: Stroke = { width: 0.35, ink: BLACK, cap: "round" };
/** Visible edges of what is new in a step. */
export const FRESH: Stroke = { width: 1, ink: BLACK, cap: "round" };
/** The same where lines lie close together. */
export const FINE: Stroke = { width: 0.55, ink: BLACK, cap: "round" };
/** Dimension lines, extension lines and leaders. */
export const NARROW: Stroke = { width: 0.35, ink: BLACK };
/** The light on glass. */
export const SHEEN: Stroke = { width: 0.5, ink: GREY, cap: "round" };
/** Hidden edges. */
export const HIDDEN: Stroke = { width: 0.35, ink: BLACK, dash: [3, 1.8] };
/** Centre lines and ways of travel. */
export const CHAIN: Stroke = { width: 0.35, ink: BLACK, dash: [7, 2, 1, 2] };
/** A saw cut. */
export const CUT: Stroke = { width: 0.9, ink: ACCENT, dash: [5, 2.5] };
