/** So many kinds on the bench that marks round a picture would crowd: each lies in a row seen from above, its mark at its end. */
import { minus } from "../../../geometry/vec.ts";
import type { Build, Step } from "../../../solve/build.ts";
import type { Item } from "../../document.ts";
import { TINT } from "../../palette.ts";
import { rectangle } from "../../shapes.ts";
import type { Frame } from "../../style.ts";
import { balloon, balloonReach, LARGE } from "../balloon.ts";
import { NOT_TO_SCALE, type Pen } from "../drawing.ts";
import { FINE } from "../strokes.ts";
import { stepInWords } from "../words.ts";
import type { StepPicture, StepPictureOptions } from "./asked.ts";
import { captionUnder, UNDER } from "./captions.ts";
import type { Scene } from "./scene.ts";

/** More kinds than this are drawn so. */
const MANY = 12;
/** From one mark to the next below it, from a piece to its mark, and between columns, in points. */
const APART = 3;
const BEFORE = 4;
const BETWEEN = 12;
/** A piece is drawn no thinner. */
const THIN = 1.6;
/** In a lower frame the longest piece is no shorter, in points: they would be specks beside their marks. */
const LONG = 48;
const WORDS = "Seen from above, all to one scale";

interface Row {
  readonly mark: string;
  readonly long: number;
  readonly wide: number;
}

/** Null where fewer kinds lie there, or boards of one part lie together. */
export function pictureFromAbove(
  build: Build,
  step: Step,
  { items, pencil }: Scene,
  { frame: given, pen, tall = 0 }: StepPictureOptions,
): StepPicture | null {
  const rows = items
    .filter(({ mark }) => mark !== "")
    .map(({ mark, solid }): Row => {
      const [long, wide] = minus(solid.high, solid.low);
      return { mark, long, wide };
    });
  if (!step.shows.as || pencil.length > 0 || rows.length <= MANY) return null;
  const frame = { ...given, height: Math.max(given.height, tall) };
  const inside = (where: Frame) => ({
    items: inRows(rows, where, pen),
    alt: `${stepInWords(build, step, { name: "above" })} Each kind lies in a row of its own.`,
    scale: NOT_TO_SCALE,
  });
  return {
    ...inside(frame),
    ...{ take: null, two: null, close: null, key: JSON.stringify(rows), frame, highest: 0 },
    within: (size) => {
      const where = { ...frame, ...size };
      return where.height < frame.height && longestIn(rows, where, pen) < LONG ? null : inside(where);
    },
  };
}

interface Column {
  readonly rows: readonly Row[];
  /** Room for the widest mark. */
  readonly marks: number;
}

/** The longest first, down the columns; in so many columns that they are largest. */
function largest(rows: readonly Row[], frame: Frame, pen: Pen): readonly Column[] {
  const most = Math.max(1, Math.floor((frame.height - UNDER) / PITCH));
  const sets = rows.flatMap((_, i) => (Math.ceil(rows.length / (i + 1)) <= most ? [columnsOf(rows, i + 1, pen)] : []));
  const [first = columnsOf(rows, rows.length, pen), ...others] = sets;
  return others.reduce((best, set) => (scaleOf(set, frame) > scaleOf(best, frame) ? set : best), first);
}

/** How long the longest is drawn, in points. */
const longestIn = (rows: readonly Row[], frame: Frame, pen: Pen): number =>
  longest(rows) * scaleOf(largest(rows, frame, pen), frame);

function inRows(rows: readonly Row[], frame: Frame, pen: Pen): readonly Item[] {
  const columns = largest(rows, frame, pen);
  const scale = scaleOf(columns, frame);
  let x = frame.x;
  let lowest = frame.y;
  const drawn: Item[] = [];
  for (const { rows: own, marks } of columns) {
    let y = frame.y;
    for (const { mark, long, wide } of own) {
      const high = Math.max(THIN, wide * scale);
      const room = Math.max(PITCH, high + APART);
      const reach = balloonReach(pen, mark);
      const middle = y + room / 2;
      drawn.push(
        rectangle(x, middle - high / 2, long * scale, high, { fill: TINT.light, stroke: FINE }),
        ...balloon(pen, mark, [x + long * scale + BEFORE + reach, middle]),
      );
      y += room;
    }
    lowest = Math.max(lowest, y);
    x += longest(own) * scale + marks + BEFORE + BETWEEN;
  }
  return [...drawn, ...captionUnder([WORDS], { ...frame, height: lowest - frame.y }, pen)];
}

const PITCH = 2 * LARGE.radius + APART;
const longest = (rows: readonly Row[]): number => Math.max(...rows.map(({ long }) => long));

function columnsOf(rows: readonly Row[], count: number, pen: Pen): readonly Column[] {
  const sorted = rows.toSorted((a, b) => b.long - a.long);
  const each = Math.ceil(sorted.length / count);
  return Array.from({ length: Math.ceil(sorted.length / each) }, (_, i) => {
    const own = sorted.slice(i * each, (i + 1) * each);
    return { rows: own, marks: 2 * Math.max(...own.map(({ mark }) => balloonReach(pen, mark))) };
  });
}

/** Points for each unit, so that all columns go in side by side, and each goes in the height. */
function scaleOf(columns: readonly Column[], { width, height }: Frame): number {
  const room = width - columns.reduce((sum, { marks }) => sum + marks + BEFORE, (columns.length - 1) * BETWEEN);
  const across = room / columns.reduce((sum, { rows }) => sum + longest(rows), 0);
  const down = columns.map(({ rows }) => scaleDown(rows, height - UNDER));
  return Math.max(0, Math.min(across, ...down));
}

/** The largest at which rows as high as their pieces go below one another. */
function scaleDown(rows: readonly Row[], height: number): number {
  const sorted = rows.map(({ wide }) => wide).toSorted((a, b) => b - a);
  // The widest stand higher than their marks: as many as that makes largest.
  return sorted.reduce((best, _, i) => {
    const wide = sorted.slice(0, i + 1).reduce((sum, each) => sum + each, 0);
    return Math.min(best, (height - (i + 1) * APART - (sorted.length - i - 1) * PITCH) / Math.max(1, wide));
  }, Number.POSITIVE_INFINITY);
}
