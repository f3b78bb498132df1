export { type Drawing, NOT_TO_SCALE, type Pen } from "./drawing.ts";
export { type PieceViewOptions, pieceView } from "./piece-view.ts";
