/** Lines of numbers beside a view, one for each row: its holes as ticks, its ends named, and between them how many spaces of which size. */
import type { Item } from "../../document.ts";
import { BLACK } from "../../palette.ts";
import type { Pen, Spot } from "../drawing.ts";
import { arrowhead, strokes } from "../ink.ts";
import { boxAround, type Plate, type Segment } from "../plate.ts";
import { NARROW } from "../strokes.ts";
import { SIZE } from "./ordinates.ts";

/** From line to line. */
export const LADDER = 14;

/** Along the side, in points: rightwards, or up the page. */
export interface Line {
  readonly from: number;
  readonly to: number;
  /** Where each of its places stands, the ends too. */
  readonly places: readonly number[];
  /** What its ends are called, and what stands between them. */
  readonly ends: readonly [string, string];
  readonly words: string;
}

interface Word {
  readonly text: string;
  readonly middle: number;
  readonly width: number;
}

export interface SetLine {
  readonly line: Line;
  readonly words: readonly Word[];
  /** What it takes up. */
  readonly low: number;
  readonly high: number;
  /** Which line from the view on, from 0. */
  readonly level: number;
}

const ARROW = 5;
const AIR = 4;

/** Where the lines and their texts stand between two limits; null where a text does not go in. */
export function setLines(
  lines: readonly Line[],
  limits: readonly [number, number],
  pen: Pen,
): readonly SetLine[] | null {
  const set: SetLine[] = [];
  for (const line of lines) {
    const one = fitted(line, limits, pen);
    if (one === null) return null;
    let level = 0;
    while (set.some((other) => other.level === level && other.low < one.high + AIR && one.low < other.high + AIR))
      level++;
    set.push({ ...one, level });
  }
  return set;
}

/** The ends inside the line, else beside it, else all in one text after it or before it. */
function fitted(line: Line, [low, high]: readonly [number, number], pen: Pen): Omit<SetLine, "level"> | null {
  const word = (text: string, middle: number): Word => ({ text, middle, width: pen.measure(text, "regular", SIZE) });
  const { from, to, ends, words } = line;
  const [first, between, last] = [word(ends[0], 0), word(words, (from + to) / 2), word(ends[1], 0)];
  const side = ARROW + 2;
  if (to - from >= first.width + last.width + between.width + 2 * side + 6 * AIR) {
    const inside = [
      { ...first, middle: from + side + first.width / 2 },
      between,
      { ...last, middle: to - side - last.width / 2 },
    ];
    return { line, words: inside, low: from, high: to };
  }
  const beside = [
    { ...first, middle: from - AIR - first.width / 2 },
    between,
    { ...last, middle: to + AIR + last.width / 2 },
  ];
  const reach = [from - AIR - first.width, to + AIR + last.width] as const;
  if (to - from >= between.width + 2 * side && reach[0] >= low && reach[1] <= high)
    return { line, words: beside, low: reach[0], high: reach[1] };
  const all = word(`${words}, ${ends[0]} to ${ends[1]}`, 0);
  if (to + AIR + all.width <= high)
    return { line, words: [{ ...all, middle: to + AIR + all.width / 2 }], low: from, high: to + AIR + all.width };
  if (from - AIR - all.width >= low)
    return { line, words: [{ ...all, middle: from - AIR - all.width / 2 }], low: from - AIR - all.width, high: to };
  return null;
}

/** How far all levels reach from the view. */
export const reachOf = (set: readonly SetLine[]): number => Math.max(0, ...set.map(({ level }) => level + 1)) * LADDER;

/** `spot`: from along the side and out of it to the page; `feet`: from where in the view the extension lines of each come. */
export function drawLines(
  set: readonly SetLine[],
  { spot, level }: { readonly spot: (along: number, out: number) => Spot; readonly level: boolean },
  feet: readonly (readonly [Spot | null, Spot | null])[],
  plate: Plate,
): readonly Item[] {
  return set.flatMap(({ line, words, level: row }, i): readonly Item[] => {
    const out = row * LADDER + LADDER / 2;
    const at = (along: number, by = 0): Spot => spot(along, out + by);
    const taken = words.filter(({ middle }) => middle > line.from && middle < line.to);
    const stops = taken.flatMap(({ middle, width }) => [middle - width / 2 - 2, middle + width / 2 + 2]);
    const edges = [line.from, ...stops, line.to];
    const runs = edges.flatMap((from, j): Segment[] => (j % 2 === 0 ? [[at(from), at(edges[j + 1] as number)]] : []));
    const ticks = line.places
      .filter((place) => !taken.some(({ middle, width }) => Math.abs(place - middle) < width / 2 + 2))
      .map((place): Segment => [at(place, -2), at(place, 2)]);
    const witnesses = ([line.from, line.to] as const).flatMap((along, end): Segment[] => {
      const foot = feet[i]?.[end as 0 | 1];
      return foot ? [[foot, at(along)]] : [];
    });
    for (const run of [...runs, ...witnesses]) plate.addLeader(run);
    const ahead: Spot = level ? [1, 0] : [0, -1];
    const back: Spot = level ? [-1, 0] : [0, 1];
    return [
      ...strokes([...runs, ...ticks, ...witnesses], NARROW),
      arrowhead(at(line.from), back, BLACK, ARROW),
      arrowhead(at(line.to), ahead, BLACK, ARROW),
      ...words.map(({ text, middle, width }): Item => {
        const [x, y] = at(middle);
        plate.addBox(level ? boxAround(x, y, width, SIZE) : boxAround(x, y, SIZE, width));
        const place = level
          ? { x: x - width / 2, y: y + SIZE * 0.33 }
          : { x: x + SIZE * 0.33, y: y + width / 2, turn: 90 };
        return { kind: "text", ...place, text, font: "regular", size: SIZE, ink: BLACK, width };
      }),
    ];
  });
}
