import { add, type Length, max, multiply, sign, subtract, toNumber, ZERO } from "../../../units/index.ts";
import type { Stock } from "../../design.ts";
import type { OnHand, Sold, Supply } from "./ask.ts";
import type { Usable } from "./item.ts";
import type { Trim } from "./trim.ts";

/** A size of sheet or board, sold or on hand, and what is left of it when it is trimmed. */
export interface Size {
  readonly width: Length;
  readonly length: Length;
  readonly usable: Usable;
  /** Cents; null where it is not known or not bought. */
  readonly price: number | null;
  readonly onHand?: OnHand;
  /** What comes off two edges of a sheet; of a board, off its end. */
  readonly trimmed: Length;
  /** What comes off an edge of a rough board when that is straightened. */
  readonly straightened?: Length;
}

/** Sold in the sizes that the design gives, without prices. */
export const plainSupply = ({ soldWidth, soldLengths }: Stock): Supply => ({
  sold: soldLengths.map((length) => ({ width: soldWidth, length, price: null })),
  onHand: [],
});

/** All sizes of which something is left when they are trimmed: what lies there, then what is sold, each the smallest first. */
export function sizesOf(stock: Stock, supply: Supply, kerf: Length, trim: Trim): readonly Size[] {
  const size = (piece: Sold | OnHand, squared: boolean): Size => {
    const { width, length } = piece;
    const trimmed = squared ? ZERO : stock.form === "sheet" ? trim.sheet : trim.boardEnd;
    const rough = isRough(stock) && !squared;
    const edge = rough ? edgeLoss(kerf, trim) : ZERO;
    const off = stock.form === "sheet" ? { x: trimmed, y: trimmed } : { x: edge, y: endLoss(kerf, trimmed) };
    const usable = { width: subtract(width, off.x), length: subtract(length, off.y) };
    return {
      ...{ width, length, usable, trimmed, price: "price" in piece ? piece.price : null },
      ...(rough && { straightened: trim.roughEdge }),
    };
  };
  const area = (each: Size): number => toNumber(multiply(each.width, each.length));
  const inOrder = (sizes: readonly Size[]): readonly Size[] =>
    sizes
      .filter(({ usable }) => sign(usable.width) > 0 && sign(usable.length) > 0)
      .toSorted((a, b) => area(a) - area(b));
  return [
    ...inOrder(supply.onHand.map((piece) => ({ ...size(piece, piece.squared === true), onHand: piece }))),
    ...inOrder(supply.sold.map((piece) => size(piece, false))),
  ];
}

/** Whether the boards of a stock have no straight edge when they are bought. */
export const isRough = ({ form, bought }: Stock): boolean => form === "board" && bought?.rough === true;

/** What a board loses at its trimmed end: the piece that falls off, and the kerf. */
export const endLoss = (kerf: Length, boardEnd: Length): Length => (sign(boardEnd) === 0 ? ZERO : add(boardEnd, kerf));

/** What a rough board loses of its width: the edge that is straightened, and the kerf of the cut that brings the other edge off. */
const edgeLoss = (kerf: Length, { roughEdge, farEdge = true }: Trim): Length =>
  sign(roughEdge) === 0 || !farEdge ? roughEdge : add(roughEdge, kerf);

/** The largest piece that any size gives: where none is largest both ways, that of the largest area. */
export function largestUsable(sizes: readonly Size[]): Usable {
  const width = sizes.map(({ usable }) => usable.width).reduce(max, ZERO);
  const longest = sizes.map(({ usable }) => usable.length).reduce(max, ZERO);
  return sizes.at(-1)?.usable ?? { width, length: longest };
}
