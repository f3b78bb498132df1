import type { Units } from "../../../parse/draft.ts";
import { compare, type Length, sayLength, sign } from "../../../units/index.ts";
import type { LayoutProof } from "../../build.ts";
import type { Stock } from "../../design.ts";
import type { Supply } from "./ask.ts";
import { sayBoardLength } from "./say-board.ts";
import type { Solved } from "./search/solve.ts";
import { isRough, type Size } from "./sizes.ts";
import type { Trim } from "./trim.ts";
import { arePriced } from "./whole.ts";

interface Claim {
  readonly stock: Stock;
  /** Those of which blanks are sawn from its boards. */
  readonly stocks: readonly string[];
  readonly sizes: readonly Size[];
  readonly supply: Supply;
  readonly found: Solved;
  readonly kerf: Length;
  readonly trim: Trim;
  readonly units: Units;
}

/**
 * How near a layout is to the least that could be bought. Nothing is claimed for boards whose size is assumed: real ones differ,
 * and have knots.
 */
export function prove({ stock, stocks, sizes, supply, found, kerf, trim, units }: Claim): LayoutProof {
  const { cost, costBound, count, countBound, by } = found;
  const say = (length: Length): string => sayLength(length, { units });
  const bought = sizes.filter(({ onHand }) => onHand === undefined);
  const widths = new Map<string, { width: Length; lengths: Length[] }>();
  for (const { width, length } of bought.toSorted((a, b) => compare(a.length, b.length))) {
    const same = widths.get(say(width));
    if (same === undefined) widths.set(say(width), { width, lengths: [length] });
    else same.lengths.push(length);
  }
  const lengthOf = (length: Length): string => (stock.form === "sheet" ? say(length) : sayBoardLength(length, units));
  const sold = [...widths.values()]
    .toSorted((a, b) => compare(a.width, b.width))
    .map(({ width, lengths }) => `${say(width)} × ${[...new Set(lengths.map(lengthOf))].join(" or ")}`)
    .join(" or ");
  const trimmed =
    stock.form === "sheet"
      ? `sheets ${sold} with ${say(trim.sheet)} squared off two edges`
      : `boards ${sold} with one end trimmed by ${say(trim.boardEnd)}${isRough(stock) ? ` and ${say(trim.roughEdge)} of the width for straightening an edge${trim.farEdge === false || sign(trim.roughEdge) === 0 ? "" : ", and a cut along the other"}` : ""}`;
  const there = supply.onHand.length === 0 ? "" : "what lies in the workshop; ";
  const carried = supply.carry && `, first cuts to ${say(supply.carry.shorter)} × ${say(supply.carry.longer)}`;
  const random = stock.assumed ? "; the size of the boards is assumed, and real ones have knots" : "";
  const priced = bought.length > 0 && arePriced(sizes);
  const reached = priced ? cost === costBound : count === countBound;
  return {
    stocks: [stock.name, ...stocks.filter((name) => name !== stock.name)],
    ...{ count, countBound },
    ...(priced && { cost, costBound }),
    optimal: reached && (count === 0 || !stock.assumed),
    method: METHODS[by],
    assumes: `${there}cuts from edge to edge, kerf ${say(kerf)}, ${trimmed}${carried ?? ""}${random}`,
  };
}

const METHODS: Readonly<Record<Solved["by"], string>> = {
  area: "area of the blanks, kerf included; small blanks left out where that tells more",
  patterns: "patterns of edge-to-edge cuts, each as often or as little as one likes, at the least cost",
  trying: "every way of filling a board",
};
