/**
 * Front, side and top, the top above the front and the right side to its right, or below it where all three are then much larger;
 * with dimensions: outside sizes on the outer rows, and inside them chains of the places that matter.
 */
import type { Build } from "../../../solve/build.ts";
import type { Item } from "../../document.ts";
import type { Frame } from "../../style.ts";
import { BAR_HEIGHT, scaleBar } from "../bar.ts";
import { bodiesOf } from "../dimension/bodies.ts";
import { drawRows } from "../dimension/rows.ts";
import { type SideName, sideOf } from "../dimension/side.ts";
import { type Drawing, NOT_TO_SCALE, type Pen } from "../drawing.ts";
import { heightOf, widthOf } from "../fit.ts";
import { centred } from "../ink.ts";
import { outsideOf } from "../outside.ts";
import { Plate } from "../plate.ts";
import { type Scale, usualScale } from "../scale.ts";
import { outsideInWords } from "../words.ts";
import { type Aspect, aspectsOf, edgeLines, type Laid, laid, linedOut, type Outside } from "./aspect.ts";
import { dimensioning, onSide, type Rows, type Wanted } from "./dimensioning.ts";

/** Space between the views, closer where they are then larger, and for a caption. */
const GAP = 36;
const CLOSE = 22;
const CAPTION = 18;
/** Beside the front the side shows what lies level with what; below it, so many times as large is worth more. */
const WORTH_STACKING = 1.6;
/** Above the highest view where there is room. */
const AIR = 12;
const ANYWHERE: Frame = { x: -1e5, y: -1e5, width: 2e5, height: 2e5 };

/** In the order in which a reader wants them: width, height, depth, then what only the other views show. */
const WANTED: readonly Wanted[] = [
  { view: 0, side: "below", overall: true },
  { view: 0, side: "left", overall: true },
  { view: 1, side: "below", overall: true },
  { view: 1, side: "right", overall: false, orElse: "left" },
  { view: 2, side: "above", overall: false },
  { view: 2, side: "left", overall: false },
];

export interface ThreeViewsOptions {
  readonly frame: Frame;
  readonly pen: Pen;
}

export function threeViews(build: Build, { frame, pen }: ThreeViewsOptions): Drawing {
  const { units, title } = build.design;
  const outside = outsideOf(build.parts);
  if (!outside) return { items: [], alt: "", scale: NOT_TO_SCALE };
  const aspects = aspectsOf(build, outside, build.hardware);
  const room = { ...frame, height: frame.height - BAR_HEIGHT - 8 };
  const at = (points: number, stacked: boolean): Places | null => {
    const set = (gap: number) => arranged(build, aspects, outside, points, { room, pen, gap, stacked });
    return (stacked ? null : set(GAP)) ?? set(CLOSE);
  };
  const [beside, below] = [false, true].map((stacked) => ({
    stacked,
    scale: usualScale(units, ({ points }) => at(points, stacked) !== null),
  })) as [{ stacked: boolean; scale: Scale }, { stacked: boolean; scale: Scale }];
  const { stacked, scale } = below.scale.points > WORTH_STACKING * beside.scale.points ? below : beside;
  const found = at(scale.points, stacked);
  const foot = found ? Math.max(...found.captions) + CAPTION / 2 + BAR_HEIGHT + 4 : frame.y + frame.height - 3;
  const bar = scaleBar(scale, units, pen, [frame.x, Math.min(foot, frame.y + frame.height - 3)]);
  return {
    items: [...(found ? drawn(found, outside, new Plate(room), pen) : []), ...bar],
    alt: `Front, right side and top of ${title}: ${outsideInWords(build.parts, units, pen)}`,
    scale: scale.text,
  };
}

interface Arrangement {
  readonly room: Frame;
  readonly pen: Pen;
  /** Between the views. */
  readonly gap: number;
  /** The side below the front instead of beside it. */
  readonly stacked: boolean;
}

interface Places {
  readonly views: readonly [Laid, Laid, Laid];
  readonly rows: readonly Rows[];
  /** Where the middles of the captions stand, down the page. */
  readonly captions: readonly [number, number, number];
}

/** The three views with room for their dimensions, at the top of the room and in its middle; null where they do not go in. */
function arranged(
  build: Build,
  aspects: readonly [Aspect, Aspect, Aspect],
  outside: Outside,
  scale: number,
  { room, pen, gap, stacked }: Arrangement,
): Places | null {
  const [front, side] = aspects;
  const [wide, deep, high] = [
    widthOf(front.extent) * scale,
    widthOf(side.extent) * scale,
    heightOf(front.extent) * scale,
  ];
  // Where the side stands below, it takes up height instead of width.
  const [aside, lower] = stacked ? [0, high] : [deep, 0];
  if (wide + aside > room.width || deep + high + lower + gap + 2 * CAPTION > room.height) return null;
  const rows = dimensioning(bodiesOf(build), aspects, WANTED, outside, { scale });
  const depth = (view: 0 | 1 | 2, name: SideName): number => {
    const here = rows.find((r) => r.view === view && r.side === name);
    return here ? beside(here, laid(aspects[view], scale, 0, 0), outside, new Plate(ANYWHERE), pen).depth : 0;
  };
  const left = Math.max(depth(0, "left"), depth(2, "left"), stacked ? depth(1, "left") : 0);
  const above = depth(2, "above");
  const below = stacked ? depth(0, "below") : Math.max(depth(0, "below"), depth(1, "below"));
  const between = gap + depth(1, "left");
  const across = stacked
    ? Math.max(wide, Math.max(wide + deep, 2 * deep) / 2 + depth(1, "right"))
    : wide + between + deep + depth(1, "right");
  const more = stacked ? CAPTION + gap / 2 + high + depth(1, "below") : 0;
  const spare = {
    across: room.width - (left + across),
    down: room.height - (CAPTION + above + deep + gap + high + below + more + CAPTION),
  };
  if (spare.across < 0 || spare.down < 0) return null;
  const x = room.x + spare.across / 2 + left;
  const y = room.y + Math.min(AIR, spare.down / 2) + CAPTION + above;
  const fronted = y + deep + gap;
  const under = fronted + high + below + CAPTION / 2;
  const [sideLeft, sideTop] = stacked
    ? [x + Math.max(0, wide - deep) / 2, under + (CAPTION + gap) / 2]
    : [x + wide + between, fronted];
  return {
    views: [laid(front, scale, x, fronted), laid(side, scale, sideLeft, sideTop), laid(aspects[2], scale, x, y)],
    rows,
    captions: [under, stacked ? sideTop + high + depth(1, "below") + CAPTION / 2 : under, y - above - CAPTION / 2],
  };
}

function drawn({ views, rows, captions }: Places, outside: Outside, plate: Plate, pen: Pen): readonly Item[] {
  const items: Item[] = [];
  views.forEach(({ aspect, fit, box }, i) => {
    const lines = edgeLines(aspect, fit);
    for (const line of lines) plate.addLine(line);
    const middle = (box.left + box.right) / 2;
    const caption = centred(pen, aspect.caption, [middle, captions[i] ?? box.bottom], { font: "bold" });
    plate.addBox(caption.box);
    items.push(...linedOut(aspect, lines, fit), caption.item);
  });
  for (const row of rows) items.push(...beside(row, views[row.view] as Laid, outside, plate, pen).items);
  return items;
}

export function beside(row: Rows, view: Laid, outside: Outside, plate: Plate, pen: Pen): ReturnType<typeof drawRows> {
  const { rows, feet } = onSide(row, view, outside, pen);
  return drawRows(rows, feet, sideOf(view.box, row.side), plate, pen);
}
