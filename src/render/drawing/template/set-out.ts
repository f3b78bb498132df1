/** A jig, or a side of a part with the holes of hardware, to scale with running dimensions from two sides. */
import { type Length, toNumber } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { BLACK, TINT } from "../../palette.ts";
import { circle, polygon } from "../../shapes.ts";
import type { Pen, Spot } from "../drawing.ts";
import { strokes } from "../ink.ts";
import {
  apart,
  LEADER,
  lengthOf,
  type Ordinate,
  ordinatesAlong,
  ordinatesLeft,
  SIZE,
  widest,
} from "../part/ordinates.ts";
import { Plate, type Segment } from "../plate.ts";
import type { Scale } from "../scale.ts";
import { CHAIN, HIDDEN, NARROW, OUTLINE } from "../strokes.ts";

export interface Hole {
  readonly x: Length;
  readonly y: Length;
  readonly diameter: Length;
  readonly slot?: readonly ["x" | "y", Length];
}

/** Lengths run from 0, to the right and up. */
export interface SetOut {
  readonly holes: readonly Hole[];
  /** What is drawn of the wood: from and to, in units of 1/16 µm. */
  readonly across: readonly [number, number];
  readonly up: readonly [number, number];
  /** Sides of the wood; the others are open, drawn as broken lines. Fences lie along heavy ones. */
  readonly sides: Readonly<Record<"left" | "right" | "bottom" | "top", "edge" | "fence" | "open">>;
  /** Middle line of a strip. */
  readonly middle?: Length;
  /** Drawn in its true size; what is not has its wood tinted, so that nobody pricks through it. */
  readonly full?: boolean;
  /** Told besides the holes: the ends. */
  readonly ends: { readonly x: readonly Length[]; readonly y: readonly Length[] };
}

/** More numbers do not go beside each other over a page; those between are told in the step. */
const MOST = 36;
const FENCE = { width: 2.6, ink: BLACK } as const;

export interface Panel {
  readonly items: readonly Item[];
  readonly width: number;
  readonly height: number;
}

const once = (values: readonly number[]): readonly number[] => [...new Set(values)].sort((a, b) => a - b);
const some = (values: readonly number[]): readonly number[] =>
  values.length <= MOST ? values : [...values.slice(0, MOST - 1), values.at(-1) as number];

/** From the top left corner (0, 0). */
export function drawSetOut(set: SetOut, { points: k }: Scale, pen: Pen): Panel {
  const [xs, ys] = (["x", "y"] as const).map((of) =>
    some(once([...set.ends[of], ...set.holes.map((hole) => hole[of])].map(toNumber))),
  ) as [readonly number[], readonly number[]];
  const told = (values: readonly number[], place: (v: number) => number): readonly Ordinate[] =>
    values.map((value) => ({ at: place(value), text: pen.print(lengthOf(value)) }));
  const left =
    LEADER +
    widest(
      told(ys, (v) => v),
      pen,
    ) +
    4;
  const top =
    LEADER +
    widest(
      told(xs, (v) => v),
      pen,
    ) +
    4;
  const [low, high] = set.across;
  const [bottom, upper] = set.up;
  const spot = (x: number, y: number): Spot => [left + (x - low) * k, top + (upper - y) * k];
  const above = told(xs, (x) => spot(x, 0)[0]);
  const beside = [...told(ys, (y) => spot(0, y)[1])].reverse();
  const wide = left + (high - low) * k;
  const bent = apart(
    above.map(({ at }) => at),
    left,
  );
  const drops = apart(
    beside.map(({ at }) => at),
    top,
  );
  const width = Math.max(wide, (bent.at(-1) ?? 0) + SIZE / 2) + 2;
  const height = Math.max(top + (upper - bottom) * k, (drops.at(-1) ?? 0) + SIZE / 2) + 2;
  const plate = new Plate({ x: 0, y: 0, width, height });
  const side = (which: keyof SetOut["sides"], from: Spot, to: Spot): readonly Item[] => {
    const look = { edge: OUTLINE, fence: FENCE, open: HIDDEN }[set.sides[which]];
    return strokes([[from, to]], look);
  };
  const [a, b, c, d] = [spot(low, bottom), spot(high, bottom), spot(high, upper), spot(low, upper)];
  const middle = set.middle && toNumber(set.middle);
  return {
    items: [
      ...(set.full ? [] : [polygon([a, b, c, d], { fill: TINT.light })]),
      ...[...side("bottom", a, b), ...side("right", b, c), ...side("top", c, d), ...side("left", d, a)],
      ...(middle === undefined ? [] : strokes([[spot(low, middle), spot(high, middle)]], CHAIN)),
      ...set.holes.flatMap((hole) => drawHole(hole, spot(toNumber(hole.x), toNumber(hole.y)), k)),
      ...ordinatesAlong(above, "above", top, left, plate, pen),
      ...ordinatesLeft(beside, { left, bent: drops, long: LEADER }, plate, pen),
    ],
    width,
    height,
  };
}

/** A circle with a cross through its middle; a slot is two half circles drawn whole, and two lines. */
function drawHole({ diameter, slot }: Hole, [x, y]: Spot, k: number): readonly Item[] {
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
  if (!slot) return [circle(x, y, r, look), ...strokes(cross, NARROW)];
  const half = ((toNumber(slot[1]) - toNumber(diameter)) * k) / 2;
  const [dx, dy] = slot[0] === "x" ? [half, 0] : [0, half];
  const [ox, oy] = slot[0] === "x" ? [0, r] : [r, 0];
  const sides = [1, -1].map(
    (s): Segment => [
      [x - dx + s * ox, y - dy + s * oy],
      [x + dx + s * ox, y + dy + s * oy],
    ],
  );
  return [
    ...[circle(x - dx, y - dy, r, look), circle(x + dx, y + dy, r, look)],
    ...[...strokes(sides, look.stroke), ...strokes(cross, NARROW)],
  ];
}
