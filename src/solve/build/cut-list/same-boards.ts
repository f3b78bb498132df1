/** Stocks that are bought as the same rough boards and planed to thicknesses of their own. */
import type { Length } from "../../../units/length.ts";
import { unplaned } from "../../design/stock/label.ts";
import type { Design, Stock } from "../../design.ts";
import { isMilled } from "./blanks.ts";

/**
 * By the name of each stock, the first of those that are sawn from the same boards: the same wood, equally thick, wide and long as it is
 * sold, at the same price, and planed after it is sawn. What is sawn when it has its thickness shares its boards with no other.
 */
export function sameBoards(design: Design): ReadonlyMap<string, string> {
  const firsts = new Map<string, string>();
  return new Map(
    design.stock.map((stock) => {
      const key = boughtAs(design, stock);
      if (!firsts.has(key)) firsts.set(key, stock.name);
      return [stock.name, firsts.get(key) ?? stock.name] as const;
    }),
  );
}

/** The stocks that are sawn from the boards of a stock, that one first. */
export const sharersOf = (design: Design, boards: ReadonlyMap<string, string>, { name }: Stock): readonly Stock[] =>
  design.stock.filter((other) => boards.get(other.name) === name);

const exact = ({ n, d }: Length): string => `${n}/${d}`;

function boughtAs(design: Design, stock: Stock): string {
  const { name, form, label, species, roughThickness, soldWidth, soldLengths, sold = [], onHand = [] } = stock;
  if (form !== "board" || roughThickness === null || !isMilled(design, stock)) return `only ${name}`;
  return JSON.stringify([
    [unplaned(label), species, exact(roughThickness), exact(soldWidth), soldLengths.map(exact), stock.assumed],
    [stock.price, stock.waste ?? null, stock.moisture ?? null, stock.goodFaces ?? null],
    sold.map(({ width, length, price }) => [exact(width), exact(length), price]),
    onHand.map(({ width, length, count }) => [exact(width), exact(length), count]),
  ]);
}
