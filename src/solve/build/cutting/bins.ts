import type { Length } from "../../../units/length.ts";
import { add, max, sign, subtract, toNumber, ZERO } from "../../../units/rational.ts";
import type { Stock } from "../../design.ts";
import type { Sold, Supply } from "./ask.ts";
import { type Bin, makeBin, type Usable } from "./item.ts";
import type { Trim } from "./trim.ts";

/** The sizes that a stock is sold in; those of the plan where nothing else is known. */
export const soldOf = ({ soldWidth, soldLengths }: Stock, supply?: Supply): readonly Sold[] =>
  supply && supply.sold.length > 0
    ? supply.sold
    : soldLengths.map((length) => ({ width: soldWidth, length, price: null }));

/** The largest piece that any board or sheet gives: as wide as the widest and as long as the longest. */
export const usableSize = (stock: Stock, sold: readonly Sold[], kerf: Length, trim: Trim): Usable => {
  const all = sold.map((each) => usable(stock, each, kerf, trim));
  return {
    width: all.map(({ width }) => width).reduce(max, ZERO),
    length: all.map(({ length }) => length).reduce(max, ZERO),
  };
};

function usable({ form }: Stock, { width, length }: Usable, kerf: Length, trim: Trim): Usable {
  if (form === "sheet") return { width: subtract(width, trim.sheet), length: subtract(length, trim.sheet) };
  return { width, length: subtract(length, endLoss(kerf, trim)) };
}

/** What a board loses at its trimmed end: the piece that falls off, and the kerf. */
export const endLoss = (kerf: Length, { boardEnd }: Trim): Length =>
  sign(boardEnd) === 0 ? ZERO : add(boardEnd, kerf);

/**
 * The kinds of board that may be bought, the cheapest first: by price, or by area where a price is missing. A board too short to be trimmed
 * is none.
 */
export function binsOf(stock: Stock, sold: readonly Sold[], kerf: Length, trim: Trim): readonly Bin[] {
  const priced = sold.every(({ price }) => price !== null);
  return sold
    .flatMap((each): Bin[] => {
      const room = usable(stock, each, kerf, trim);
      if (sign(room.width) <= 0 || sign(room.length) <= 0) return [];
      const cost = priced ? (each.price as number) : toNumber(each.width) * toNumber(each.length);
      return [makeBin(room, kerf, each, cost, priced ? each.price : null)];
    })
    .toSorted((a, b) => a.cost - b.cost);
}
