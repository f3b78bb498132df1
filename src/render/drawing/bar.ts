/** The scale in words, with a bar to lay a rule on: it shows whether the printer kept the size. */
import type { Units } from "../../solve/design.ts";
import { inches, type Length, millimetres, toNumber } from "../../units/index.ts";
import type { Item } from "../document.ts";
import { BLACK, GREY, WHITE } from "../palette.ts";
import { bounds, leaves, rectangle } from "../shapes.ts";
import type { Pen, Spot } from "./drawing.ts";
import { letterHeight } from "./ink.ts";
import type { Plate } from "./plate.ts";
import type { Scale } from "./scale.ts";

const INCH_STEPS: readonly Length[] = [1, 2, 3, 6, 12, 24, 48, 96].map((n) => inches(n));
const METRIC_STEPS: readonly Length[] = [10, 20, 50, 100, 200, 500, 1000, 2000].map((n) => millimetres(n));

export const BAR_HEIGHT = 14;

/** With its left end and baseline at the spot; about an inch long. */
export function scaleBar(scale: Scale, units: Units, pen: Pen, [x, y]: Spot): readonly Item[] {
  const steps = units === "mm" ? METRIC_STEPS : INCH_STEPS;
  const step = steps.find((s) => toNumber(s) * scale.points >= 54) ?? steps.at(-1) ?? inches(1);
  const long = toNumber(step) * scale.points;
  const words = `Scale ${scale.text}`;
  const label = `${pen.print(step)} ${units === "mm" ? "mm" : "in"}`;
  const width = pen.measure(words, "regular", 10);
  const start = x + width + 10;
  const stroke = { width: 0.5, ink: BLACK };
  const quarter = (i: number): Item =>
    rectangle(start + (long * i) / 4, y - 5, long / 4, 3.5, { stroke, fill: i % 2 === 0 ? BLACK : WHITE });
  const text = (at: number, value: string, size = 10): Item => ({
    kind: "text",
    x: at,
    y,
    text: value,
    font: "regular",
    size,
    ink: GREY,
    width: pen.measure(value, "regular", size),
  });
  return [text(x, words), quarter(0), quarter(1), quarter(2), quarter(3), text(start + long + 5, label)];
}

export type Bar = (spot: Spot) => readonly Item[];

/** Round the bar, and down to the next line. */
const AROUND = 4;
const NEXT = 24;

/** The bar at the left, level with the lowest caption where it is free there, else below it; nothing where it does not go in. */
export function barBeside(middle: number, plate: Plate, bar: Bar): readonly Item[] {
  const { x } = plate.frame;
  const free = [middle + letterHeight(10) / 2, middle + NEXT]
    .map((y) => bar([x, y]))
    .find((items) => {
      const [left, top, right, bottom] = bounds(leaves(items));
      return plate.isFree({ left, top: top - AROUND, right: right + AROUND, bottom: bottom + 2 });
    });
  return free ?? [];
}
