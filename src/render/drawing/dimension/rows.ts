/**
 * Rows of dimensions beside a view, smaller inside larger: dimension lines broken by their text, extension lines from the
 * picture, and for text that is wider than its dimension a place outside the row, found among candidates.
 */
import type { Item } from "../../document.ts";
import { BLACK } from "../../palette.ts";
import type { Pen } from "../drawing.ts";
import { arrowhead, centred, strokes } from "../ink.ts";
import { boxAround, grown, type Plate, type Segment } from "../plate.ts";
import { NARROW } from "../strokes.ts";
import type { Side } from "./side.ts";

export const TEXT = 10;
/** From the view to the first row, and from row to row, for rows across the page. */
const STEP = 15;
const ARROW = 5;
/** Extension lines start this far from the picture and end this far beyond the dimension line. */
const START = 2;
const BEYOND = 2.5;
/** The least distance of two parallel lines, 0.7 mm (ISO 128-2); what would lie closer runs as one line up to just before the row. */
const APART = 0.7 * (72 / 25.4);
const FORK = 5;

/** A dimension on the page: places along the side, in points. */
export interface Measure {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Where along the side the extension lines stand, and how far out (≤ 0: inside) the line that they extend ends. */
export type Feet = ReadonlyMap<number, number>;

interface Set {
  readonly measure: Measure;
  readonly width: number;
  /** Whether the text breaks the line, or stands outside the row. */
  readonly inline: boolean;
}

/** Draws the rows, innermost first, and returns what they take up outwards from the view. */
export function drawRows(
  rows: readonly (readonly Measure[])[],
  feet: Feet,
  side: Side,
  plate: Plate,
  pen: Pen,
): { readonly items: readonly Item[]; readonly depth: number } {
  const set = rows.filter((row) => row.length > 0).map((row) => row.map((measure) => fitted(measure, side, pen)));
  const levels: number[] = [];
  let depth = 0;
  for (const row of set) {
    const widest = Math.max(...row.map(({ width }) => width));
    const half = side.level ? 0 : widest / 2 + 2;
    levels.push(depth + (side.level ? STEP : 8 + half));
    const outside = row.some(({ inline }) => !inline) ? (side.level ? 13 : widest + 4) : 0;
    depth = (levels.at(-1) ?? 0) + (side.level ? TEXT / 2 : half) + outside;
  }
  const items = [...extensions(set, levels, feet, side, plate)];
  set.forEach((row, i) => {
    items.push(...ends(row, levels[i] ?? 0, side));
    for (const one of row) items.push(...dimensionLine(one, levels[i] ?? 0, side, plate, pen));
  });
  set.forEach((row, i) => {
    row.forEach((one, j) => {
      const last = j === row.length - 1 ? 1 : null;
      if (!one.inline) items.push(...outsideText(one, j === 0 ? -1 : last, levels[i] ?? 0, side, plate, pen));
    });
  });
  return { items, depth };
}

function fitted(measure: Measure, side: Side, pen: Pen): Set {
  const width = pen.measure(measure.text, "regular", TEXT);
  const room = Math.abs(measure.to - measure.from);
  return { measure, width, inline: room >= (side.level ? width : TEXT) + 5 };
}

function extensions(
  rows: readonly (readonly Set[])[],
  levels: readonly number[],
  feet: Feet,
  side: Side,
  plate: Plate,
): readonly Item[] {
  const ends = new Map<number, number>();
  rows.forEach((row, i) => {
    for (const { measure } of row)
      for (const at of [measure.from, measure.to]) ends.set(at, Math.max(ends.get(at) ?? 0, levels[i] ?? 0));
  });
  const lines = crowds([...ends.keys()]).flatMap((crowd): readonly Segment[] => {
    const foot = Math.min(...crowd.map((at) => feet.get(at) ?? 0)) + START;
    const tips = crowd.map((at): Segment => [side.spot(at, foot), side.spot(at, (ends.get(at) ?? 0) + BEYOND)]);
    if (crowd.length === 1) return tips;
    const nearest = Math.min(...crowd.map((at) => ends.get(at) ?? 0)) - FORK;
    const middle = crowd.reduce((sum, at) => sum + at, 0) / crowd.length;
    const forked = tips.map(([, tip], i): Segment => [side.spot(crowd[i] ?? middle, nearest), tip]);
    return [[side.spot(middle, foot), side.spot(middle, nearest)], ...forked];
  });
  for (const line of lines) plate.addLeader(line);
  return strokes(lines, NARROW);
}

/** Places along the side, sorted into those that lie too close together for a line each. */
function crowds(places: readonly number[]): readonly (readonly number[])[] {
  const sorted = [...places].sort((a, b) => a - b);
  const found: number[][] = [];
  for (const at of sorted) {
    const last = found.at(-1);
    if (last && at - (last.at(-1) ?? at) < APART) last.push(at);
    else found.push([at]);
  }
  return found;
}

/** From an end to the text, or to the middle. */
const stub = ({ measure, width, inline }: Set, side: Side): number =>
  Math.abs(measure.to - measure.from) / 2 - (inline ? (side.level ? width / 2 + 2.5 : TEXT / 2 + 1) : 0);

/** Arrowheads; where one of the two that meet does not fit, an oblique stroke stands for both (ISO 129-1). */
function ends(row: readonly Set[], level: number, side: Side): readonly Item[] {
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

/** The line, in one piece or broken for the text. */
function dimensionLine(one: Set, level: number, side: Side, plate: Plate, pen: Pen): readonly Item[] {
  const { measure, inline } = one;
  const [from, to] = [Math.min(measure.from, measure.to), Math.max(measure.from, measure.to)];
  const middle = (from + to) / 2;
  const reach = stub(one, side);
  const runs: readonly (readonly [number, number])[] = inline
    ? [
        [from, from + reach],
        [to - reach, to],
      ]
    : [[from, to]];
  const segments = reach < 1 ? [] : runs.map(([a, b]): Segment => [side.spot(a, level), side.spot(b, level)]);
  for (const segment of segments) plate.addLeader(segment);
  if (!inline) return strokes(segments, NARROW);
  const { item, box } = centred(pen, measure.text, side.spot(middle, level), { size: TEXT });
  plate.addBox(box);
  return [...strokes(segments, NARROW), item];
}

/**
 * Text outside its dimension: at the end of the row (`end`: −1 the first, 1 the last, null within), straight out from the
 * row, or shifted along it with a leader.
 */
function outsideText(
  { measure, width }: Set,
  end: -1 | 1 | null,
  level: number,
  side: Side,
  plate: Plate,
  pen: Pen,
): readonly Item[] {
  const middle = (measure.from + measure.to) / 2;
  const half = side.level ? width / 2 : TEXT / 2;
  const clear = (side.level ? TEXT / 2 : width / 2) + 5;
  const candidates: { along: number; out: number; cost: number; leader: boolean }[] = [];
  if (end !== null) {
    const outwards = end * (measure.from < measure.to ? 1 : -1);
    const tip = end === 1 ? measure.to : measure.from;
    candidates.push({ along: tip + outwards * (half + 4), out: 0, cost: 1, leader: false });
  }
  for (const out of [clear, clear + 2, clear + TEXT + 2, clear + 2 * TEXT + 4])
    for (const n of [0, 1, -1, 2, -2, 3, -3]) {
      const shift = n * (half / 2 + 1.5);
      candidates.push({
        along: middle + shift,
        out,
        cost: Math.abs(shift) + 1.5 * out,
        leader: n !== 0 || out > clear,
      });
    }
  candidates.sort((a, b) => a.cost - b.cost);
  for (const { along, out, leader } of candidates) {
    const centre = side.spot(along, level + out);
    const box = boxAround(centre[0], centre[1], width, TEXT * 0.96);
    if (!plate.isFree(grown(box, 1.2)) || plate.linesThrough(box) > 0) continue;
    const line: Segment = [side.spot(middle, level), side.spot(along, level + out - clear + 4)];
    if (leader && plate.blocks(shortened(line))) continue;
    plate.addBox(box);
    if (leader) plate.addLeader(line);
    return [...strokes(leader ? [line] : [], NARROW), centred(pen, measure.text, centre, { size: TEXT }).item];
  }
  return [];
}

/** Without its ends, which stand on the dimension line and at the text. */
function shortened([[x1, y1], [x2, y2]]: Segment): Segment {
  const [dx, dy] = [(x2 - x1) / 10, (y2 - y1) / 10];
  return [
    [x1 + dx, y1 + dy],
    [x2 - dx, y2 - dy],
  ];
}
