/** Two bars of known length, to lay a rule on before anything is traced: 4 inches, and 100 mm below. */
import { inches, type Length, millimetres, toNumber, UNITS_PER_INCH } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { BLACK, WHITE } from "../../palette.ts";
import { rectangle } from "../../shapes.ts";
import type { Drawing, Pen } from "../drawing.ts";

/** In its true size: 72 points are an inch. */
export const truePoints = (length: Length): number => (toNumber(length) * 72) / UNITS_PER_INCH;

const BARS = [
  { step: inches(1), count: 4, label: "4 in" },
  { step: millimetres(10), count: 10, label: "100 mm" },
] as const;
const HIGH = 6;
const PITCH = 15;
const SIZE = 10;
const STROKE = { width: 0.5, ink: BLACK } as const;

export const PRINT_BAR = { width: truePoints(inches(4)) + 48, height: 2 * PITCH } as const;

/** From the top left corner (0, 0). */
export function printBar(pen: Pen): Drawing {
  const items = BARS.flatMap(({ step, count, label }, row): Item[] => {
    const [wide, y] = [truePoints(step), row * PITCH + 4];
    const cells = Array.from({ length: count }, (_, i) =>
      rectangle(i * wide, y, wide, HIGH, { stroke: STROKE, fill: i % 2 === 0 ? BLACK : WHITE }),
    );
    const text: Item = {
      ...{ kind: "text", x: count * wide + 6, y: y + HIGH + 0.5, text: label, font: "regular", size: SIZE },
      ...{ ink: BLACK, width: pen.measure(label, "regular", SIZE) },
    };
    return [...cells, text];
  });
  return { items, alt: "Two bars to measure: 4 inches, and 100 millimetres.", scale: "1:1" };
}
