export { realEdges } from "./edges.ts";
export { type RealFace, realFaces } from "./faces.ts";
export { type HiddenLineOptions, hiddenLines } from "./hidden.ts";
export { perView } from "./per-view.ts";
export { type Placed, Stage, stretch } from "./stage.ts";
export * from "./view.ts";
export { visibleFaces } from "./visible.ts";
