/** What is put between a part and its wall where that stands clear of it, so that its screw does not bend the wood. */
import type { Vec } from "../../../../geometry/types.ts";
import { toNumber, UNITS_PER_INCH } from "../../../../units/index.ts";
import type { Item } from "../../../document.ts";
import { TINT } from "../../../palette.ts";
import type { Label } from "../../balloon-places.ts";
import type { Spot } from "../../drawing.ts";
import { fills, strokes } from "../../ink.ts";
import type { Marked } from "../../labels.ts";
import { type Box, boxAround, type Plate } from "../../plate.ts";
import { OUTLINE } from "../../strokes.ts";
import { cornersOf } from "./cut-wall.ts";
import { placeAt, type WallFixing } from "./fixing.ts";

/** So far above and below the screw; common practice, no source. Less room than a hair is none. */
const HALF = 0.75 * UNITS_PER_INCH;
const HAIR = UNITS_PER_INCH / 64;

export interface Packing {
  readonly items: readonly Item[];
  readonly names: readonly Label[];
}

const NONE: Packing = { items: [], names: [] };

/** In section, with its name; nothing where the part lies on the wall. `fixed`: the parts that the screw goes through. */
export function packingIn(fixing: WallFixing, fixed: readonly Marked[], plate: Plate, spot: (p: Vec) => Spot): Packing {
  const { kind, one, to, sign, along, wall } = fixing;
  const [own] = one.hardware;
  const backs = fixed.map(({ solid }) => solid[sign === 1 ? "high" : "low"][to]);
  if (kind !== "screw" || backs.length === 0) return NONE;
  const back = backs.reduce((a, b) => (a * sign > b * sign ? a : b));
  if ((wall - back) * sign < HAIR) return NONE;
  const [level, height] = [toNumber(own.at[along]), toNumber(own.at[2])];
  // No higher and no lower than what it is behind.
  const [foot, head] = [
    Math.max(height - HALF, Math.min(...fixed.map(({ solid }) => solid.low[2]))),
    Math.min(height + HALF, Math.max(...fixed.map(({ solid }) => solid.high[2]))),
  ];
  const [[x1, y1], [x2, y2]] = [spot(placeAt(fixing, level, back, head)), spot(placeAt(fixing, level, wall, foot))];
  const box: Box = { left: Math.min(x1, x2), right: Math.max(x1, x2), top: Math.min(y1, y2), bottom: Math.max(y1, y2) };
  const [middle, wide] = [(x1 + x2) / 2, box.right - box.left];
  plate.addBox(boxAround(middle, (y1 + y2) / 2, wide, box.bottom - box.top));
  const corners = cornersOf(box);
  return {
    items: [
      ...fills([corners], TINT.middle),
      ...strokes(
        corners.map((corner, i) => [corner, corners[(i + 1) % corners.length] ?? corner]),
        OUTLINE,
      ),
    ],
    names: [
      {
        mark: "packing",
        targets: [0.12, 0.88].map((t): Spot => [middle, box.top + t * (box.bottom - box.top)]),
        hidden: false,
      },
    ],
  };
}
