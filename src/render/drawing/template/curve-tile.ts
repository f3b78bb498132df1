/** One sheet's worth of a curve in its true size, with marks where the next sheet is laid on. */
import type { CurvePattern } from "../../../solve/build.ts";
import type { Item } from "../../document.ts";
import { BLACK } from "../../palette.ts";
import type { Pen, Spot } from "../drawing.ts";
import { centred, letterHeight, strokes } from "../ink.ts";
import { type Box, boxAround, grown, Plate, type Segment } from "../plate.ts";
import { CHAIN, HIDDEN, NARROW } from "../strokes.ts";
import { alongArc } from "./arc.ts";
import { truePoints } from "./print-bar.ts";
import type { Panel } from "./set-out.ts";
import { SHARED, type Tile } from "./tiles.ts";

const CURVE = { width: 1, ink: BLACK, cap: "round" } as const;
const EDGE = { width: 0.7, ink: BLACK } as const;
const SIZE = 10;
/** Room below and at the left for what is written beside edges there. */
const ROOM = 14;
const CROSS = 7;

export type Lengths = CurvePattern["outline"][number]["from"];
export const inPoints = ([x, y]: Lengths): Spot => [truePoints(x), truePoints(y)];

/** What is sawn to, as short straight stretches in points from the lower left corner of the pattern, y up. */
export const outlineOf = ({ outline }: Pick<CurvePattern, "outline">): readonly Segment[] =>
  outline.flatMap((stroke) => {
    const [from, to] = [inPoints(stroke.from), inPoints(stroke.to)];
    const spots = stroke.is === "line" ? [from, to] : alongArc(from, to, inPoints(stroke.centre));
    return spots.slice(1).map((spot, i): Segment => [spots[i] as Spot, spot]);
  });

/** From the top left corner (0, 0). */
export function curveTile(pattern: CurvePattern, tile: Tile, tiles: readonly Tile[], pen: Pen): Panel {
  const { left, right, bottom, top } = tile;
  const [width, height] = [right - left + 2 * ROOM, top - bottom + ROOM + 2];
  const plate = new Plate({ x: 0, y: 0, width, height });
  const page = ([x, y]: Spot): Spot => [ROOM + x - left, 2 + top - y];
  const window: Box = { left, right, top: bottom, bottom: top };
  const inside = (segments: readonly Segment[]): readonly Segment[] =>
    segments.flatMap((each) => {
      const cut = clipped(each, window);
      return cut ? [[page(cut[0]), page(cut[1])] as const] : [];
    });
  const curve = inside(outlineOf(pattern));
  const edges = pattern.edges.map(({ from, to, is, first, gone }) => {
    const [line] = inside([[inPoints(from), inPoints(to)] as const]);
    const [x, y] = inPoints(from);
    const begins = x >= left && x <= right && y >= bottom && y <= top;
    return { is: first !== undefined && begins ? [is, first].filter(Boolean).join("; ") : is, gone, line };
  });
  for (const line of [...curve, ...edges.flatMap(({ line }) => (line ? [line] : []))]) plate.addLine(line);
  const seams = seamsOf(tile, tiles).map(({ letter, line }) => ({ letter, line: inside([line])[0] as Segment }));
  const items: Item[] = [...strokes(curve, CURVE)];
  for (const { is, gone, line } of edges)
    if (line) items.push(...strokes([line], is === "middle" ? CHAIN : gone ? HIDDEN : EDGE));
  for (const { letter, line } of seams) items.push(...strokes([line], HIDDEN), ...registered(letter, line, plate, pen));
  for (const { is, line } of edges) {
    const words = is === "middle" && pattern.half ? "middle: turn over here" : is;
    if (line && words !== "") items.push(...beside(words, line, plate, pen));
  }
  return { items, width, height };
}

