/** Arrows of travel: one for each way, close behind an edge of what goes that way, or ahead of one of what comes off. */
import { picturePoint, type View } from "../../../geometry/picture/index.ts";
import type { Item } from "../../document.ts";
import { ACCENT, WHITE } from "../../palette.ts";
import { polygon } from "../../shapes.ts";
import type { Spot } from "../drawing.ts";
import { ahead, heading, strokes } from "../ink.ts";
import { type Box, grown, type Plate, type Segment } from "../plate.ts";
import { CHAIN } from "../strokes.ts";
import type { Group } from "./groups.ts";

const LENGTH = 30;
const HEAD = 11;
const HALF_HEAD = 6;
const HALF_SHAFT = 2.1;
/** From an edge of what moves to the arrow: farther off it would seem to come from nowhere. */
const NEAR = [4, 7, 10, 13] as const;
/** Where there is no room so near it stands at the end of a line of travel. */
const FAR = [24, 34, 44, 56, 70] as const;

/** One thing that moves, as it stands on the page. */
export interface Mover {
  readonly id: string;
  readonly middle: Spot;
  /** Its edges that are seen. */
  readonly edges: readonly Segment[];
}

/** An arrow; nothing where the way points at the eye, or where there is no room at all. */
export function travelArrow(
  { parts, along, leaves }: Group,
  movers: readonly Mover[],
  view: View,
  plate: Plate,
  ground: (spot: Spot) => number,
): readonly Item[] {
  const way = picturePoint(view, along);
  const { along: onPaper, distance } = heading([0, 0], [way[0], -way[1]]);
  if (distance < 0.1) return [];
  const own = movers.filter(({ id }) => parts.includes(id));
  const bestOf = (gaps: readonly number[]): Found | null => {
    let best: Found | null = null;
    for (const { middle, edges } of own)
      for (const [edge, long] of longest(edges))
        for (const anchor of [0.1, 0.3, 0.5, 0.7, 0.9].map((t) => on(edge, t)))
          for (const gap of gaps) {
            const tip = ahead(anchor, onPaper, leaves ? gap + LENGTH : -gap);
            const [off, edgeward] = [0.12 * aside(anchor, middle, onPaper), Math.min(LENGTH, long) / LENGTH];
            const most: number = best ? best.cost - (off + 0.3 * gap - edgeward) + ROUNDING : BLOCKED;
            if (most < 0) continue;
            const cost: number = costOf(tip, onPaper, plate, ground, most) + off + 0.3 * gap - edgeward;
            if (cost < BLOCKED && (!best || cost < best.cost - 1e-9)) best = { tip, anchor, cost };
          }
    return best;
  };
  const near = bestOf(NEAR);
  const best = near ?? bestOf(FAR);
  if (!best) return [];
  plate.addBox(boxOf(best.tip, onPaper));
  if (near) return [arrow(near.tip, onPaper)];
  const line: Segment = [leaves ? ahead(best.tip, onPaper, -LENGTH) : best.tip, best.anchor];
  plate.addLine(line);
  return [...strokes([line], CHAIN), arrow(best.tip, onPaper)];
}

/** Where an arrow ends, and the place on an edge that it goes with. */
interface Found {
  readonly tip: Spot;
  readonly anchor: Spot;
  readonly cost: number;
}

const BLOCKED = 1e6;
const ROUNDING = 1e-6;
/** So many edges of each thing are tried. */
const MOST = 16;

const longest = (edges: readonly Segment[]): readonly (readonly [Segment, number])[] =>
  edges
    .map((edge) => [edge, heading(...edge).distance] as const)
    .sort((a, b) => b[1] - a[1])
    .slice(0, MOST);

const on = ([a, b]: Segment, t: number): Spot => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

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

/** What an arrow covers; of more than `most` it is enough to know that it is more. */
function costOf(tip: Spot, along: Spot, plate: Plate, ground: (spot: Spot) => number, most: number): number {
  let covered = 0;
  for (const t of [0, 0.25, 0.5, 0.75, 1]) covered += ground(ahead(tip, along, -LENGTH * t));
  if (3 * covered > most || !plate.isFree(grown(boxOf(tip, along), 2))) return BLOCKED;
  let lines = 0;
  for (const t of [0.15, 0.5, 0.85]) {
    const [x, y] = ahead(tip, along, -LENGTH * t);
    lines += plate.linesThrough({ left: x - 5, right: x + 5, top: y - 5, bottom: y + 5 });
    if (3 * covered + 3 * lines > most) return BLOCKED;
  }
  return 3 * covered + 3 * lines;
}

/** How far a spot is from the line of travel through the middle. */
const aside = (spot: Spot, middle: Spot, along: Spot): number =>
  Math.abs((spot[0] - middle[0]) * along[1] - (spot[1] - middle[1]) * along[0]);

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
