/** Small builds to draw, made by hand. */
export { bench } from "./fixture/bench.ts";
export { bookcase } from "./fixture/bookcase.ts";
export { boardLayout, crowdedLayout, sheetLayout } from "./fixture/layouts.ts";
export { at, pen } from "./fixture/making.ts";