/** The part of a segment in a box; null where it misses it. Both in points, y up. */
function clipped([[x1, y1], [x2, y2]]: Segment, { left, right, top, bottom }: Box): Segment | null {
  let [from, to] = [0, 1];
  for (const [p, d, low, high] of [
    [x1, x2 - x1, left, right],
    [y1, y2 - y1, top, bottom],
  ] as const) {
    if (d === 0) {
      if (p < low - 1e-6 || p > high + 1e-6) return null;
      continue;
    }
    const [a, b] = [(low - p) / d, (high - p) / d];
    [from, to] = [Math.max(from, Math.min(a, b)), Math.min(to, Math.max(a, b))];
  }
  if (from >= to) return null;
  const at = (t: number): Spot => [x1 + (x2 - x1) * t, y1 + (y2 - y1) * t];
  return [at(from), at(to)];
}

/** The middle of what two tiles share, in points of the pattern: the same line on both. */
function seamsOf({ column, row, left, right, bottom, top }: Tile, tiles: readonly Tile[]) {
  const last = { column: Math.max(...tiles.map((t) => t.column)), row: Math.max(...tiles.map((t) => t.row)) };
  const letter = (n: number): string => String.fromCharCode(65 + n);
  const upright = (x: number): Segment => [
    [x, bottom],
    [x, top],
  ];
  const level = (y: number): Segment => [
    [left, y],
    [right, y],
  ];
  return [
    ...(column > 0 ? [{ letter: letter(column - 1), line: upright(left + SHARED / 2) }] : []),
    ...(column < last.column ? [{ letter: letter(column), line: upright(right - SHARED / 2) }] : []),
    ...(row > 0 ? [{ letter: letter(last.column + row - 1), line: level(bottom + SHARED / 2) }] : []),
    ...(row < last.row ? [{ letter: letter(last.column + row), line: level(top - SHARED / 2) }] : []),
  ];
}

/** Two crosses on a seam, with its letter beside each. */
function registered(letter: string, [[x1, y1], [x2, y2]]: Segment, plate: Plate, pen: Pen): readonly Item[] {
  return [0.2, 0.8].flatMap((t): readonly Item[] => {
    const [x, y]: Spot = [x1 + (x2 - x1) * t, y1 + (y2 - y1) * t];
    const cross: readonly Segment[] = [
      [
        [x - CROSS, y],
        [x + CROSS, y],
      ],
      [
        [x, y - CROSS],
        [x, y + CROSS],
      ],
    ];
    const { item, box } = centred(pen, letter, [x + CROSS, y - CROSS - 2], { font: "bold", size: SIZE });
    plate.addBox(box);
    return [...strokes(cross, { ...NARROW, width: 0.6 }), item];
  });
}

/** Words along a line, where they lie on nothing. */
function beside(words: string, [[x1, y1], [x2, y2]]: Segment, plate: Plate, pen: Pen): readonly Item[] {
  const long = pen.measure(words, "regular", SIZE);
  const high = letterHeight(SIZE);
  const level = Math.abs(x2 - x1) > Math.abs(y2 - y1);
  const off = high / 2 + 3.5;
  const places = [0.5, 0.3, 0.7, 0.15, 0.85].flatMap((t) =>
    [1, -1].map((side): Spot => {
      const [x, y] = [x1 + (x2 - x1) * t, y1 + (y2 - y1) * t];
      return level ? [x, y + side * off] : [x - side * off, y];
    }),
  );
  const boxes = places
    .map((spot) => ({ spot, box: boxAround(spot[0], spot[1], level ? long : high, level ? high : long) }))
    .filter(({ box }) => plate.isFree(grown(box, 1)))
    .map((each) => ({ ...each, cost: plate.linesThrough(grown(each.box, 1)) }));
  const best = boxes.find(({ cost }) => cost === 0) ?? boxes.sort((a, b) => a.cost - b.cost)[0];
  if (!best) return [];
  plate.addBox(best.box);
  const [x, y] = best.spot;
  const common = { kind: "text", text: words, font: "regular", size: SIZE, ink: BLACK, width: long } as const;
  return [
    level ? { ...common, x: x - long / 2, y: y + high / 2 } : { ...common, x: x + high / 2, y: y + long / 2, turn: 90 },
  ];
}
