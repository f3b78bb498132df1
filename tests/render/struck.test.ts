import { expect, test } from "vitest";
import { stopDrawing } from "../../src/render/drawing/template/stop.ts";
import { BLACK, WHITE } from "../../src/render/palette.ts";
import { line, rectangle } from "../../src/render/shapes.ts";
import { inches } from "../../src/units/index.ts";
import { struckThrough } from "./struck.ts";

const text = { kind: "text", x: 20, y: 30, text: "12", font: "regular", size: 10, ink: BLACK, width: 11 } as const;
const stroke = { width: 0.35, ink: BLACK };
const through = line(0, 27, 60, 27, stroke);

test("a line through a text is seen, whichever is painted first", () => {
  expect(struckThrough([through, text])).toEqual(["12"]);
  expect(struckThrough([text, through])).toEqual(["12"]);
  expect(struckThrough([line(0, 40, 60, 40, stroke), line(10, 0, 10, 60, stroke), text])).toEqual([]);
});

test("a white ground between them covers the line, one below both does not", () => {
  const ground = rectangle(15, 20, 22, 14, { fill: WHITE });
  expect(struckThrough([through, ground, text])).toEqual([]);
  expect(struckThrough([ground, through, text])).toEqual(["12"]);
});

test("the picture of a drill is as long from the stop to the tip as its holes are deep", () => {
  const pen = { measure: () => 10, print: () => "" };
  const { items, width } = stopDrawing(inches(5, 16), inches(17, 16), pen);
  const [, stop] = items;
  const edges = stop?.kind === "path" ? stop.steps.flatMap((step) => (step.to === "close" ? [] : [step.x])) : [];
  // 1 1/16 in is 76.5 points; 4 points of air.
  expect(width - 4 - Math.max(...edges)).toBeCloseTo(76.5, 9);
});
