import { max, subtract, toNumber } from "../../../units/rational.ts";
import type { Part, Stock } from "../../design.ts";
import { extent, indexOf } from "../space.ts";

/** What each board of a slab loses when its edges are jointed, as a part of its width (common practice, no source). */
const JOINTED = 1.1;

/** Of how many boards a part of solid wood consists that says nothing of it: of one, or of as many as its width takes. */
export function boardsFor(part: Part, stock: Stock | null): number {
  if (stock?.form !== "board") return 1;
  const widest = (stock.onHand ?? []).reduce((so, { width }) => max(so, width), stock.soldWidth);
  const wide = extent(part.blank, indexOf(part.axes.width));
  const boards = toNumber(wide) / toNumber(widest);
  return toNumber(subtract(wide, widest)) > 0 ? Math.ceil(boards * JOINTED) : 1;
}
