/**
 * Rows of dimensions beside a view, smaller inside larger: dimension lines broken by their text, extension lines from the
 * picture, and for text that is wider than its dimension a place outside the row, found among candidates.
 */
import type { Item } from "../../document.ts";
import { BLACK } from "../../palette.ts";
import type { Pen } from "../drawing.ts";
import { arrowhead, centred, strokes } from "../ink.ts";
import { type Box, boxAround, grown, type Plate, passes, type Segment } from "../plate.ts";
import { NARROW } from "../strokes.ts";
import { extensionLines, type Feet, forked, roundAbout } from "./extension-lines.ts";
import { type Lettered, type Measure, TEXT } from "./measure.ts";
import { outsideText, spreadOut } from "./outside-text.ts";
import type { Side } from "./side.ts";

/** From the view to the first row, and from row to row, for rows across the page. */
const STEP = 15;
const ARROW = 5;

/** A dimension with the place of its text in the line. */
interface Middled extends Lettered {
  /** Along the side. */
  readonly centre: number;
  readonly box: Box;
}

/** Draws the rows, innermost first, and returns what they take up outwards from the view, and how many texts found no place. */
export function drawRows(
  rows: readonly (readonly Measure[])[],
  feet: Feet,
  side: Side,
  plate: Plate,
  pen: Pen,
): { readonly items: readonly Item[]; readonly depth: number; readonly lost: number } {
  const wanted = rows.filter((row) => row.length > 0);
  const drawn = forked(wanted.flat().flatMap(({ from, to }) => [from, to]));
  const at = (place: number): number => drawn.get(place) ?? place;
  const set = wanted.map((row) =>
    row.map((measure) => fitted({ ...measure, from: at(measure.from), to: at(measure.to) }, side, pen)),
  );
  const levels: number[] = [];
  let depth = 0;
  for (const row of set) {
    const widest = Math.max(...row.map(({ width }) => width));
    const half = side.level ? 0 : widest / 2 + 2;
    levels.push(depth + (side.level ? STEP : 8 + half));
    // At the ends of a row a number stands in line with it.
    const aside = row.slice(1, -1).flatMap(({ inline, width }) => (inline ? [] : [side.level ? 13 : width + 4]));
    const outside = Math.max(0, ...aside);
    depth = (levels.at(-1) ?? 0) + (side.level ? TEXT / 2 : half) + outside;
  }
  const extended = extensionLines(reaching(wanted, levels), feet, side, drawn);
  const placed = set.map((row, i) => row.map((one) => middled(one, levels[i] ?? 0, side, extended)));
  const texts = placed.flatMap((row) => row.flatMap(({ inline, box }) => (inline ? [grown(box, 1)] : [])));
  const extensions = extended.flatMap((line) => texts.reduce(roundAbout, [line]));
  for (const line of extensions) plate.addLeader(line);
  const items = [...strokes(extensions, NARROW)];
  placed.forEach((row, i) => {
    items.push(...ends(row, levels[i] ?? 0, side));
    for (const one of row) items.push(...dimensionLine(one, levels[i] ?? 0, side, plate, pen));
  });
  let lost = 0;
  placed.forEach((row, i) => {
    const along = row.flatMap(({ measure }) => [measure.from, measure.to]);
    const best = spreadOut(
      row.filter(({ inline }, j) => !inline && j > 0 && j < row.length - 1),
      [Math.min(...along), Math.max(...along)],
      side,
    );
    row.forEach((one, j) => {
      if (one.inline) return;
      const end = j === 0 ? -1 : j === row.length - 1 ? 1 : null;
      const inRow = {
        end,
        level: levels[i] ?? 0,
        best: best.get(one) ?? (one.measure.from + one.measure.to) / 2,
      } as const;
      const text = outsideText(one, inRow, side, plate, pen);
      if (text.length === 0) lost++;
      items.push(...text);
    });
  });
  return { items, depth, lost };
}

