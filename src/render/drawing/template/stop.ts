/** A drill in its true size with the stop on it: laid on the paper, the stop is set. */
import type { Length } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { TINT } from "../../palette.ts";
import { polygon, rectangle } from "../../shapes.ts";
import type { Pen, Spot } from "../drawing.ts";
import { strokes } from "../ink.ts";
import { NARROW, OUTLINE } from "../strokes.ts";
import { truePoints } from "./print-bar.ts";
import type { Panel } from "./set-out.ts";

/** The stop, and what is seen of the drill behind it. */
const STOP = { long: 14, beyond: 6 } as const;
const SHANK = 10;

/** From the top left corner (0, 0); the stop at the left, the tip at the right. */
export function stopDrawing(diameter: Length, depth: Length, pen: Pen): Panel & { readonly alt: string } {
  const [wide, deep] = [truePoints(diameter), truePoints(depth)];
  const height = wide + 2 * STOP.beyond;
  const middle = height / 2;
  const face = SHANK + STOP.long;
  const tip = face + deep;
  // The point of a drill takes part of the depth.
  const point = Math.min(wide / 4, deep / 3);
  const drill: readonly Spot[] = [
    [0, middle - wide / 2],
    [tip - point, middle - wide / 2],
    [tip, middle],
    [tip - point, middle + wide / 2],
    [0, middle + wide / 2],
  ];
  const items: readonly Item[] = [
    polygon(drill, { stroke: OUTLINE, fill: TINT.light }),
    rectangle(SHANK, 0, STOP.long, height, { stroke: OUTLINE, fill: TINT.dark }),
    ...strokes(
      [face, tip].map((x) => [
        [x, height + 2],
        [x, height + 8],
      ]),
      NARROW,
    ),
    ...strokes(
      [
        [
          [face, height + 5],
          [tip, height + 5],
        ],
      ],
      NARROW,
    ),
  ];
  return {
    ...{ items, width: tip + 4, height: height + 10 },
    alt: `A drill of ${pen.print(diameter)} with the stop ${pen.print(depth)} behind its tip, as large as it is.`,
  };
}

/** What is longer is set with a rule: as much goes beside others on a page of either size. */
export const fitsBeside = (depth: Length): boolean => truePoints(depth) <= 230;
