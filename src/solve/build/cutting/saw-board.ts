import { inches, type Length } from "../../../units/length.ts";
import { less, max, min, sign, subtract, ZERO } from "../../../units/rational.ts";
import type { Cut, Layout, Rectangle } from "../../build.ts";
import type { Stock } from "../../design.ts";
import { endLoss } from "./bins.ts";
import { type Board, contents } from "./place.ts";
import { saw } from "./saw.ts";
import type { Trim } from "./trim.ts";

/** An offcut is kept if its longer side measures this, and its shorter one the other. Common practice, no source. */
const KEEP = { longer: inches(12), shorter: { sheet: inches(4), board: inches(3, 2) } } as const;

/**
 * A board or sheet as it is sawn. A sheet is squared on two edges before the first cut; the first cut of a board trims the end
 * at y = 0.
 */
export function sawBoard(board: Board, stock: Stock, kerf: Length, trim: Trim): Layout {
  const [width, length] = [stock.soldWidth, board.bin.soldLength];
  const sheet = stock.form === "sheet";
  const squaring = sheet ? trim.sheet : ZERO;
  const near = sheet ? squaring : endLoss(kerf, trim);
  const piece: Rectangle = { x: squaring, y: near, width: subtract(width, squaring), length: subtract(length, near) };
  const { cuts, placements, rests } = saw(piece, board.whole, kerf, sheet ? [] : endCut(width, trim));
  return {
    stock: stock.name,
    kind: stock.form,
    source: "buy",
    // Wood that is planed afterwards is sawn as thick as it is sold.
    thickness: contents(board.whole)[0]?.item.blank.thickness ?? stock.thickness,
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
