import type { Finding } from "../../../findings/finding.ts";
import { alikeNotOnOneSheet } from "../../../findings/rules/alike-not-on-one-sheet.ts";
import type { Span } from "../../../findings/span.ts";
import type { Length } from "../../../units/length.ts";
import type { Blank, Layout, LayoutProof } from "../../build.ts";
import type { Stock } from "../../design.ts";
import type { LaidOut, LayoutEffort, LayoutOptions } from "./ask.ts";
import { binsOf, soldOf, usableSize } from "./bins.ts";
import { fewestBoards } from "./bound.ts";
import { type Bin, type Item, makeItem, type Usable } from "./item.ts";
import { boardsOfAlike, judge } from "./judge.ts";
import { leastCost } from "./least-cost.ts";
import { cheapestLengths, isLengthwise } from "./lengthwise.ts";
import type { Board } from "./place.ts";
import { prove } from "./prove.ts";
import { sawBoard, type Tree } from "./saw-board.ts";
import { cheaper } from "./search/better.ts";
import { findBoards } from "./search.ts";
import { tooLarge } from "./too-large.ts";
import { TRIM } from "./trim.ts";

/**
 * Lays every blank out on boards and sheets of its stock, cut from edge to edge. Cheapest first (by area, since there are no
 * prices by length), then fewest, then fewest settings of the saw, then the largest offcut. A blank that no board can give is a
 * finding, and is left out. A blank of a stock that is not in the list is a fault of the program.
 */
export function layOut(
  stock: readonly Stock[],
  blanks: readonly Blank[],
  kerf: Length,
  { units = "inch", spans = new Map(), trim = TRIM[units], supply, effort = "quick" }: LayoutOptions = {},
): LaidOut {
  const homeless = blanks.find((blank) => !stock.some((each) => each.name === blank.stock));
  if (homeless !== undefined) throw new Error(`blank ${homeless.id} is of no stock of the plan`);
  const layouts: Layout[] = [];
  const proof: LayoutProof[] = [];
  const findings: Finding[] = [];
  for (const each of stock) {
    const sold = soldOf(each, supply?.get(each.name));
    const usable = usableSize(each, sold, kerf, trim);
    const own = blanks.filter((blank) => blank.stock === each.name);
    const all = own.map((blank) => makeItem(blank, kerf, usable));
    const { unfit, findings: found } = tooLarge(all, { stock: each, usable, spans, units });
    findings.push(...found);
    const items = all.filter((item) => !unfit.has(item));
    if (items.length === 0) continue;
    const bins = binsOf(each, sold, kerf, trim);
    const { boards, bound, method, least } = boardsFor(items, bins, usable, kerf, effort);
    layouts.push(...boards.map((board) => sawBoard(board, each, kerf, trim)));
    findings.push(...tornApart(boards, items, spans, each));
    const cost = boards.reduce((so, { bin }) => so + (bin.price ?? 0), 0);
    const priced = bins.every(({ price }) => price !== null);
    const claim = { stock: each, count: boards.length, countBound: bound, method, kerf, trim, units };
    proof.push(prove({ ...claim, sold, ...(priced && { cost, costBound: Math.min(cost, Math.ceil(least)) }) }));
  }
  return { layouts, proof, findings };
}

/**
 * Boards for the blanks of one stock: those that are easiest to cut of the cheapest that plain rules find; where these may not be the
 * cheapest, a search for cheaper ones, and a proof of how few there could be.
 */
function boardsFor(items: readonly Item[], bins: readonly Bin[], usable: Usable, kerf: Length, effort: LayoutEffort) {
  const area = fewestBoards(items, usable.width, usable.length, kerf);
  const least = leastCost(items, bins, area);
  const alike = items.some(({ blank }) => blank.alike !== undefined);
  const sameWidth = bins.every(({ width }) => width === bins[0]?.width);
  const lengthwise = sameWidth && isLengthwise(items, bins) ? cheapestLengths(items, bins) : undefined;
  const easy =
    lengthwise && judge(lengthwise).apart === 0
      ? lengthwise
      : sameWidth
        ? findBoards(items, bins, least, effort === "plain")
        : [];
  const cost = sameWidth ? easy.reduce((so, { bin }) => so + bin.cost, 0) : Number.POSITIVE_INFINITY;
  const method = "area" as "area" | "patterns";
  const exact = lengthwise !== undefined && easy === lengthwise && bins.length === 1;
  if (exact) return { boards: easy, bound: easy.length, method: "every filling" as const, least };
  if (cost <= least || items.length < 2 || (effort === "plain" && sameWidth))
    return { boards: easy, bound: area, method, least };
  const found = cheaper(items, bins, cost, least, effort === "plain" ? "quick" : effort);
  const bound = Math.max(area, found.bound);
  // What should come from one board stays together, if it costs a board more.
  const boards: readonly (Board | Tree)[] = found.boards === null || (alike && sameWidth) ? easy : found.boards;
  return { boards, bound, method: found.bound > area ? found.method : method, least };
}

/** Tells of blanks to be alike that lie on more than one board. */
const tornApart = (
  boards: readonly (Board | Tree)[],
  items: readonly Item[],
  spans: ReadonlyMap<string, Span>,
  stock: Stock,
): readonly Finding[] =>
  [...boardsOfAlike(boards.flatMap((board) => ("tree" in board ? [] : [board])))].flatMap(([name, { size }]) => {
    if (size < 2) return [];
    const parts = items.flatMap(({ blank }) => (blank.alike === name ? [blank.part] : []));
    return [alikeNotOnOneSheet(spans.get(parts[0] ?? "") ?? stock.at, { parts: [...new Set(parts)], boards: size })];
  });
