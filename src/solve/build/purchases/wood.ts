import type { Units } from "../../../parse/draft.ts";
import {
  add,
  ceil,
  divide,
  type Length,
  max,
  millimetres,
  multiply,
  printLength,
  type Rational,
  rational,
  sayLength,
  sum,
  toNumber,
  ZERO,
} from "../../../units/index.ts";
import type { Layout, Purchase } from "../../build.ts";
import type { Stock } from "../../design.ts";
import { sayBoardLength } from "../cutting/say-board.ts";
import { boardFeet } from "./board-feet.ts";

/** Bought for each board foot of parts where boards have random widths and knots: 30 % more. Common practice, no source. */
const WITH_WASTE = rational(13, 10);

/** What is bought of one stock. `layouts` are its boards or sheets. */
export function woodPurchases(stock: Stock, layouts: readonly Layout[], units: Units): readonly Purchase[] {
  if (layouts.length === 0) return [];
  if (stock.roughThickness !== null) return [byVolume(stock, stock.roughThickness, layouts, units)];
  const lengths = [...new Map(layouts.map(({ length }) => [`${length.n}/${length.d}`, length])).values()];
  return lengths
    .toSorted((a, b) => toNumber(a) - toNumber(b))
    .map((length) => {
      const same = layouts.filter((layout) => layout.length.n === length.n && layout.length.d === length.d);
      const bought = sum(same.map(({ width, length: long }) => multiply(width, long)));
      return {
        section: stock.form === "sheet" ? "sheets" : "lumber",
        item: `${stock.label}, ${sizeOf(stock, length, units)}`,
        quantity: same.length,
        unit: stock.form,
        price: stock.soldLengths.length === 1 ? priceOf(stock, same.length) : null,
        onHand: 0,
        waste: wasteOf(partsOf(same), bought),
      };
    });
}

/** Rough boards are paid for by volume: by the layouts or with the usual waste, whichever is more. */
function byVolume(stock: Stock, thickness: Length, layouts: readonly Layout[], units: Units): Purchase {
  const [volume, step, unit] =
    units === "inch" ? ([boardFeet, 10, "board feet"] as const) : ([cubicMetres, 1000, "m³"] as const);
  const pieces = layouts.flatMap(({ placements }) => placements);
  const parts = sum(pieces.map(({ width, length }) => volume(thickness, width, length)));
  const boards = sum(layouts.map(({ width, length }) => volume(thickness, width, length)));
  const bought = rational(ceil(multiply(max(boards, multiply(parts, WITH_WASTE)), rational(step))), step);
  const quantity = toNumber(bought);
  return {
    section: "lumber",
    item: stock.label,
    quantity,
    unit,
    price: priceOf(stock, quantity),
    onHand: 0,
    waste: wasteOf(parts, bought),
  };
}

const cubicMetres = (thickness: Length, width: Length, length: Length): Rational => {
  const metre = millimetres(1000);
  return [thickness, width, length].reduce((volume, side) => multiply(volume, divide(side, metre)), rational(1));
};

const partsOf = (layouts: readonly Layout[]): Rational =>
  layouts.flatMap(({ placements }) => placements).reduce((area, p) => add(area, multiply(p.width, p.length)), ZERO);

/** To a thousandth. */
const wasteOf = (parts: Rational, bought: Rational): number =>
  Math.round(1000 * (1 - toNumber(divide(parts, bought)))) / 1000;

/** For the whole line, to a hundredth. */
const priceOf = ({ price }: Stock, quantity: number): number | null =>
  price === null ? null : Math.round(100 * price * quantity) / 100;

const bare = (length: Length, units: Units): string => printLength(length, { units }).text;

/** `48 × 96 in`, `8 ft`, `6 in × 8 ft`: the width only where the name does not give it. */
function sizeOf(stock: Stock, length: Length, units: Units): string {
  if (stock.form === "sheet") return `${bare(stock.soldWidth, units)} × ${sayLength(length, { units })}`;
  const long = sayBoardLength(length, units);
  const named = stock.width !== null && stock.width.n === stock.soldWidth.n && stock.width.d === stock.soldWidth.d;
  return named ? long : `${sayLength(stock.soldWidth, { units })} × ${long}`;
}
