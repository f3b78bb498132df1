export * from "./from-first.ts";
export * from "./length.ts";
export * from "./print-length.ts";
export * from "./rational.ts";
export * from "./read-measure.ts";
export * from "./round.ts";
export type { Measure, MeasureProblem } from "./scan-measure.ts";
export { scanMeasure } from "./scan-measure.ts";
export { tellLength } from "./tell-length.ts";
