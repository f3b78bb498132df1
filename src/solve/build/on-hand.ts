import type { Length } from "../../units/length.ts";
import { ceil, divide, less, max, multiply, rational, sign, subtract, sum, ZERO } from "../../units/rational.ts";
import type { Blank, Layout, LayoutProof } from "../build.ts";
import type { PieceOnHand, Stock } from "../design.ts";
import type { LaidOut, LayoutOptions } from "./cutting/ask.ts";
import { endLoss } from "./cutting/bins.ts";
import { pack } from "./cutting/greedy.ts";
import { type Item, makeBin, makeItem, type Usable } from "./cutting/item.ts";
import { layOut } from "./cutting/lay-out.ts";
import type { Board } from "./cutting/place.ts";
import { inOrder, RULES } from "./cutting/rules.ts";
import { sawBoard } from "./cutting/saw-board.ts";
import { TRIM, type Trim } from "./cutting/trim.ts";

/** Pieces of one stock beyond this number are not looked at. */
const MOST_PIECES = 100;

/** Lays blanks out on what lies in the workshop first, the smallest pieces before the larger, and the rest on what is bought. */
export function layOutInWorkshop(
  stock: readonly Stock[],
  blanks: readonly Blank[],
  kerf: Length,
  options: LayoutOptions = {},
): LaidOut {
  const trim = options.trim ?? TRIM[options.units ?? "inch"];
  const used = stock.map((each) => {
    const own = blanks.filter((blank) => blank.stock === each.name);
    return { stock: each, own, layouts: useUp(each, own, kerf, trim) };
  });
  const placed = new Set(used.flatMap(({ layouts }) => layouts.flatMap((l) => l.placements.map((p) => p.blank))));
  const rest = layOut(
    stock,
    blanks.filter(({ id }) => !placed.has(id)),
    kerf,
    options,
  );
  return {
    layouts: used.flatMap(({ stock: each, layouts }) => [
      ...layouts,
      ...rest.layouts.filter((layout) => layout.stock === each.name),
    ]),
    proof: used.flatMap(({ stock: each, own, layouts }) => {
      const proof = rest.proof.find(({ stocks }) => stocks.includes(each.name));
      return layouts.length === 0 ? (proof ?? []) : weaker(each, own, proof);
    }),
    findings: rest.findings,
  };
}

/** What is claimed of purchases after some blanks were cut from what there was: by area, since other blanks might have been. */
function weaker(stock: Stock, own: readonly Blank[], proof: LayoutProof | undefined): LayoutProof {
  const count = proof?.count ?? 0;
  const area = ({ width, length }: { readonly width: Length; readonly length: Length }): Length =>
    multiply(width, length);
  const had = sum((stock.onHand ?? []).map((piece) => multiply(area(piece), rational(piece.count))));
  const lacking = max(ZERO, subtract(sum(own.map(area)), had));
  const largest = multiply(stock.soldWidth, stock.soldLengths.reduce(max, ZERO));
  const countBound = Math.min(count, Number(ceil(divide(lacking, largest))));
  return {
    stocks: [stock.name],
    ...{ count, countBound, optimal: count === countBound && (count === 0 || !stock.assumed) },
    method: "area of the blanks, less that of all pieces on hand",
    assumes: proof === undefined ? "what lies in the workshop" : `what lies in the workshop; ${proof.assumes}`,
  };
}

function useUp(stock: Stock, blanks: readonly Blank[], kerf: Length, trim: Trim): readonly Layout[] {
  const pieces = (stock.onHand ?? [])
    .flatMap((piece) => Array.from({ length: Math.min(piece.count, MOST_PIECES) }, () => piece))
    .toSorted((a, b) => sign(subtract(multiply(a.width, a.length), multiply(b.width, b.length))))
    .slice(0, MOST_PIECES);
  let left = blanks.filter(
    ({ alike, thickness, why }) => alike === undefined && (why !== "as finished" || !less(stock.thickness, thickness)),
  );
  return pieces.flatMap((piece) => {
    const board = fullest(left, piece, roomOf(stock, piece, kerf, trim), kerf);
    if (board === null) return [];
    const layout = sawBoard(board, { ...stock, soldWidth: piece.width }, kerf, trim);
    const taken = new Set(layout.placements.map((placement) => placement.blank));
    left = left.filter(({ id }) => !taken.has(id));
    return [{ ...layout, source: "on hand" as const, piece: stock.label }];
  });
}

const roomOf = ({ form }: Stock, { width, length }: PieceOnHand, kerf: Length, trim: Trim): Usable =>
  form === "sheet"
    ? { width: subtract(width, trim.sheet), length: subtract(length, trim.sheet) }
    : { width, length: subtract(length, endLoss(kerf, trim)) };

/** As many blanks as a piece takes, the largest first; null where it takes none. */
function fullest(blanks: readonly Blank[], { width, length }: PieceOnHand, room: Usable, kerf: Length): Board | null {
  if (sign(room.width) <= 0 || sign(room.length) <= 0) return null;
  const bin = makeBin(room, kerf, { width, length }, 1);
  const fits = ({ shapes }: Item): boolean => shapes.some((s) => s.width <= bin.width && s.length <= bin.length);
  const areaOf = ({ shapes: [s] }: Item): number => s.width * s.length;
  const items = inOrder(blanks.map((blank) => makeItem(blank, kerf, room)).filter(fits), areaOf);
  let taken: readonly Item[] = [];
  let best: Board | null = null;
  for (const item of items) {
    const more = [...taken, item];
    if (more.reduce((so, each) => so + areaOf(each), 0) > bin.width * bin.length) continue;
    for (const rule of RULES) {
      const boards = pack(inOrder(more, rule.order), [bin], bin, rule, { spent: 0 });
      if (boards.length > 1) continue;
      [taken, best] = [more, boards[0] ?? null];
      break;
    }
  }
  return best;
}
