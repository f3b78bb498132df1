/** One of the three views, before it has a place on the page. */
import { FRONT, RIGHT, TOP, type View } from "../../../geometry/picture/index.ts";
import { isEmpty } from "../../../geometry/solid.ts";
import type { PictureItem, Point2, VisibleFace } from "../../../geometry/types.ts";
import { panesOf } from "../../../solve/build/order/glazing.ts";
import type { Build } from "../../../solve/build.ts";
import { type Length, toNumber } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { type Extent, type Fit, fitAt } from "../fit.ts";
import { sheen } from "../glass.ts";
import { onPage, strokes } from "../ink.ts";
import { openHoles } from "../open-holes.ts";
import { SPECK } from "../picture.ts";
import type { Box, Segment } from "../plate.ts";
import { Sight } from "../sight.ts";
import { FINE, OUTLINE } from "../strokes.ts";

export type Corner = readonly [Length, Length, Length];
export interface Outside {
  readonly low: Corner;
  readonly high: Corner;
}

export interface Aspect {
  readonly caption: string;
  readonly lines: readonly PictureItem[];
  /** What is seen of panes, and of the rims of open holes. */
  readonly panes: readonly VisibleFace[];
  readonly rims: readonly (readonly [Point2, Point2])[];
  /** Axes of the piece that run across and up the page. */
  readonly axes: readonly [0 | 1 | 2, 0 | 1 | 2];
  readonly extent: Extent;
  /** The exact box around what stands there. */
  readonly outside: Outside;
}

/** Front, right side, top; with the hardware that does not stand out past the outside there, where the dimensions are. */
export function aspectsOf(
  { parts, holes, design }: Pick<Build, "parts" | "holes" | "design">,
  outside: Outside,
  hardware: Build["hardware"] = [],
): readonly [Aspect, Aspect, Aspect] {
  const clear = panesOf(design);
  const aspect = (caption: string, view: View, axes: Aspect["axes"]): Aspect => {
    const corner = (of: Corner) => [toNumber(of[axes[0]]), toNumber(of[axes[1]])] as const;
    const extent = { low: corner(outside.low), high: corner(outside.high) };
    const within = hardware.filter(
      ({ solid }) =>
        !isEmpty(solid) &&
        axes.every((axis, i) => solid.low[axis] >= (extent.low[i] ?? 0) && solid.high[axis] <= (extent.high[i] ?? 0)),
    );
    const sight = new Sight([...parts, ...within], view, clear);
    const rims = openHoles(holes, sight.stage, () => [0, 0, 0]);
    return { caption, axes, extent, outside, lines: sight.lines(), panes: sight.panes(), rims };
  };
  return [aspect("Front", FRONT, [0, 2]), aspect("Right side", RIGHT, [1, 2]), aspect("Top", TOP, [0, 1])];
}

/** An aspect with its place. */
export interface Laid {
  readonly aspect: Aspect;
  readonly fit: Fit;
  readonly box: Box;
}

export function laid(aspect: Aspect, scale: number, x: number, y: number): Laid {
  const fit = fitAt(aspect.extent, scale, x, y);
  const [[left, bottom], [right, top]] = [fit.page(aspect.extent.low), fit.page(aspect.extent.high)];
  return { aspect, fit, box: { left, top, right, bottom } };
}

/** An aspect on the page, without its dimensions: edges, panes and open holes. */
export const linedOut = ({ panes, rims }: Aspect, edges: readonly Segment[], fit: Fit): readonly Item[] => [
  ...sheen(panes, fit),
  ...strokes(edges, OUTLINE),
  ...strokes(onPage(fit, rims), FINE),
];

/** The visible edges on the page, without specks. */
export const edgeLines = ({ lines }: Aspect, fit: Fit): readonly Segment[] =>
  onPage(
    fit,
    lines.flatMap(({ visible }) => visible),
  ).filter(([a, b]) => Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1]) >= SPECK.drawing);
