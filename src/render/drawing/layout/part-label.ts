/** Mark and size of a part on a board, inside it where they fit, along or across. */
import type { Item } from "../../document.ts";
import { BLACK } from "../../palette.ts";
import { CAP_HEIGHT } from "../../typeset/measure.ts";
import { MARK_SIZE } from "../balloon.ts";
import type { Pen, Spot } from "../drawing.ts";
import { type Box, boxAround, type Plate } from "../plate.ts";

interface Run {
  readonly text: string;
  readonly font: "bold" | "regular";
  readonly size: number;
}

const AIR = 3.5;
/** Above and below together: commas and fractions reach below the line, a mark alone does not. */
const UPRIGHT = 6;
const MARK_ONLY = 4;
/** Of a mark where the usual one does not go in. */
const SMALL = 10;
const BETWEEN = 5;

/** "7 × 25" on two lines. */
const brokenSize = (size: string): readonly string[] =>
  size.split(" × ").map((each, i, all) => (i < all.length - 1 ? `${each} ×` : each));

/**
 * The lines of a label, and whether they are turned, by how much they say and how well: mark and size in a line, in two or three lines, the mark alone, the
 * mark smaller. On a board that lies down a size runs along it as long as it goes in, or the long way would be taken for the one across.
 */
function forms(mark: string, size: string, lying: boolean) {
  const big: Run = { text: mark, font: "bold", size: MARK_SIZE };
  const small = (text: string): Run => ({ text, font: "regular", size: 10 });
  const alone = [[[big]], [[{ ...big, size: SMALL }]]];
  const both = size === "" ? [] : [[[big, small(size)]], [[big], [small(size)]]];
  const high = size === "" || !lying ? [] : [[[big], ...brokenSize(size).map((text) => [small(text)])]];
  const each = (all: readonly (readonly (readonly Run[])[])[], turns: readonly boolean[]) =>
    all.flatMap((lines) => turns.map((turned) => ({ lines, turned })));
  const told = lying ? [...each([...both, ...high], [false]), ...each(both, [true])] : each(both, [false, true]);
  return [...told, ...each(alone, [false, true])];
}

const LINE = 14;
const widthOf = (pen: Pen, line: readonly Run[]): number =>
  line.reduce((sum, run) => sum + pen.measure(run.text, run.font, run.size), (line.length - 1) * BETWEEN);

/** Returns null where not even the mark fits. */
export function labelInside(
  pen: Pen,
  mark: string,
  size: string,
  box: Box,
  plate: Plate,
  lying = false,
): readonly Item[] | null {
  const [wide, high] = [box.right - box.left, box.bottom - box.top];
  for (const { lines, turned } of forms(mark, size, lying)) {
    const [across, along] = turned ? [high, wide] : [wide, high];
    const width = Math.max(...lines.map((line) => widthOf(pen, line)));
    const height = (lines.length - 1) * LINE + (lines[0]?.[0]?.size ?? MARK_SIZE) * CAP_HEIGHT;
    const upright = lines.flat().length === 1 ? MARK_ONLY : UPRIGHT;
    if (width + 2 * AIR > across || height + upright > along) continue;
    const middle: Spot = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
    const down = (i: number): number => (i - (lines.length - 1) / 2) * LINE;
    // Each line by itself: beside a short one there is room for the number of a cut.
    for (const [i, line] of lines.entries()) {
      const [wider, higher] = [widthOf(pen, line) + 2, height - (lines.length - 1) * LINE + 5];
      const [x, y] = middle;
      plate.addBox(turned ? boxAround(x + down(i), y, higher, wider) : boxAround(x, y + down(i), wider, higher));
    }
    return lines.flatMap((line, i) => setLine(pen, line, middle, down(i), turned));
  }
  return null;
}

/** One line, centred on the spot and `down` points below it, or with the page turned a quarter to the left. */
function setLine(pen: Pen, line: readonly Run[], [x, y]: Spot, down: number, turned: boolean): readonly Item[] {
  let at = -widthOf(pen, line) / 2;
  return line.map(({ text, font, size }): Item => {
    const width = pen.measure(text, font, size);
    const base = down + (size * CAP_HEIGHT) / 2;
    const start = at;
    at += width + BETWEEN;
    const common = { kind: "text", text, font, size, ink: BLACK, width } as const;
    return turned ? { ...common, x: x + base, y: y - start, turn: 90 } : { ...common, x: x + start, y: y + base };
  });
}
