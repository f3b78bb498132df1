/** Words in a corner of a step's picture. */
import type { Item } from "../../document.ts";
import { type Frame, TYPE } from "../../style.ts";
import type { Pen, Spot } from "../drawing.ts";
import { centred } from "../ink.ts";
import { boxAround, type Plate } from "../plate.ts";

/** From the lowest line to the middle of the words. */
const BELOW = 12;

/** In the first corner where there is room for it, the lower left one at last; `lowest`: where the picture ends. */
export function captioned(words: string, lowest: number, plate: Plate, pen: Pen): readonly Item[] {
  const { x, y, width, height } = plate.frame;
  const { font, size, ink } = TYPE.caption;
  const half = pen.measure(words, font, size) / 2 + 1;
  const corners = [x + half, x + width - half].flatMap((cx) =>
    [Math.min(y + height - 7, lowest + BELOW), y + 7].map((cy): Spot => [cx, cy]),
  );
  const free = ([cx, cy]: Spot): boolean => {
    const box = boxAround(cx, cy, 2 * half, 12);
    return plate.isFree(box) && plate.linesThrough(box) === 0;
  };
  const { item, box } = centred(pen, words, corners.find(free) ?? (corners[0] as Spot), { font, size, ink });
  plate.addBox(box);
  return [item];
}

/** So much lower than a picture with a border its words stand, in all. */
export const UNDER = 14;

/** At the left below a picture with a border. */
export function captionUnder(words: string, { x, y, height }: Frame, pen: Pen): Item {
  const { font, size, ink } = TYPE.caption;
  const half = pen.measure(words, font, size) / 2;
  return centred(pen, words, [x + half, y + height + UNDER - 6], { font, size, ink }).item;
}
