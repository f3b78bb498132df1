/** The mark of a part in a circle, or the name of what has no mark; with a leader that ends in a dot on it. */
import type { Item, Stroke } from "../document.ts";
import { BLACK, WHITE } from "../palette.ts";
import { circle, line } from "../shapes.ts";
import type { Pen, Spot } from "./drawing.ts";
import { ahead, centred, heading } from "./ink.ts";
import { type Box, boxAround, type Segment } from "./plate.ts";
import { HIDDEN, NARROW } from "./strokes.ts";

/** Size of the letters of a mark, in points. */
export const MARK_SIZE = 12;
/** Size of the letters and radius of the circle, in points. */
export interface Look {
  readonly size: number;
  readonly radius: number;
  /** In thin lines and letters. */
  readonly isFine?: boolean;
}
export const LARGE: Look = { size: MARK_SIZE, radius: 9 };
/** In a drawing that is full of numbers. */
export const SMALL: Look = { size: 10, radius: 7 };
const RING = { width: 0.7, ink: BLACK } as const;
const FINE_RING = { width: 0.35, ink: BLACK } as const;

/** Marks have capitals only; a name stands without a circle, in these letters. */
const NAME = { font: "regular", size: 10 } as const;
export const isName = (mark: string): boolean => /[a-z]/.test(mark);
const NAME_HIGH = 6;

/** Half the width of a balloon: a circle, or for long marks a lozenge with round ends. */
export const balloonReach = (pen: Pen, mark: string, { size, radius }: Look = LARGE): number =>
  isName(mark)
    ? pen.measure(mark, NAME.font, NAME.size) / 2 + 2
    : Math.max(radius, pen.measure(mark, "bold", size) / 2 + radius / 2);

/** `reach`: as above, measured once for all places. */
export const balloonBox = (reach: number, mark: string, [x, y]: Spot, look: Look = LARGE): Box =>
  boxAround(x, y, 2 * reach, 2 * (isName(mark) ? NAME_HIGH : look.radius));

/** From the rim of the balloon to the part. */
export function leaderOf(half: number, mark: string, centre: Spot, target: Spot, look: Look = LARGE): Segment {
  const { along, distance } = heading(centre, target);
  if (isName(mark)) {
    // From the edge of the box around the letters.
    const [wide, high] = [half / Math.abs(along[0]), NAME_HIGH / Math.abs(along[1])];
    return [ahead(centre, along, Math.min(wide, high, distance)), target];
  }
  const reach = half - look.radius;
  // The rim of a lozenge lies between that of a circle and its longer half.
  const rim = look.radius + reach * Math.abs(along[0]);
  return [ahead(centre, along, Math.min(rim, distance)), target];
}

export function leader([from, to]: Segment, hidden = false): readonly Item[] {
  return [
    line(from[0], from[1], to[0], to[1], hidden ? HIDDEN : NARROW),
    ...(hidden ? [] : [circle(to[0], to[1], 1.3, { fill: BLACK })]),
  ];
}

export const balloon = (pen: Pen, mark: string, centre: Spot, look: Look = LARGE): readonly Item[] =>
  isName(mark)
    ? [centred(pen, mark, centre, NAME).item]
    : [
        ring(centre, balloonReach(pen, mark, look), look.radius, look.isFine ? FINE_RING : RING),
        centred(pen, mark, centre, { font: look.isFine ? "regular" : "bold", size: look.size }).item,
      ];

function ring([x, y]: Spot, reach: number, r: number, stroke: Stroke): Item {
  if (reach <= r) return circle(x, y, r, { stroke, fill: WHITE });
  const [k, s] = [r * 0.5523, reach - r];
  const cap = (side: 1 | -1) =>
    [
      {
        to: "curve",
        x1: x + side * (s + k),
        y1: y - side * r,
        x2: x + side * reach,
        y2: y - side * k,
        x: x + side * reach,
        y,
      },
      {
        to: "curve",
        x1: x + side * reach,
        y1: y + side * k,
        x2: x + side * (s + k),
        y2: y + side * r,
        x: x + side * s,
        y: y + side * r,
      },
    ] as const;
  return {
    kind: "path",
    steps: [
      { to: "move", x: x - s, y: y - r },
      { to: "line", x: x + s, y: y - r },
      ...cap(1),
      { to: "line", x: x - s, y: y + r },
      ...cap(-1),
      { to: "close" },
    ],
    stroke,
    fill: WHITE,
  };
}
