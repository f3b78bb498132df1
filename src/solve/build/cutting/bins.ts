import type { Length } from "../../../units/length.ts";
import { add, sign, subtract, toNumber, ZERO } from "../../../units/rational.ts";
import type { Stock } from "../../design.ts";
import { type Bin, makeBin, type Usable } from "./item.ts";
import type { Trim } from "./trim.ts";

/** The largest piece that any board or sheet of the stock gives. */
export const usableSize = (stock: Stock, kerf: Length, trim: Trim): Usable =>
  usable(stock, stock.soldLengths.at(-1) ?? ZERO, kerf, trim);

function usable(stock: Stock, soldLength: Length, kerf: Length, trim: Trim): Usable {
  if (stock.form === "sheet")
    return { width: subtract(stock.soldWidth, trim.sheet), length: subtract(soldLength, trim.sheet) };
  return { width: stock.soldWidth, length: subtract(soldLength, endLoss(kerf, trim)) };
}

/** What a board loses at its trimmed end: the piece that falls off, and the kerf. */
export const endLoss = (kerf: Length, { boardEnd }: Trim): Length =>
  sign(boardEnd) === 0 ? ZERO : add(boardEnd, kerf);

/** The kinds of board that may be bought, the cheapest first. A board too short to be trimmed is none. */
export function binsOf(stock: Stock, kerf: Length, trim: Trim): readonly Bin[] {
  return stock.soldLengths.flatMap((soldLength): Bin[] => {
    const room = usable(stock, soldLength, kerf, trim);
    if (sign(room.width) <= 0 || sign(room.length) <= 0) return [];
    return [makeBin(room, kerf, soldLength, toNumber(stock.soldWidth) * toNumber(soldLength))];
  });
}
