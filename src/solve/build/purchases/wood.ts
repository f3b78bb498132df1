import type { Units } from "../../../parse/draft.ts";
import {
  add,
  ceil,
  compare,
  divide,
  equal,
  type Length,
  less,
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
import { unplaned } from "../../design/stock/label.ts";
import type { Stock } from "../../design.ts";
import { sayBoardLength } from "../cutting/say-board.ts";
import { type Enough, sayEnough } from "../enough.ts";
import { boardFeet } from "./board-feet.ts";
import { inCents } from "./need.ts";

/** Bought over the parts where boards have random widths and knots, as a share of them. Common practice, no source. */
const RANDOM_WASTE = 0.3;

/** How it is used: `notes` go with the first line; whether it is planed after it is sawn, and to which thicknesses, its own if absent. */
interface Used {
  readonly notes?: readonly string[];
  readonly milled?: boolean;
  readonly thicknesses?: readonly Length[];
  /** What a part of the last one does for. */
  readonly enough?: Enough | null;
  readonly print?: (length: Length) => string;
}

/** What is bought of one stock, and what is used up of it. `layouts` are its boards or sheets. */
export function woodPurchases(
  stock: Stock,
  layouts: readonly Layout[],
  units: Units,
  { notes = [], milled = false, thicknesses = [stock.thickness], enough = null, print = String }: Used = {},
): readonly Purchase[] {
  if (layouts.length === 0) return [];
  const lines =
    stock.roughThickness === null
      ? byPiece(stock, layouts, units)
      : byVolume(stock, stock.roughThickness, layouts, { units, milled, thicknesses });
  const sizes = stock.roughThickness === null ? sizesOf(layouts) : [];
  const least =
    enough &&
    Math.max(
      0,
      sizes.findIndex((size) => sameSize(size, enough.layout)),
    );
  return lines.map((line, i) => {
    const all = [
      ...(line.note ? [line.note] : []),
      ...(i === 0 ? notes : []),
      ...(enough && i === least ? [sayEnough(enough, layouts.length, print)] : []),
    ];
    return all.length === 0 ? line : { ...line, note: all.join("; ") };
  });
}

const sameSize = (a: Pick<Layout, "width" | "length">, b: Pick<Layout, "width" | "length">): boolean =>
  equal(a.width, b.width) && equal(a.length, b.length);

/** One layout of each size, the shortest first. */
const sizesOf = (layouts: readonly Layout[]): readonly Layout[] =>
  layouts
    .filter((layout, i) => layouts.findIndex((other) => sameSize(other, layout)) === i)
    .toSorted((a, b) => compare(a.length, b.length) || compare(a.width, b.width));

/** A line for each size. */
function byPiece(stock: Stock, layouts: readonly Layout[], units: Units): readonly Purchase[] {
  return sizesOf(layouts).map((size) => {
    const same = layouts.filter((layout) => sameSize(layout, size));
    const toBuy = same.filter(({ source }) => source === "buy").length;
    const spare = toBuy === 0 ? 0 : spareFor(stock, same, toBuy);
    const area = sum(same.map(({ width, length }) => multiply(width, length)));
    const each = priceOfOne(stock, size);
    return {
      section: stock.form === "sheet" ? "sheets" : "lumber",
      item: `${stock.label}, ${sizeOf(stock, size, units)}`,
      quantity: toBuy + spare,
      unit: stock.form,
      price: each === null ? null : inCents(each * (toBuy + spare)),
      onHand: same.length - toBuy,
      waste: wasteOf(partsOf(same), multiply(area, rational(same.length + spare, same.length))),
      ...(spare > 0 && { note: `${spare} more than the layouts take, for knots and splits` }),
    };
  });
}

/** More boards, where the maker wants more wood than the layouts have over their parts. */
function spareFor({ waste = 0 }: Stock, same: readonly Layout[], toBuy: number): number {
  if (waste === 0) return 0;
  const [one] = same as [Layout, ...Layout[]];
  const bought = same.filter(({ source }) => source === "buy");
  const wanted = toNumber(divide(partsOf(bought), multiply(one.width, one.length))) * (1 + waste);
  return Math.max(0, Math.ceil(wanted - 1e-9) - toBuy);
}

/** Rough boards are paid for by volume: by the layouts or with the waste that is assumed, whichever is more. */
function byVolume(
  stock: Stock,
  thickness: Length,
  laidOut: readonly Layout[],
  { units, milled, thicknesses }: { readonly units: Units } & Required<Pick<Used, "milled" | "thicknesses">>,
): readonly Purchase[] {
  const [volume, step, unit] =
    units === "inch" ? ([boardFeet, 10, "board feet"] as const) : ([cubicMetres, 1000, "m³"] as const);
  const sized = ({ width, length }: Pick<Layout, "width" | "length">): Rational => volume(thickness, width, length);
  const layouts = laidOut.filter(({ source }) => source === "buy");
  const had = laidOut.filter(({ source }) => source === "on hand");
  const parts = sum(layouts.flatMap(({ placements }) => placements).map(sized));
  const waste = stock.waste ?? RANDOM_WASTE;
  const more = multiply(parts, rational(Math.round((1 + waste) * 1000), 1000));
  const laid = sum(layouts.map(sized));
  const bought = rational(ceil(multiply(max(laid, more), rational(step))), step);
  const quantity = toNumber(bought);
  const boards =
    layouts.length === 1 ? "reckoned is the whole board of the layout" : "reckoned are the whole boards of the layouts";
  const assumed = layouts.length === 1 ? ", its width an assumption" : ", their widths an assumption";
  const counted = less(laid, more)
    ? `${Math.round(waste * 100)} % for knots, ends and sawing is assumed`
    : `${boards}${stock.assumed ? assumed : ""}`;
  const rough = sayLength(thickness, { units });
  const all = thicknesses.toSorted((a, b) => compare(b, a)).map((length) => sayLength(length, { units }));
  const shared = new Set(all).size > 1;
  const planed = [...new Set(all)].join(", some of it to ");
  const planing = milled
    ? `buy it rough, ${rough} thick: the steps tell when it is planed to ${planed}`
    : `buy it planed to ${planed}, or plane it from ${rough} before you cut it`;
  return [
    {
      section: "lumber",
      item: shared ? unplaned(stock.label) : stock.label,
      quantity,
      unit,
      price: stock.price === null ? null : inCents(stock.price * quantity),
      onHand: toNumber(rational(ceil(multiply(sum(had.map(sized)), rational(step))), step)),
      waste: layouts.length === 0 ? 0 : wasteOf(parts, bought),
      ...(layouts.length > 0 && { note: `${planing}; ${counted}` }),
    },
  ];
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

/** Of a sheet or board of this size; null where nobody said. */
export function priceOfOne(stock: Stock, size: Pick<Layout, "width" | "length">): number | null {
  const sold = stock.sold?.find((each) => sameSize(each, size));
  return sold?.price ?? (stock.sold === undefined && stock.soldLengths.length > 1 ? null : stock.price);
}

const bare = (length: Length, units: Units): string => printLength(length, { units }).text;

/** `48 × 96 in`, `8 ft`, `6 in × 8 ft`: the width only where the name does not give it. */
function sizeOf(stock: Stock, { width, length }: Pick<Layout, "width" | "length">, units: Units): string {
  if (stock.form === "sheet") return `${bare(width, units)} × ${sayLength(length, { units })}`;
  const long = sayBoardLength(length, units);
  if (stock.width === null || !equal(stock.width, width)) return `${sayLength(width, { units })} × ${long}`;
  // "2×4 spruce" says its section; a name of the maker's own does not.
  const named = /\d\s?×\s?\d/u.test(stock.label);
  return named ? long : `${bare(stock.thickness, units)} × ${sayLength(width, { units })}, ${long}`;
}
