/** Where the two sections stand, with room for their dimensions: side by side, or one below the other. */
import type { Build } from "../../../solve/build.ts";
import type { Frame } from "../../style.ts";
import { bodiesOf } from "../dimension/bodies.ts";
import type { Pen } from "../drawing.ts";
import { heightOf, widthOf } from "../fit.ts";
import { type Laid, laid } from "../three-views/aspect.ts";
import { dimensioning, type Measured, type Rows, type Wanted } from "../three-views/dimensioning.ts";
import { roomBeside } from "../three-views/room-beside.ts";
import type { Section } from "./section.ts";

const GAP = 40;
const CAPTION = 18;

/** What is told beside the sections: places that the views from outside do not show. */
const WANTED: readonly Wanted[] = [
  { view: 0, sides: ["left", "right"], overall: false },
  { view: 0, sides: ["below", "above"], overall: false },
  { view: 1, sides: ["right", "left"], overall: false },
  { view: 1, sides: ["below", "above"], overall: false },
];

export interface SetOut {
  readonly views: readonly [Laid, Laid];
  readonly rows: readonly Rows[];
  /** Where the middles of the captions stand, down the page. */
  readonly captions: readonly [number, number];
}

export interface Room {
  readonly frame: Frame;
  readonly pen: Pen;
  /** The side below the front instead of beside it. */
  readonly stacked: boolean;
  /** What is told already. */
  readonly before: Measured;
}

/** At a scale (points per unit), at the top of the frame and in its middle; null where they do not go in. */
export function setOut(
  build: Pick<Build, "parts" | "motions">,
  cuts: readonly [Section, Section],
  scale: number,
  { frame, pen, stacked, before }: Room,
): SetOut | null {
  const [front, side] = cuts;
  const [wide, deep] = [widthOf(front.extent) * scale, widthOf(side.extent) * scale];
  const high = heightOf(front.extent) * scale;
  const across = stacked ? Math.max(wide, deep) : wide + deep + GAP;
  if (across > frame.width || (stacked ? 2 : 1) * (high + CAPTION) > frame.height) return null;
  const rows = dimensioning(bodiesOf(build), cuts, WANTED, { scale, before, printing: pen, cut: true });
  const { depth, captioned } = roomBeside(cuts, rows, scale, pen);
  const reach = (view: 0 | 1, name: "left" | "right", width: number): number =>
    Math.max(depth(view, name), captioned(view, width));
  const above = (view: 0 | 1): number => depth(view, "above") + 2;
  const below = (view: 0 | 1): number => depth(view, "below");
  const inset = stacked ? (wide - deep) / 2 : 0;
  const left = stacked ? Math.max(reach(0, "left", wide), reach(1, "left", deep) - inset) : reach(0, "left", wide);
  const gap = Math.max(GAP, reach(0, "right", wide) + reach(1, "left", deep) + GAP / 3);
  const used = stacked
    ? left + Math.max(wide + reach(0, "right", wide), inset + deep + reach(1, "right", deep))
    : left + wide + gap + deep + reach(1, "right", deep);
  const spare = frame.width - used;
  const top = frame.y + (stacked ? above(0) : Math.max(above(0), above(1)));
  const under = top + high + (stacked ? below(0) : Math.max(below(0), below(1)));
  const second = stacked ? under + CAPTION + above(1) + 6 : top;
  const foot = stacked ? second + high + below(1) : under;
  if (spare < 0 || foot + CAPTION > frame.y + frame.height) return null;
  const x = frame.x + spare / 2 + left;
  return {
    views: [laid(front, scale, x, top), laid(side, scale, stacked ? x + inset : x + wide + gap, second)],
    rows,
    captions: [under + CAPTION / 2 + 2, foot + CAPTION / 2 + 2],
  };
}
