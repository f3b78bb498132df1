/** Words below a step's picture. */
import type { Item } from "../../document.ts";
import { type Frame, TYPE } from "../../style.ts";
import { balloonBox, balloonReach, isName } from "../balloon.ts";
import type { Pen, Spot } from "../drawing.ts";
import { centred } from "../ink.ts";
import type { Manner } from "../place-balloons.ts";
import { type Box, boxAround, type Plate } from "../plate.ts";

/** From the lowest line to the middle of the words. */
const BELOW = 12;

/** Words, and where they stand; no box where they have a place of their own. */
export interface Captioned {
  readonly items: readonly Item[];
  readonly box: Box | null;
  /** They have no room in the frame. */
  readonly isUnder?: boolean;
}

/** Across, from words to a name that is read on with them; and what that counts, in points of a leader's length. */
const READ_ON = 60;
/** The same for a letter in its circle, which is read as the end of the line. */
const BESIDE = 24;
const IN_LINE = 150;

/** From words to what is drawn beside them, where there is so much room. */
const AIR = 8;

/** In the lower left or the lower right corner where there is room, else under the frame: never above. `lowest`: where the picture ends. */
export function captioned(words: string, lowest: number, plate: Plate, pen: Pen): Captioned {
  const { x, y, width, height } = plate.frame;
  const { font, size, ink } = TYPE.caption;
  const half = pen.measure(words, font, size) / 2 + 1;
  const level = Math.min(y + height - 7, lowest + BELOW);
  const corners = [x + half, x + width - half].map((cx): Spot => [cx, level]);
  const under: Spot = [x + half, y + height + UNDER - 6];
  const free =
    (air: number) =>
    ([cx, cy]: Spot): boolean => {
      const [left, right] = [Math.max(x, cx - half - air), Math.min(x + width, cx + half + air)];
      const box = boxAround((left + right) / 2, cy, right - left, 12);
      return plate.isFree(box) && plate.linesThrough(box) === 0;
    };
  const corner = corners.find(free(AIR)) ?? corners.find(free(0));
  const spot = corner ?? under;
  const { item, box } = centred(pen, words, spot, { font, size, ink });
  plate.addBox(box);
  return { items: [item], box, isUnder: corner === undefined };
}

/** What speaks against a name or a mark in the line of these words: it would be read on with them. */
export const offTheLine =
  ({ box }: Captioned, pen: Pen): NonNullable<Manner["toll"]> =>
  ({ mark }, centre) => {
    if (!box) return 0;
    const { left, right, top, bottom } = balloonBox(balloonReach(pen, mark), mark, centre);
    const [aside, above] = [Math.max(box.left - right, left - box.right), Math.max(box.top - bottom, top - box.bottom)];
    return aside < (isName(mark) ? READ_ON : BESIDE) && above < 0 ? IN_LINE : 0;
  };

/** So much lower than a picture with a border its words stand, in all. */
export const UNDER = 14;

/** The same for so many lines. */
export const underLines = (lines: readonly string[]): number =>
  lines.length === 0 ? 0 : UNDER + (lines.length - 1) * TYPE.caption.leading;

/** At the left below a picture with a border, or one that has the frame for itself. */
export function captionUnder(lines: readonly string[], { x, y, height }: Frame, pen: Pen): readonly Item[] {
  const { font, size, ink, leading } = TYPE.caption;
  return lines.map((line, i) => {
    const middle: Spot = [x + pen.measure(line, font, size) / 2, y + height + UNDER - 6 + i * leading];
    return centred(pen, line, middle, { font, size, ink }).item;
  });
}

/** The words in lines no wider, where no word is. */
export function inLines(words: string, width: number, { measure }: Pen): readonly string[] {
  const { font, size } = TYPE.caption;
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const longer = [...lines.slice(-1), word].join(" ");
    const fits = measure(longer, font, size) <= width;
    lines.splice(fits ? -1 : lines.length, 1, fits ? longer : word);
  }
  return lines;
}
