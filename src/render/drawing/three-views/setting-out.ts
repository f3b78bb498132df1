/** Where the three views stand, with room for their dimensions: the side beside the front, or below it. */
import type { Build } from "../../../solve/build.ts";
import type { Frame } from "../../style.ts";
import { bodiesOf } from "../dimension/bodies.ts";
import type { Pen } from "../drawing.ts";
import { heightOf, widthOf } from "../fit.ts";
import { type Aspect, type Laid, laid, type Outside } from "./aspect.ts";
import { dimensioning, type Rows, type Wanted } from "./dimensioning.ts";
import { roomBeside } from "./room-beside.ts";

/** For a caption. */
export const CAPTION = 16;
/** Above the highest view where there is room. */
const AIR = 12;
/** Between the views; more of it where the page has it to give. */
const [CLOSE, GAP] = [18, 44];
/** Between the outermost dimensions of two views. */
const BETWEEN = 12;

/** In the order in which a reader wants them: width, height, depth, then what only the other views show. */
const WANTED: readonly Wanted[] = [
  { view: 0, sides: ["below", "above"], overall: true },
  { view: 0, sides: ["left", "right"], overall: true },
  { view: 1, sides: ["below", "above"], overall: true },
  { view: 1, sides: ["right", "left"], overall: false },
  { view: 2, sides: ["above", "below"], overall: false },
  { view: 2, sides: ["left", "right"], overall: false },
];

export interface Arrangement {
  readonly room: Frame;
  readonly pen: Pen;
  /** The side below the front instead of beside it. */
  readonly stacked: boolean;
}

export interface Places {
  readonly views: readonly [Laid, Laid, Laid];
  readonly rows: readonly Rows[];
  /** Where the middles of the captions stand, down the page. */
  readonly captions: readonly [number, number, number];
}

/** The three views at a scale (points per unit), at the top of the room and in its middle; null where they do not go in. */
export function setOut(
  build: Pick<Build, "parts" | "motions">,
  aspects: readonly [Aspect, Aspect, Aspect],
  outside: Outside,
  scale: number,
  { room, pen, stacked }: Arrangement,
): Places | null {
  const [front, side] = aspects;
  const [wide, deep, high] = [
    widthOf(front.extent) * scale,
    widthOf(side.extent) * scale,
    heightOf(front.extent) * scale,
  ];
  // Where the side stands below, it takes up height instead of width.
  const [aside, lower] = stacked ? [0, high] : [deep, 0];
  if (wide + aside > room.width || deep + high + lower + CLOSE + 2 * CAPTION > room.height) return null;
  const rows = dimensioning(bodiesOf(build), aspects, WANTED, outside, { scale });
  const { depth, captioned } = roomBeside(aspects, rows, outside, scale, pen);
  const apart = (one: number, other: number): number => Math.max(CLOSE, one + other + (one && other ? BETWEEN : 6));
  const left = Math.max(depth(0, "left"), depth(2, "left"), captioned(0, wide));
  const right = Math.max(depth(0, "right"), depth(2, "right"), captioned(0, wide));
  const [sideLeftward, sideRightward] = (["left", "right"] as const).map((name) =>
    Math.max(depth(1, name), captioned(1, deep)),
  ) as [number, number];
  const between = apart(right, sideLeftward);
  const middle = apart(depth(2, "below"), depth(0, "above"));
  const under = stacked ? depth(0, "below") : Math.max(depth(0, "below"), depth(1, "below"));
  // Below the front its caption, and then the side with its own.
  const next = CAPTION + Math.max(4, depth(1, "above"));
  const more = stacked ? next + high + depth(1, "below") : 0;
  const inset = stacked ? Math.max(0, (wide - deep) / 2) : 0;
  const [start, end] = stacked
    ? [Math.max(left, sideLeftward - inset), Math.max(wide + right, inset + deep + sideRightward)]
    : [left, wide + between + deep + sideRightward];
  const top = CAPTION + depth(2, "above");
  const spare = {
    across: room.width - (start + end),
    down: room.height - (top + deep + middle + high + under + more + CAPTION),
  };
  if (spare.across < 0 || spare.down < 0) return null;
  const wider = Math.min(Math.max(0, GAP - between), stacked ? 0 : spare.across / 2);
  const taller = Math.min(Math.max(0, GAP - middle), spare.down / 3);
  const x = room.x + (spare.across - wider) / 2 + start;
  const y = room.y + Math.min(AIR, spare.down / 3) + top;
  const fronted = y + deep + middle + taller;
  const foot = fronted + high + under + CAPTION / 2;
  const [sideLeft, sideTop] = stacked ? [x + inset, foot - CAPTION / 2 + next] : [x + wide + between + wider, fronted];
  return {
    views: [laid(front, scale, x, fronted), laid(side, scale, sideLeft, sideTop), laid(aspects[2], scale, x, y)],
    rows,
    captions: [
      foot,
      stacked ? sideTop + high + depth(1, "below") + CAPTION / 2 : foot,
      y - depth(2, "above") - CAPTION / 2,
    ],
  };
}