function fitted(measure: Measure, side: Side, pen: Pen): Lettered {
  const width = pen.measure(measure.text, "regular", TEXT);
  const room = Math.abs(measure.to - measure.from);
  return { measure, width, inline: room >= (side.level ? width : TEXT) + 5 };
}

/** How far out the rows reach that end at a place along the side. */
function reaching(rows: readonly (readonly Measure[])[], levels: readonly number[]): ReadonlyMap<number, number> {
  const ends = new Map<number, number>();
  rows.forEach((row, i) => {
    for (const measure of row)
      for (const at of [measure.from, measure.to]) ends.set(at, Math.max(ends.get(at) ?? 0, levels[i] ?? 0));
  });
  return ends;
}

/** From an end to the text, or to the middle. */
const stub = (one: Lettered, side: Side): number =>
  Math.abs(one.measure.to - one.measure.from) / 2 - halfText(one, side);

/** Arrowheads; where one of the two that meet does not fit, an oblique stroke stands for both (ISO 129-1). */
function ends(row: readonly Lettered[], level: number, side: Side): readonly Item[] {
  const arrows = new Map<number, (-1 | 1)[] | null>();
  for (const one of row) {
    const { from, to } = one.measure;
    for (const [at, sign] of [
      [from, from < to ? -1 : 1],
      [to, from < to ? 1 : -1],
    ] as const) {
      const there = arrows.get(at);
      arrows.set(at, there === null || stub(one, side) < ARROW + 1 ? null : [...(there ?? []), sign]);
    }
  }
  return [...arrows].flatMap(([at, signs]): readonly Item[] => {
    const [x, y] = side.spot(at, level);
    if (signs === null)
      return strokes(
        [
          [
            [x - 1.8, y + 1.8],
            [x + 1.8, y - 1.8],
          ],
        ],
        { ...NARROW, width: 0.7 },
      );
    return signs.map((sign) => arrowhead([x, y], side.level ? [sign, 0] : [0, sign], BLACK, ARROW));
  });
}

/** Where along a dimension its text is tried, in points from the middle. */
const ASIDE = [0, 6, -6, 12, -12, 20, -20, 30, -30, 45, -45] as const;

/** Where it keeps off the extension lines of the rows outside this one, if there is such a place. */
function middled(one: Lettered, level: number, side: Side, extended: readonly Segment[]): Middled {
  const { measure, width } = one;
  const boxAt = (at: number): Box => boxAround(...side.spot(at, level), width, TEXT);
  const middle = (measure.from + measure.to) / 2;
  const room = Math.abs(measure.to - measure.from) / 2 - halfText(one, side) - ARROW;
  const by = ASIDE.filter((aside) => Math.abs(aside) <= room).find((aside) => {
    const box = grown(boxAt(middle + aside), 1);
    return !extended.some((line) => passes(line, box));
  });
  const centre = middle + (by ?? 0);
  return { ...one, centre, box: boxAt(centre) };
}

/** Half of what the text takes of the line. */
const halfText = ({ width, inline }: Lettered, side: Side): number =>
  inline ? (side.level ? width / 2 + 2.5 : TEXT / 2 + 1) : 0;

/** The line, in one piece or broken for the text. */
function dimensionLine(one: Middled, level: number, side: Side, plate: Plate, pen: Pen): readonly Item[] {
  const { measure, inline, centre } = one;
  const [from, to] = [Math.min(measure.from, measure.to), Math.max(measure.from, measure.to)];
  const half = halfText(one, side);
  const runs: readonly (readonly [number, number])[] = inline
    ? [
        [from, centre - half],
        [centre + half, to],
      ]
    : [[from, to]];
  const segments = runs.flatMap(([a, b]): readonly Segment[] =>
    b - a < 1 ? [] : [[side.spot(a, level), side.spot(b, level)]],
  );
  for (const segment of segments) plate.addLeader(segment);
  if (!inline) return strokes(segments, NARROW);
  const { item, box } = centred(pen, measure.text, side.spot(centre, level), { size: TEXT });
  plate.addBox(box);
  return [...strokes(segments, NARROW), item];
}
