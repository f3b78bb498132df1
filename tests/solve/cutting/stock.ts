import type { Blank } from "../../../src/solve/build.ts";
import type { Stock } from "../../../src/solve/design.ts";
import { inches, type Length } from "../../../src/units/index.ts";

const AT = { start: 0, end: 1, line: 1, column: 1 };

export const sheet = (width: Length, length: Length, more: Partial<Stock> = {}): Stock => ({
  name: "ply",
  at: AT,
  form: "sheet",
  label: "3/4 birch plywood",
  species: "birch",
  softwood: false,
  thickness: inches(23, 32),
  width: null,
  soldWidth: width,
  soldLengths: [length],
  assumed: false,
  density: 500,
  roughThickness: null,
  price: null,
  ...more,
});

export const board = (width: Length, lengths: readonly Length[], more: Partial<Stock> = {}): Stock => ({
  ...sheet(width, inches(96)),
  name: "lumber",
  form: "board",
  label: "2×4 spruce",
  species: "spruce",
  softwood: true,
  thickness: inches(3, 2),
  width,
  soldLengths: lengths,
  ...more,
});

/** A blank of the stock's thickness. Each one is a part of its own. */
export const blank = (stock: Stock, id: string, width: Length, length: Length, more: Partial<Blank> = {}): Blank => ({
  id,
  part: `part.${id}`,
  mark: id.toUpperCase(),
  stock: stock.name,
  thickness: stock.thickness,
  width,
  length,
  grain: "length",
  why: "as finished",
  ...more,
});
