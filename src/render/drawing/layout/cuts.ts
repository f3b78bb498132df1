/** Saw cuts: a line along the middle of the kerf, a number, and below the board what fence or stop is set to. */
import type { Cut, Layout } from "../../../solve/build.ts";
import { add, half } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { ACCENT, BLACK, GREY, WHITE } from "../../palette.ts";
import { circle } from "../../shapes.ts";
import type { Frame } from "../../style.ts";
import type { Pen, Spot } from "../drawing.ts";
import { ahead, centred, heading, strokes } from "../ink.ts";
import { boxAround, grown, type Plate, type Segment } from "../plate.ts";
import { CUT } from "../strokes.ts";
import type { Board } from "./board.ts";

const RADIUS = 7;
const SIZE = 10;

const lineOf = (board: Board, { kind, from, to }: Cut, { kerf }: Layout): Segment => {
  const aside = half(kerf);
  const middle = ([x, y]: Cut["from"]): Spot =>
    kind === "rip" ? board.spot(add(x, aside), y) : board.spot(x, add(y, aside));
  return [middle(from), middle(to)];
};

export function drawCuts(layout: Layout, board: Board, plate: Plate, pen: Pen): readonly Item[] {
  const lines = layout.cuts.map((cut) => ({ cut, line: lineOf(board, cut, layout) }));
  for (const { line } of lines) plate.addLine(line);
  const numbers = lines.flatMap(({ cut, line }) => {
    const spot = placeOf(line, board, plate, widthOf(pen, cut));
    plate.addBox(boxAround(spot[0], spot[1], widthOf(pen, cut), 2 * RADIUS));
    return numberAt(pen, cut, spot);
  });
  return [
    ...strokes(
      lines.map(({ line }) => line),
      CUT,
    ),
    ...numbers,
  ];
}

const widthOf = (pen: Pen, { number }: Cut): number =>
  Math.max(2 * RADIUS, pen.measure(String(number), "bold", SIZE) + 5);

const numberAt = (pen: Pen, cut: Cut, spot: Spot): readonly Item[] => [
  circle(spot[0], spot[1], widthOf(pen, cut) / 2, { fill: WHITE, stroke: { width: 0.7, ink: ACCENT } }),
  centred(pen, String(cut.number), spot, { font: "bold", size: SIZE, ink: ACCENT }).item,
];

/** Beyond the end of a cut that reaches the edge of the board, else on the cut, as near its ends as there is room. */
function placeOf([from, to]: Segment, board: Board, plate: Plate, width: number): Spot {
  const { along, distance } = heading(from, to);
  const { left, right, top, bottom } = board.box;
  const outside = ([x, y]: Spot) => x < left - 1 || x > right + 1 || y < top - 1 || y > bottom + 1;
  const beyond = [ahead(from, along, -RADIUS - 2), ahead(to, along, RADIUS + 2)].filter(outside);
  const steps = Array.from({ length: 21 }, (_, i) => (i % 2 === 0 ? i / 40 : 1 - (i - 1) / 40));
  const upon = steps.map((t) => ahead(from, along, distance * Math.min(0.97, Math.max(0.03, t))));
  const free = (air: number) => (spot: Spot) =>
    plate.isFree(grown(boxAround(spot[0], spot[1], width, 2 * RADIUS), air));
  const found = [...beyond, ...upon].find(free(0.8));
  if (found) return found;
  // In a crowd: anywhere near the cut.
  const near = upon.flatMap((spot) => [16, -16, 30, -30].map((by) => ahead(spot, [-along[1], along[0]], by)));
  return near.find(free(0)) ?? beyond[0] ?? from;
}

const ENTRY = 14;
const ROW = 18;

/** How high the list of settings is, at a width. */
export const settingsHeight = (layout: Layout, pen: Pen, width: number): number =>
  layout.cuts.length === 0 ? 0 : (settings(layout, pen, width).at(-1)?.row ?? 0) * ROW + ROW + 2;

interface Entry {
  readonly cut: Cut;
  readonly x: number;
  readonly row: number;
}

const HEAD = "Fence or stop:";

function settings({ cuts }: Layout, pen: Pen, width: number): readonly Entry[] {
  let [x, row] = [pen.measure(HEAD, "regular", SIZE) + 10, 0];
  return cuts.map((cut): Entry => {
    const wide = widthOf(pen, cut) + 4 + pen.measure(pen.print(cut.fence), "regular", SIZE) + ENTRY;
    if (x + wide - ENTRY > width) [x, row] = [0, row + 1];
    const entry = { cut, x, row };
    x += wide;
    return entry;
  });
}

/** The list of settings with its top at the frame's. */
export function drawSettings(layout: Layout, pen: Pen, { x, y, width }: Frame): readonly Item[] {
  if (layout.cuts.length === 0) return [];
  const text = (left: number, middle: number, value: string, ink = BLACK): Item => ({
    kind: "text",
    x: left,
    y: middle + 3.3,
    text: value,
    font: "regular",
    size: SIZE,
    ink,
    width: pen.measure(value, "regular", SIZE),
  });
  return [
    text(x, y + ROW / 2, HEAD, GREY),
    ...settings(layout, pen, width).flatMap((entry) => {
      const [left, middle] = [x + entry.x, y + entry.row * ROW + ROW / 2];
      const wide = widthOf(pen, entry.cut);
      return [
        ...numberAt(pen, entry.cut, [left + wide / 2, middle]),
        text(left + wide + 4, middle, pen.print(entry.cut.fence)),
      ];
    }),
  ];
}
