/** Where the three views stand, with room for their dimensions and each with its caption above it: the side beside the front, or below it, there also with captions beside them. */
import type { Build } from "../../../solve/build.ts";
import type { Frame } from "../../style.ts";
import { bodiesOf } from "../dimension/bodies.ts";
import type { Printing } from "../dimension/closing.ts";
import type { Pen, Spot } from "../drawing.ts";
import { heightOf, widthOf } from "../fit.ts";
import { type Aspect, type Laid, laid } from "./aspect.ts";
import { dimensioning, type Rows, type Wanted } from "./dimensioning.ts";
import { roomBeside } from "./room-beside.ts";

/** For a caption. */
export const CAPTION = 16;
/** Above the highest view where there is room. */
const AIR = 12;
/** Between the views, where the page has it to give. */
const GAP = 44;
/** From what stands above a caption, which is farther than from the caption to its own view. */
const ABOVE_CAPTION = 10;
/** Between two views beside each other, at least; and with nothing between one below the other. */
const [LEAST, NEAR] = [18, 10];
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

/** The side right of the front, or below it; "close": below it with each caption right of its view, where a larger scale goes in by that. */
export type Order = "aside" | "stacked" | "close";
export const ORDERS: readonly Order[] = ["aside", "stacked", "close"];

export interface Arrangement {
  readonly room: Frame;
  readonly pen: Pen;
  readonly order: Order;
}

export interface Places {
  readonly views: readonly [Laid, Laid, Laid];
  readonly rows: readonly Rows[];
  /** The middles of the captions. */
  readonly captions: readonly [Spot, Spot, Spot];
  /** Down the page, the middle of a line below all that stands at the left, for the bar. */
  readonly foot: number;
}

/** What is told of the three views at a scale (points per unit), in whichever order they stand. */
export const rowsOf = (
  build: Pick<Build, "parts" | "motions">,
  aspects: readonly Aspect[],
  scale: number,
  printing?: Printing,
): readonly Rows[] => dimensioning(bodiesOf(build), aspects, WANTED, { scale, ...(printing && { printing }) });

/** The three views at a scale, at the top of the room and in its middle; null where they do not go in. `told`: asked for where they may. */
export function setOut(
  told: () => readonly Rows[],
  aspects: readonly [Aspect, Aspect, Aspect],
  scale: number,
  { room, pen, order }: Arrangement,
): Places | null {
  const [front, side] = aspects;
  const [wide, deep, high] = [
    widthOf(front.extent) * scale,
    widthOf(side.extent) * scale,
    heightOf(front.extent) * scale,
  ];
  const [stacked, close] = [order !== "aside", order === "close"];
  const caption = close ? 0 : CAPTION;
  // Where the side stands below, it takes up height instead of width.
  const [aside, lower] = stacked ? [0, high + caption] : [deep, 0];
  if (wide + aside > room.width || deep + high + lower + 2 * caption > room.height) return null;
  const rows = told();
  const { depth, captioned, past } = roomBeside(aspects, rows, scale, pen);
  const apart = (one: number, other: number, least = LEAST): number =>
    Math.max(least, one + other + (one && other ? BETWEEN : 6));
  const beside = aspects.map((aspect) => (close ? pen.measure(aspect.caption, "bold", 10) + BETWEEN : 0));
  const left = Math.max(depth(0, "left"), depth(2, "left"), captioned(0, wide));
  const onRight = (view: 0 | 1 | 2): number => depth(view, "right") + (beside[view] ?? 0);
  const right = Math.max(onRight(0), onRight(2), captioned(0, wide));
  const [sideLeftward, sideRightward] = (["left", "right"] as const).map((name) =>
    Math.max(name === "right" ? onRight(1) : depth(1, name), captioned(1, deep)),
  ) as [number, number];
  const between = apart(right, sideLeftward);
  // Between what stands one below the other is the caption of the lower one, close above it.
  const down = (upper: number, above: number): number =>
    close ? apart(upper, above, NEAR) : upper + ABOVE_CAPTION + CAPTION + above;
  const middle = down(depth(2, "below"), stacked ? depth(0, "above") : Math.max(depth(0, "above"), depth(1, "above")));
  const under = stacked ? depth(0, "below") : Math.max(depth(0, "below"), depth(1, "below"));
  const next = down(0, depth(1, "above"));
  const more = stacked ? next + high + depth(1, "below") : 0;
  const inset = stacked ? Math.max(0, (wide - deep) / 2) : 0;
  const [start, end] = stacked
    ? [Math.max(left, sideLeftward - inset), Math.max(wide + right, inset + deep + sideRightward)]
    : [left, wide + between + deep + sideRightward];
  const top = caption + depth(2, "above");
  const spare = {
    across: room.width - (start + end),
    // A side that stands below leaves room for the bar beside it.
    down: room.height - (top + deep + middle + high + under + more + (stacked ? 2 : CAPTION)),
  };
  if (spare.across < 0 || spare.down < 0) return null;
  const wanted = Math.max(GAP, past(0, "right") + past(1, "left") + BETWEEN);
  const wider = Math.min(Math.max(0, wanted - between), stacked ? 0 : spare.across / 2);
  const taller = Math.min(Math.max(0, GAP - middle), spare.down / 3);
  const x = room.x + (spare.across - wider) / 2 + start;
  const y = room.y + Math.min(AIR, spare.down / 3) + top;
  const fronted = y + deep + middle + taller;
  const underFront = fronted + high + under;
  const [sideLeft, sideTop] = stacked ? [x + inset, underFront + next] : [x + wide + between + wider, fronted];
  const views = [laid(front, scale, x, fronted), laid(side, scale, sideLeft, sideTop), laid(aspects[2], scale, x, y)];
  const captions = views.map(
    ({ box }, i): Spot =>
      close
        ? [box.right + onRight(i as 0 | 1 | 2) - ((beside[i] ?? 0) - BETWEEN) / 2, box.top + CAPTION / 2]
        : [(box.left + box.right) / 2, box.top - depth(i, "above") - CAPTION / 2],
  );
  return {
    views: views as unknown as Places["views"],
    rows,
    captions: captions as unknown as Places["captions"],
    foot: (stacked ? sideTop + high + depth(1, "below") : underFront + CAPTION) - CAPTION / 2,
  };
}
