import type { Finding } from "../../../findings/finding.ts";
import { alikeNotOnOneSheet } from "../../../findings/rules/alike-not-on-one-sheet.ts";
import type { Span } from "../../../findings/span.ts";
import type { Length } from "../../../units/length.ts";
import type { Blank, Layout, LayoutProof } from "../../build.ts";
import type { Stock } from "../../design.ts";
import type { LaidOut, LayoutOptions } from "./ask.ts";
import { binsOf, usableSize } from "./bins.ts";
import { fewestBoards } from "./bound.ts";
import { type Item, makeItem } from "./item.ts";
import { boardsOfAlike, judge } from "./judge.ts";
import { leastCost } from "./least-cost.ts";
import { cheapestLengths, isLengthwise } from "./lengthwise.ts";
import type { Board } from "./place.ts";
import { prove } from "./prove.ts";
import { sawBoard } from "./saw-board.ts";
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
  { units = "inch", spans = new Map(), trim = TRIM[units] }: LayoutOptions = {},
): LaidOut {
  const homeless = blanks.find((blank) => !stock.some((each) => each.name === blank.stock));
  if (homeless !== undefined) throw new Error(`blank ${homeless.id} is of no stock of the plan`);
  const layouts: Layout[] = [];
  const proof: LayoutProof[] = [];
  const findings: Finding[] = [];
  for (const each of stock) {
    const usable = usableSize(each, kerf, trim);
    const own = blanks.filter((blank) => blank.stock === each.name);
    const all = own.map((blank) => makeItem(blank, kerf, usable));
    const { unfit, findings: found } = tooLarge(all, { stock: each, usable, spans, units });
    findings.push(...found);
    const items = all.filter((item) => !unfit.has(item));
    if (items.length === 0) continue;
    const bins = binsOf(each, kerf, trim);
    const bound = fewestBoards(items, usable.width, usable.length, kerf);
    const lengthwise = isLengthwise(items, bins) ? cheapestLengths(items, bins) : undefined;
    const cheapest = lengthwise && judge(lengthwise).apart === 0 ? lengthwise : undefined;
    const boards = cheapest ?? findBoards(items, bins, leastCost(items, bins, bound));
    layouts.push(...boards.map((board) => sawBoard(board, each, kerf, trim)));
    findings.push(...tornApart(boards, items, spans, each));
    proof.push(prove({ stock: each, count: boards.length, countBound: bound, kerf, trim, units }));
  }
  return { layouts, proof, findings };
}

/** Tells of blanks to be alike that lie on more than one board. */
const tornApart = (
  boards: readonly Board[],
  items: readonly Item[],
  spans: ReadonlyMap<string, Span>,
  stock: Stock,
): readonly Finding[] =>
  [...boardsOfAlike(boards)].flatMap(([name, { size }]) => {
    if (size < 2) return [];
    const parts = items.flatMap(({ blank }) => (blank.alike === name ? [blank.part] : []));
    return [alikeNotOnOneSheet(spans.get(parts[0] ?? "") ?? stock.at, { parts: [...new Set(parts)], boards: size })];
  });
