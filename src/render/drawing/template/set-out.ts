/** A jig, or a side of a part with the holes of hardware, to scale with running dimensions from two sides. */
import { equal, type Length, toNumber } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { BLACK, TINT } from "../../palette.ts";
import { circle, polygon, slot } from "../../shapes.ts";
import type { Pen, Spot } from "../drawing.ts";
import { strokes } from "../ink.ts";
import { drawLines } from "../part/drawn-lines.ts";
import { inSteps, type Line, reachOf, readsDown, type SetLine, setLines } from "../part/ladder-lines.ts";
import {
  apart,
  LEADER,
  lengthOf,
  type Ordinate,
  ordinatesAlong,
  ordinatesLeft,
  SIZE,
  spacesOf,
  widest,
} from "../part/ordinates.ts";
import { type Found, type InPart, rowsOf, together } from "../part/rows.ts";
import { Plate, type Segment } from "../plate.ts";
import type { Scale } from "../scale.ts";
import { CHAIN, HIDDEN, NARROW, OUTLINE } from "../strokes.ts";

export interface Hole {
  readonly x: Length;
  readonly y: Length;
  readonly diameter: Length;
  readonly slot?: readonly ["x" | "y", Length];
}

/** Lengths run from 0, to the right and up, or down. */
export interface SetOut {
  readonly holes: readonly Hole[];
  /** What is drawn of the wood: from and to, in units of 1/16 µm. */
  readonly across: readonly [number, number];
  readonly up: readonly [number, number];
  readonly down?: boolean;
  /** Sides of the wood; the others are open, drawn as broken lines. Fences lie along heavy ones. */
  readonly sides: Readonly<Record<"left" | "right" | "bottom" | "top", "edge" | "fence" | "open">>;
  /** Middle line of a strip. */
  readonly middle?: Length;
  /** Drawn in its true size; what is not has its wood tinted, so that nobody pricks through it. */
  readonly full?: boolean;
  /** Told besides the holes: the ends. */
  readonly ends: { readonly x: readonly Length[]; readonly y: readonly Length[] };
}

/** Beyond the right end there is room for so much of a number. */
const AFTER = 24;
const FENCE = { width: 2.6, ink: BLACK } as const;

export interface Panel {
  readonly items: readonly Item[];
  readonly width: number;
  readonly height: number;
}

const once = (values: readonly number[]): readonly number[] => [...new Set(values)].sort((a, b) => a - b);

const spotOf = ({ x, y }: Hole): InPart => [toNumber(x), toNumber(y), 0];

/** Holes at equal distances along it, those with the same numbers once. */
const rowsAlong = ({ holes, full = false }: SetOut): readonly Found<Hole>[] =>
  full ? [] : together(rowsOf(holes, spotOf, 0));

/** The places along it that are told one by one. */
export function numbersAlong(set: SetOut): readonly number[] {
  const inRow = new Set(rowsAlong(set).flatMap(({ points }) => points));
  const holes = set.holes.filter((hole) => !inRow.has(hole));
  return once([...set.ends.x, ...holes.map(({ x }) => x)].map(toNumber));
}

/** Where they do not go together each has two levels of its own. */
const oneBelow = (row: Line, i: number, pen: Pen): readonly SetLine[] =>
  (setLines([row], [0, Number.POSITIVE_INFINITY], pen) ?? []).map((one) => ({ ...one, level: 2 * i }));

