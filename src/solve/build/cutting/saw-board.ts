import { add, equal, inches, type Length, less, max, min, sign, subtract, ZERO } from "../../../units/index.ts";
import type { Cut, Layout, Rectangle } from "../../build.ts";
import type { Stock } from "../../design.ts";
import type { Item } from "./item.ts";
import { saw } from "./saw.ts";
import { type Piece, partsIn } from "./search/problem.ts";
import { endLoss, type Size } from "./sizes.ts";

/** An offcut is kept if its longer side measures this, and its shorter one the other. Common practice, no source. */
const KEEP = { longer: inches(12), shorter: { sheet: inches(4), board: inches(3, 2) } } as const;

/**
 * A board or sheet as it is sawn. A sheet is squared on two edges before the first cut; the first cut of a board trims the end
 * at y = 0.
 */
export function sawBoard(root: Piece, size: Size, items: readonly Item[], stock: Stock, kerf: Length): Layout {
  const { width, length, trimmed, straightened = ZERO, onHand, price } = size;
  const sheet = stock.form === "sheet";
  const kind = sheet ? "sheet" : "board";
  const squaring = sheet ? trimmed : ZERO;
  const near = sheet ? squaring : endLoss(kerf, trimmed);
  const piece: Rectangle = { x: squaring, y: near, width: subtract(width, squaring), length: subtract(length, near) };
  const { cuts, placements, rests } = saw(piece, root, items, kerf, sheet ? [] : endCut(width, trimmed));
  const [first] = partsIn(root);
  return {
    stock: stock.name,
    kind,
    ...(onHand === undefined
      ? { source: "buy" as const, ...(price !== null && { price }) }
      : { source: "on hand" as const, piece: onHand.name }),
    // Wood that is planed afterwards is sawn as thick as it is sold.
    thickness: items[first ?? -1]?.blank.thickness ?? stock.thickness,
    width,
    length,
    kerf,
    squaring,
    placements,
    cuts,
    offcuts: rests
      .map((rest) => besideStraight(rest, width, straightened))
      .filter((rest) => isWorthKeeping(rest, KEEP.shorter[kind])),
  };
}

/** The cut that makes the near end of a board square. */
const endCut = (width: Length, y: Length): readonly Cut[] =>
  sign(y) === 0 ? [] : [{ number: 1, kind: "crosscut", from: [ZERO, y], to: [width, y], fence: y }];

/** What is left at the far edge of a rough board is narrower by what came off the edge that it was ripped along. */
const besideStraight = (rest: Rectangle, width: Length, straightened: Length): Rectangle =>
  sign(rest.x) > 0 && equal(add(rest.x, rest.width), width)
    ? { ...rest, width: max(subtract(rest.width, straightened), ZERO) }
    : rest;

const isWorthKeeping = ({ width, length }: Rectangle, shorter: Length): boolean =>
  !less(max(width, length), KEEP.longer) && !less(min(width, length), shorter);
