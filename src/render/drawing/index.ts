export { type Drawing, NOT_TO_SCALE, type Pen } from "./drawing.ts";
export { type ExplodedOptions, explodedView } from "./exploded/exploded.ts";
export { type TakenApart, takeApart } from "./exploded/take-apart.ts";
export { type LayoutDrawingOptions, layoutDrawing } from "./layout/layout-drawing.ts";
export { type PieceViewOptions, pieceView } from "./piece-view.ts";
export { sections } from "./sections/sections.ts";
export type { StepPicture, StepPictureOptions, Take } from "./step/asked.ts";
export { stepPicture } from "./step/step-picture.ts";
export { type ThreeViewsOptions, threeViews } from "./three-views/three-views.ts";
