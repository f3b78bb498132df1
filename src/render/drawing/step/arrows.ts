/** Arrows of travel: one for each group that moves, beside or behind it, where it covers least. */
import { picturePoint, type View } from "../../../geometry/picture/index.ts";
import type { Vec } from "../../../geometry/types.ts";
import { plus, times } from "../../../geometry/vec.ts";
import type { Item } from "../../document.ts";
import { ACCENT, WHITE } from "../../palette.ts";
import { polygon } from "../../shapes.ts";
import type { Spot } from "../drawing.ts";
import type { Bounds } from "../exploded/spread.ts";
import type { Fit } from "../fit.ts";
import { ahead, heading } from "../ink.ts";
import { type Box, grown, type Plate } from "../plate.ts";
import type { Group } from "./groups.ts";

const LENGTH = 30;
const HEAD = 11;
const HALF_HEAD = 6;
const HALF_SHAFT = 2.1;

/** Nothing where the way points at the eye. */
export function travelArrow(
  { box, along, leaves = false }: Group,
  view: View,
  fit: Fit,
  plate: Plate,
  ground: (spot: Spot) => number,
): readonly Item[] {
  const way = picturePoint(view, along);
  const { along: onPaper, distance } = heading([0, 0], [way[0], -way[1]]);
  if (distance < 0.1) return [];
  const middle = fit.spot(view, times(plus(box.low, box.high), 0.5));
  let best: { tip: Spot; cost: number } | null = null;
  for (const anchor of anchors(box).map((p) => fit.spot(view, p)))
    for (const back of leaves ? AHEAD : BEHIND)
      for (const aside of [0, 9, -9, 18, -18, 30, -30]) {
        const tip = ahead(ahead(anchor, onPaper, -back), [-onPaper[1], onPaper[0]], aside);
        const cost =
          costOf(tip, onPaper, plate, ground) +
          offside(tip, middle, onPaper) +
          0.15 * Math.abs(leaves ? back + LENGTH : back) +
          (back < 0 === leaves ? 0 : WRONG_SIDE) +
          0.1 * Math.abs(aside);
        if (!best || cost < best.cost) best = { tip, cost };
      }
  if (!best || best.cost >= BLOCKED) return [];
  plate.addBox(boxOf(best.tip, onPaper));
  return [arrow(best.tip, onPaper)];
}

const BLOCKED = 1e6;
/** From the group back to the tip: behind what arrives, ahead of what leaves, where there is room. */
const BEHIND = [6, 14, 24, 36, 50, 66, -40] as const;
/** An arrow on the wrong side of its group seems to lead away from it, or to it. */
const WRONG_SIDE = 40;
const AHEAD = [-34, -40, -48, -26, 6] as const;

/** Corners of the box, middles of its edges and faces. */
function anchors({ low, high }: Bounds): readonly Vec[] {
  const steps = (i: 0 | 1 | 2) => [low[i], (low[i] + high[i]) / 2, high[i]];
  return steps(0).flatMap((x) => steps(1).flatMap((y) => steps(2).map((z): Vec => [x, y, z])));
}

function boxOf(tip: Spot, along: Spot): Box {
  const tail = ahead(tip, along, -LENGTH);
  return grown(
    {
      left: Math.min(tip[0], tail[0]),
      right: Math.max(tip[0], tail[0]),
      top: Math.min(tip[1], tail[1]),
      bottom: Math.max(tip[1], tail[1]),
    },
    HALF_SHAFT,
  );
}

function costOf(tip: Spot, along: Spot, plate: Plate, ground: (spot: Spot) => number): number {
  const box = boxOf(tip, along);
  if (!plate.isFree(grown(box, 2))) return BLOCKED;
  const samples = [0, 0.25, 0.5, 0.75, 1].map((t) => ahead(tip, along, -LENGTH * t));
  const covered = samples.reduce((sum, spot) => sum + ground(spot), 0);
  const lines = [0.15, 0.5, 0.85].reduce((sum, t) => {
    const [x, y] = ahead(tip, along, -LENGTH * t);
    return sum + plate.linesThrough({ left: x - 5, right: x + 5, top: y - 5, bottom: y + 5 });
  }, 0);
  return 3 * covered + 3 * lines;
}

/** How far the arrow stands from the line of travel through the middle of the group. */
const offside = (tip: Spot, middle: Spot, along: Spot): number =>
  0.06 * Math.abs((tip[0] - middle[0]) * along[1] - (tip[1] - middle[1]) * along[0]);

function arrow(tip: Spot, along: Spot): Item {
  const at = (back: number, aside: number): Spot => [
    tip[0] - along[0] * back - along[1] * aside,
    tip[1] - along[1] * back + along[0] * aside,
  ];
  return polygon(
    [
      tip,
      at(HEAD, HALF_HEAD),
      at(HEAD, HALF_SHAFT),
      at(LENGTH, HALF_SHAFT),
      at(LENGTH, -HALF_SHAFT),
      at(HEAD, -HALF_SHAFT),
      at(HEAD, -HALF_HEAD),
    ],
    { fill: ACCENT, stroke: { width: 0.6, ink: WHITE } },
  );
}
