/** What stands on a shelf must be lower than this: the clear heights between what lies level, told inside the front section. */
import type { BuiltPart } from "../../../solve/build.ts";
import { compare, type Length, subtract, toNumber } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { BLACK } from "../../palette.ts";
import type { Pen } from "../drawing.ts";
import type { Fit } from "../fit.ts";
import { arrowhead, centred, strokes } from "../ink.ts";
import { grown, type Plate, type Segment } from "../plate.ts";
import { NARROW } from "../strokes.ts";

/** Free of wood between two parts that are cut, over a width in units of length. */
export interface Clear {
  readonly from: Length;
  readonly to: Length;
  readonly left: number;
  readonly right: number;
}

/** A strip that is narrower, in its thicknesses, is no floor; what lies over less of a floor is no ceiling to it. */
const FLOOR = 3;
const CEILING = 0.5;
/** What stands so near to the ends of a floor, like a cleat that carries the next one, leaves the rest of it free. */
const ENDS = 0.1;

/** Of the parts that the cut goes through; nothing stands on what moves, and where it is nothing else stands. */
export function clearHeights(cut: readonly BuiltPart[], moving: ReadonlySet<string> = new Set()): readonly Clear[] {
  const level = cut.filter(({ id, axes }) => axes.thickness === "up" && !moving.has(id));
  return level.flatMap((floor): readonly Clear[] => {
    const from = floor.body.high[2];
    const whole = shared(floor.body, floor.body).wide;
    if (whole < FLOOR * toNumber(subtract(from, floor.body.low[2]))) return [];
    const over = level
      .filter(({ body }) => compare(body.low[2], from) > 0 && shared(body, floor.body).wide >= CEILING * whole)
      .sort((a, b) => compare(a.body.low[2], b.body.low[2]));
    const [ceiling] = over;
    if (!ceiling) return [];
    const { left, right, wide } = shared(ceiling.body, floor.body);
    const to = ceiling.body.low[2];
    const between = cut.filter(
      (part) =>
        part !== floor &&
        part !== ceiling &&
        compare(part.body.low[2], to) < 0 &&
        compare(part.body.high[2], from) > 0 &&
        toNumber(part.body.low[0]) < right - ENDS * wide &&
        toNumber(part.body.high[0]) > left + ENDS * wide,
    );
    return between.length === 0 ? [{ from, to, left, right }] : [];
  });
}

function shared(a: BuiltPart["body"], b: BuiltPart["body"]) {
  const left = Math.max(toNumber(a.low[0]), toNumber(b.low[0]));
  const right = Math.min(toNumber(a.high[0]), toNumber(b.high[0]));
  return { left, right, wide: right - left };
}

/** In points: in less there is no room for a number between two arrowheads. */
const LEAST = 28;
const TEXT = 10;
/** Where across the width a line is tried. */
const SHARES = [1 / 2, 1 / 3, 2 / 3, 1 / 4, 3 / 4] as const;
/** Where up the line its number is tried, in points from the middle. */
const ASIDE = [0, 12, -12] as const;
const TRIED = SHARES.flatMap((share) => ASIDE.map((aside) => ({ share, aside })));

/** Whether a number goes into it, at so many points for each unit. */
export const isTold = ({ from, to }: Clear, scale: number): boolean => toNumber(subtract(to, from)) * scale >= LEAST;

/** On either side of an edge that a line runs across, it is broken so far: it stands before what lies behind. */
const BROKEN = 2.5;

/** Up the page from `foot` to `head` at x, broken at what it crosses. */
function between(foot: number, head: number, crossed: readonly number[], x: number): readonly Segment[] {
  const gaps = [...crossed].sort((a, b) => b - a).map((y) => [y + BROKEN, y - BROKEN] as const);
  const starts = [foot, ...gaps.map(([, over]) => over)];
  const stops = [...gaps.map(([under]) => under), head];
  return starts.flatMap((from, i): readonly Segment[] => {
    const to = stops[i] as number;
    return from - to > SPECK
      ? [
          [
            [x, from],
            [x, to],
          ],
        ]
      : [];
  });
}
/** In points: less of a line is nothing to be seen. */
const SPECK = 0.5;

export function drawClear(all: readonly Clear[], fit: Fit, plate: Plate, pen: Pen): readonly Item[] {
  return all.flatMap(({ from, to, left, right }) => {
    const text = pen.print(subtract(to, from));
    for (const { share, aside } of TRIED) {
      const across = left + (right - left) * share;
      const [[x, foot], [, head]] = [fit.page([across, toNumber(from)]), fit.page([across, toNumber(to)])];
      if (foot - head < LEAST + 2 * Math.abs(aside)) continue;
      const middle = (foot + head) / 2 + aside;
      const { item, box } = centred(pen, text, [x, middle], { size: TEXT });
      if (!plate.isFree(grown(box, 1.2)) || plate.linesThrough(box) > 0) continue;
      const lines: readonly Segment[] = [
        [
          [x, foot],
          [x, middle + TEXT / 2 + 1],
        ],
        [
          [x, middle - TEXT / 2 - 1],
          [x, head],
        ],
      ];
      for (const line of lines) plate.addLeader(line);
      plate.addBox(box);
      const drawn = lines.flatMap(([[, a], [, b]]) => between(a, b, plate.crossedAt(x, b, a), x));
      return [
        ...strokes(drawn, NARROW),
        arrowhead([x, foot], [0, 1], BLACK),
        arrowhead([x, head], [0, -1], BLACK),
        item,
      ];
    }
    return [];
  });
}
