import type { Units } from "../../../parse/draft.ts";
import { type Length, sayLength } from "../../../units/index.ts";
import type { LayoutProof } from "../../build.ts";
import type { Stock } from "../../design.ts";
import type { Sold } from "./ask.ts";
import { sayBoardLength } from "./say-board.ts";
import type { Trim } from "./trim.ts";

const METHODS = {
  area: "area of the blanks, kerf included; small blanks left out where that tells more",
  patterns: "a linear programme over all edge-to-edge patterns, its prices proven in whole numbers",
  "every filling": "every way of filling a board, looked at in turn",
} as const;

interface Claim {
  readonly stock: Stock;
  readonly count: number;
  /** Fewest of the largest boards. */
  readonly countBound: number;
  readonly method: keyof typeof METHODS;
  readonly sold: readonly Sold[];
  /** In cents. */
  readonly cost?: number;
  readonly costBound?: number;
  readonly kerf: Length;
  readonly trim: Trim;
  readonly units: Units;
}

/**
 * How near a layout is to the fewest boards that could do. Nothing is claimed for boards whose size is assumed: real ones differ,
 * and have knots.
 */
export function prove({
  stock,
  count,
  countBound,
  method,
  sold,
  cost,
  costBound,
  kerf,
  trim,
  units,
}: Claim): LayoutProof {
  const say = (length: Length): string => sayLength(length, { units });
  const long = (length: Length): string => (stock.form === "sheet" ? say(length) : sayBoardLength(length, units));
  const widths = [...new Set(sold.map(({ width }) => say(width)))];
  const sizes =
    widths.length === 1
      ? `${widths[0]} × ${sold.map(({ length }) => long(length)).join(" or ")}`
      : sold.map(({ width, length }) => `${say(width)} × ${long(length)}`).join(" or ");
  const paid = cost !== undefined && costBound !== undefined;
  const trimmed =
    stock.form === "sheet"
      ? `sheets ${sizes} with ${say(trim.sheet)} squared off two edges`
      : `boards ${sizes} with one end trimmed by ${say(trim.boardEnd)}`;
  const random = stock.assumed ? "; the size of the boards is assumed, and real ones have knots" : "";
  return {
    stocks: [stock.name],
    count,
    countBound,
    ...(paid && { cost, costBound }),
    optimal:
      (paid ? cost === costBound || (sold.length === 1 && count === countBound) : count === countBound) &&
      !stock.assumed,
    method: METHODS[method],
    assumes: `cuts from edge to edge, kerf ${say(kerf)}, ${trimmed}${random}`,
  };
}
