import { inches, type Length } from "../../../units/length.ts";
import { less, max, min, sign, subtract, ZERO } from "../../../units/rational.ts";
import type { Cut, Layout, Rectangle } from "../../build.ts";
import type { Stock } from "../../design.ts";
import { endLoss } from "./bins.ts";
import type { Bin, Item } from "./item.ts";
import { type Board, contents } from "./place.ts";
import { saw } from "./saw.ts";
import { sawTree } from "./saw-tree.ts";
import { type Piece, partsIn } from "./search/problem.ts";
import type { Trim } from "./trim.ts";

/** An offcut is kept if its longer side measures this, and its shorter one the other. Common practice, no source. */
const KEEP = { longer: inches(12), shorter: { sheet: inches(4), board: inches(3, 2) } } as const;

/** A board and how it is taken apart, as the search found it. */
export interface Tree {
  readonly bin: Bin;
  readonly tree: Piece;
  readonly items: readonly Item[];
}

/**
 * A board or sheet as it is sawn. A sheet is squared on two edges before the first cut; the first cut of a board trims the end
 * at y = 0.
 */
export function sawBoard(board: Board | Tree, stock: Stock, kerf: Length, trim: Trim): Layout {
  const { soldWidth: width, soldLength: length, price } = board.bin;
  const sheet = stock.form === "sheet";
  const squaring = sheet ? trim.sheet : ZERO;
  const near = sheet ? squaring : endLoss(kerf, trim);
  const piece: Rectangle = { x: squaring, y: near, width: subtract(width, squaring), length: subtract(length, near) };
  const before = sheet ? [] : endCut(width, trim);
  const { cuts, placements, rests } =
    "tree" in board ? sawTree(piece, board.tree, board.items, kerf, before) : saw(piece, board.whole, kerf, before);
  const [first] =
    "tree" in board ? partsIn(board.tree).map((i) => board.items[i]) : contents(board.whole).map(({ item }) => item);
  return {
    stock: stock.name,
    kind: stock.form,
    source: "buy",
    // Wood that is planed afterwards is sawn as thick as it is sold.
    thickness: first?.blank.thickness ?? stock.thickness,
    ...(price !== null && { price }),
    width,
    length,
    kerf,
    squaring,
    placements,
    cuts,
    offcuts: rests.filter((rest) => isWorthKeeping(rest, KEEP.shorter[stock.form])),
  };
}

/** The cut that makes the near end of a board square. */
const endCut = (width: Length, { boardEnd: y }: Trim): readonly Cut[] =>
  sign(y) === 0 ? [] : [{ number: 1, kind: "crosscut", from: [ZERO, y], to: [width, y], fence: y }];

const isWorthKeeping = ({ width, length }: Rectangle, shorter: Length): boolean =>
  !less(max(width, length), KEEP.longer) && !less(min(width, length), shorter);
