/** Dimension lines with letters instead of numbers, in rows beside a section. */
import type { Item } from "../../document.ts";
import { BLACK, WHITE } from "../../palette.ts";
import type { Pen, Spot } from "../drawing.ts";
import { arrowhead, centred, fills, strokes } from "../ink.ts";
import { type Box, grown, type Plate, type Segment } from "../plate.ts";
import { NARROW } from "../strokes.ts";

/** Of the sizes, in their order. */
export const LETTERS = "abcdefghijkmnpqrstuvwxyz";

/** Where it stands, as in the plane of the page. */
export type Beside = "above" | "below" | "left" | "right";

export interface Lettered {
  readonly letter: string;
  readonly from: Spot;
  readonly to: Spot;
  readonly beside: Beside;
}

/** From the section to the first row, from row to row, and past the last line; in points. */
const FIRST = 9;
export const PITCH = 13;
const PAST = 3;
const SIZE = 9;
/** A shorter line has its arrows outside; and so near to another in its row it has none on that side. */
const SHORT = 18;
const NEAR = 24;
const OUTSIDE = 9;
const ARROW = 4;

/** What so many rows take on a side. */
export const roomFor = (rows: number): number => (rows === 0 ? 4 : FIRST + (rows - 1) * PITCH + 8);

/** The letters of a side are rows from the inside out, in their order. */
export const rowsOf = (all: readonly Pick<Lettered, "letter" | "beside">[], beside: Beside): readonly string[] => [
  ...new Set(all.filter((one) => one.beside === beside).map(({ letter }) => letter)),
];

export function letterLines(all: readonly Lettered[], section: Box, plate: Plate, pen: Pen): readonly Item[] {
  return (["above", "below", "left", "right"] as const).flatMap((beside) =>
    rowsOf(all, beside).flatMap((letter, i) => {
      const own = all.filter((one) => one.beside === beside && one.letter === letter);
      return rowAt(own, levelOf(section, beside, FIRST + i * PITCH), beside, plate, pen);
    }),
  );
}

const levelOf = ({ left, right, top, bottom }: Box, beside: Beside, out: number): number =>
  ({ above: top - out, below: bottom + out, left: left - out, right: right + out })[beside];

/** All of one letter, in one line. */
function rowAt(all: readonly Lettered[], level: number, beside: Beside, plate: Plate, pen: Pen): readonly Item[] {
  const isLevel = beside === "above" || beside === "below";
  const past = beside === "above" || beside === "left" ? -PAST : PAST;
  const spot = (along: number, across: number): Spot => (isLevel ? [along, across] : [across, along]);
  const along = (p: Spot): number => p[isLevel ? 0 : 1];
  const across = (p: Spot): number => p[isLevel ? 1 : 0];
  const runs = all
    .map(({ letter, from, to }) => {
      const [low, high] = along(from) < along(to) ? [from, to] : [to, from];
      return { letter, low, high };
    })
    .sort((a, b) => along(a.low) - along(b.low));
  return runs.flatMap(({ letter, low, high }, i) => {
    const [a, b] = [along(low), along(high)];
    const before = runs[i - 1];
    const after = runs[i + 1];
    const isShort = b - a < SHORT;
    const free = {
      before: !before || a - along(before.high) > NEAR,
      after: !after || along(after.low) - b > NEAR,
    };
    const ends = isShort ? [free.before ? a - OUTSIDE : a, free.after ? b + OUTSIDE : b] : [a, b];
    const lines: readonly Segment[] = [
      [spot(a, across(low)), spot(a, level + past)],
      [spot(b, across(high)), spot(b, level + past)],
      [spot(ends[0] as number, level), spot(ends[1] as number, level)],
    ];
    const way = (sign: number): Spot => (isLevel ? [sign, 0] : [0, sign]);
    const at = !isShort ? (a + b) / 2 : free.after ? b + OUTSIDE + 4 : a - OUTSIDE - 4;
    const { item, box } = centred(pen, letter, spot(at, level), { font: "italic", size: SIZE });
    for (const each of lines) plate.addLine(each);
    plate.addBox(grown(box, 1));
    return [
      ...strokes(lines, NARROW),
      ...(isShort && !free.before ? [] : [arrowhead(spot(a, level), way(isShort ? 1 : -1), BLACK, ARROW)]),
      ...(isShort && !free.after ? [] : [arrowhead(spot(b, level), way(isShort ? -1 : 1), BLACK, ARROW)]),
      ...fills([cornersOf(grown(box, 1))], WHITE),
      item,
    ];
  });
}

const cornersOf = ({ left, right, top, bottom }: Box): readonly Spot[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];
