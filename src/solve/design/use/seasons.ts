import { type Rational, rational } from "../../../units/rational.ts";
import type { Site, Stock } from "../../design.ts";
import { changeOfWidth } from "./change-of-width.ts";

/** A change of moisture, %. */
export interface Change {
  readonly from: number;
  readonly to: number;
}

/** Wood of which nothing is said when it is bought: 8 %, Wood Handbook FPL-GTR-190, Table 13-2, average indoors. */
export const USUAL_MOISTURE = 8;

const size = ({ from, to }: Change): number => Math.abs(to - from);
const larger = (a: Change, b: Change): Change => (size(b) > size(a) ? b : a);

/** The largest change of moisture that wood goes through: from the day of building, and between the seasons. */
export function changeOf({ moisture = USUAL_MOISTURE }: Stock, { driest, dampest }: Site): Change {
  const dries = { from: moisture, to: driest };
  const swells = { from: moisture, to: dampest };
  return larger(larger(dries, swells), { from: driest, to: dampest });
}

/**
 * The largest change from what it was when it was fitted. Where the moisture of that day is not said, it may have been either
 * season's, and the whole change between them counts to either side.
 */
export function changeSinceFitted(stock: Stock, { driest, dampest }: Site): Change {
  if (stock.moisture === undefined) return { from: driest, to: dampest };
  return larger({ from: stock.moisture, to: driest }, { from: stock.moisture, to: dampest });
}

/** The share of its width by which the wood of a stock may move either way from where it was fitted, a little over; null for what does not move. */
export function shareOfMovement(stock: Stock, site: Site): Rational | null {
  if (stock.movement === undefined) return null;
  const { from, to } = changeSinceFitted(stock, site);
  return rational(Math.ceil(Math.abs(changeOfWidth(stock.movement, from, to)) * 10000), 10000);
}
