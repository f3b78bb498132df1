import type { Units } from "../../../parse/draft.ts";
import { type Length, sayLength } from "../../../units/index.ts";
import type { LayoutProof } from "../../build.ts";
import type { Stock } from "../../design.ts";
import { sayBoardLength } from "./say-board.ts";
import type { Trim } from "./trim.ts";

interface Claim {
  readonly stock: Stock;
  readonly count: number;
  /** Fewest of the largest boards. */
  readonly countBound: number;
  readonly kerf: Length;
  readonly trim: Trim;
  readonly units: Units;
}

/**
 * How near a layout is to the fewest boards that could do. Nothing is claimed for boards whose size is assumed: real ones differ,
 * and have knots.
 */
export function prove({ stock, count, countBound, kerf, trim, units }: Claim): LayoutProof {
  const say = (length: Length): string => sayLength(length, { units });
  const lengths = stock.soldLengths.map((length) =>
    stock.form === "sheet" ? say(length) : sayBoardLength(length, units),
  );
  const sizes = `${say(stock.soldWidth)} × ${lengths.join(" or ")}`;
  const trimmed =
    stock.form === "sheet"
      ? `sheets ${sizes} with ${say(trim.sheet)} squared off two edges`
      : `boards ${sizes} with one end trimmed by ${say(trim.boardEnd)}`;
  const random = stock.assumed ? "; the size of the boards is assumed, and real ones have knots" : "";
  return {
    stocks: [stock.name],
    count,
    countBound,
    optimal: count === countBound && !stock.assumed,
    method: "area of the blanks, kerf included; small blanks left out where that tells more",
    assumes: `cuts from edge to edge, kerf ${say(kerf)}, ${trimmed}${random}`,
  };
}