/** From the top left corner (0, 0). */
export function drawSetOut(set: SetOut, { points: k }: Scale, pen: Pen): Panel {
  const xs = numbersAlong(set);
  const ys = once([...set.ends.y, ...set.holes.map((hole) => hole.y)].map(toNumber));
  const told = (values: readonly number[], place: (v: number) => number): readonly Ordinate[] =>
    values.map((value) => ({ at: place(value), text: pen.print(lengthOf(value)) }));
  const room = (values: readonly number[]): number =>
    LEADER +
    4 +
    widest(
      told(values, (v) => v),
      pen,
    );
  const [left, top] = [room(ys), room(xs)];
  const [low, high] = set.across;
  const [bottom, upper] = set.up;
  const fromTop = (y: number): number => (set.down ? y - bottom : upper - y) * k;
  const spot = (x: number, y: number): Spot => [left + (x - low) * k, top + fromTop(y)];
  const above = told(xs, (x) => spot(x, 0)[0]);
  const beside = told(ys, (y) => spot(0, y)[1]).toSorted((p, q) => p.at - q.at);
  const wide = left + (high - low) * k;
  const bent = apart(
    above.map(({ at }) => at),
    left,
  );
  const drops = apart(
    beside.map(({ at }) => at),
    top,
  );
  const marked = (pitch: Length) => !pen.marked || equal(pen.marked(pitch), pitch);
  const rows = rowsAlong(set);
  const toldRows = rows.map(({ row }) => ({
    ...{ from: spot(row.from, 0)[0], to: spot(row.to, 0)[0] },
    places: Array.from({ length: row.spaces + 1 }, (_, i) => {
      const pitch = (row.to - row.from) / row.spaces;
      return spot(row.from + i * pitch, 0)[0];
    }),
    ends: [pen.print(lengthOf(row.from)), pen.print(lengthOf(row.to))] as const,
    words: spacesOf(row, { print: pen.print, marked }),
  }));
  const within = [left, wide + AFTER] as const;
  const near = setLines(toldRows, within, pen);
  const lines =
    (near && (readsDown(near) ? near : (inSteps(toldRows, within, pen) ?? near))) ??
    toldRows.flatMap((row, i) => oneBelow(row, i, pen));
  const foot = top + (upper - bottom) * k;
  const below = rows.length > 0 ? 4 + reachOf(lines) : 0;
  const width = Math.max(wide, (bent.at(-1) ?? 0) + SIZE / 2, ...lines.map((line) => line.high)) + 2;
  const height = Math.max(foot + below, (drops.at(-1) ?? 0) + SIZE / 2) + 2;
  const plate = new Plate({ x: 0, y: 0, width, height });
  const side = (which: keyof SetOut["sides"], from: Spot, to: Spot): readonly Item[] => {
    const look = { edge: OUTLINE, fence: FENCE, open: HIDDEN }[set.sides[which]];
    return strokes([[from, to]], look);
  };
  const [a, b, c, d] = [spot(low, bottom), spot(high, bottom), spot(high, upper), spot(low, upper)];
  const middle = set.middle && toNumber(set.middle);
  const feet = rows.map(({ row, points }): readonly [Spot, Spot] => {
    const lowest = Math.max(...points.map((hole) => spot(0, toNumber(hole.y))[1]));
    const [from, to] = [row.from, row.to].map((x): Spot => [spot(x, 0)[0], lowest]) as [Spot, Spot];
    return [
      [from[0], from[1] + 4],
      [to[0], to[1] + 4],
    ];
  });
  return {
    items: [
      ...(set.full ? [] : [polygon([a, b, c, d], { fill: TINT.light })]),
      ...[...side("bottom", a, b), ...side("right", b, c), ...side("top", c, d), ...side("left", d, a)],
      ...(middle === undefined ? [] : strokes([[spot(low, middle), spot(high, middle)]], CHAIN)),
      ...set.holes.flatMap((hole) => drawHole(hole, spot(toNumber(hole.x), toNumber(hole.y)), k)),
      ...ordinatesAlong(above, "above", top, left, plate, pen),
      ...ordinatesLeft(beside, { left, bent: drops, long: LEADER }, plate, pen),
      ...drawLines(lines, { level: true, spot: (s, out) => [s, foot + 4 + out], end: -4 }, feet, plate),
    ],
    width,
    height,
  };
}

/** A circle with a cross through its middle; a slot has round ends. */
function drawHole({ diameter, slot: drawnOut }: Hole, [x, y]: Spot, k: number): readonly Item[] {
  const r = (toNumber(diameter) * k) / 2;
  const reach = Math.max(r, 1) + 2.5;
  const cross: readonly Segment[] = [
    [
      [x - reach, y],
      [x + reach, y],
    ],
    [
      [x, y - reach],
      [x, y + reach],
    ],
  ];
  const look = { stroke: { ...OUTLINE, width: 0.6 } };
  const half = drawnOut ? ((toNumber(drawnOut[1]) - toNumber(diameter)) * k) / 2 : 0;
  const [dx, dy] = drawnOut?.[0] === "x" ? [half, 0] : [0, half];
  const rim = half > 0 ? slot([x - dx, y - dy], [x + dx, y + dy], r, look) : circle(x, y, r, look);
  return [rim, ...strokes(cross, NARROW)];
}
