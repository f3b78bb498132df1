/** A cutting layout: the board or sheet to scale with its parts, numbered cuts and offcuts, and the way of the grain. */
import { marked } from "../../../solve/build/layout-facts.ts";
import type { Build, Layout } from "../../../solve/build.ts";
import type { Item } from "../../document.ts";
import { BLACK, GREY, TINT, WHITE } from "../../palette.ts";
import { bounds, leaves, rectangle } from "../../shapes.ts";
import type { Frame } from "../../style.ts";
import { type Drawing, NOT_TO_SCALE, type Pen, type Spot } from "../drawing.ts";
import { arrowhead, centred, strokes } from "../ink.ts";
import { type Box, boxAround, grown, Plate } from "../plate.ts";
import { closeScales, type Scale, usualScale, usualScales } from "../scale.ts";
import { HIDDEN, NARROW, OUTLINE } from "../strokes.ts";
import { listed } from "../words.ts";
import { type Board, boardOn, liesDown, widest } from "./board.ts";
import { drawCuts } from "./cuts.ts";
import { HATCH, hatch } from "./hatch.ts";
import { BELOW, labelOutside, sideBySide } from "./outside-label.ts";
import { labelInside } from "./part-label.ts";
import { drawSettings, settingsHeight } from "./settings.ts";
import { drawSizes, sizesHeight, unsized } from "./sizes.ts";
import { squaredEdges, squaredLegend } from "./squared.ts";

export interface LayoutDrawingOptions {
  readonly frame: Frame;
  readonly pen: Pen;
  /** Whether it may be drawn in a scale between the usual ones. */
  readonly close?: boolean;
}

export interface LayoutDrawing extends Drawing {
  /** So many sizes stand in the list below the board: no room was for them in the parts. */
  readonly listed: number;
}

/** Room round the board for the numbers of cuts, labels and the grain. */
const MARGIN = 18;
const GRAIN = 16;

/** The drawing fills the frame from its top; where the board is small, the foot of the frame stays empty. */
export function layoutDrawing(build: Build, layout: Layout, options: LayoutDrawingOptions): LayoutDrawing {
  return drawn(build, layout, options, MARGIN) ?? drawn(build, layout, options, BELOW) ?? NOTHING;
}

const NOTHING: LayoutDrawing = { items: [], alt: "", scale: NOT_TO_SCALE, listed: 0 };

/** With so much room below the board, and below the settings; null where labels beside it need more. */
function drawn(
  build: Build,
  layout: Layout,
  { frame, pen, close = false }: LayoutDrawingOptions,
  below: number,
  forSizes = 0,
): LayoutDrawing | null {
  const settings = settingsHeight(layout, pen, frame.width);
  const foot = settings + forSizes;
  const room: Frame = {
    x: frame.x + MARGIN,
    y: frame.y + MARGIN,
    width: frame.width - 2 * MARGIN,
    height: frame.height - MARGIN - below - GRAIN - foot,
  };
  const lying = liesDown(layout, room);
  const least = widest(layout, build.layouts);
  const fits = ({ points }: Scale): boolean => {
    const { box } = boardOn(layout, room, points, lying, least);
    return box.right - box.left <= room.width && box.bottom - box.top <= room.height;
  };
  const { units } = build.design;
  const scale = usualScale(units, fits, close ? closeScales(units) : usualScales(units));
  const board = boardOn(layout, room, scale.points, lying, least);
  const plate = new Plate({ ...frame, height: frame.height - foot });
  const outline = (box: Box, paint: Parameters<typeof rectangle>[4]): Item =>
    rectangle(box.left, box.top, box.right - box.left, box.bottom - box.top, paint);
  const later = new Set(build.blanks.flatMap(({ id, why }) => (why === "cut later" ? [id] : [])));
  const parts = layout.placements.map((placement) => ({
    box: board.rectangle(placement),
    stroke: later.has(placement.blank) ? HIDDEN : NARROW,
    mark: marked(placement, build.blanks),
    size: `${pen.print(placement.width)} × ${pen.print(placement.length)}`,
  }));
  const boxes = parts.map(({ box }) => box);
  // Below the labels that stand beside narrow parts.
  const signs = board.box.bottom + below + GRAIN / 2 - 2;
  const grain = grainArrow(board, signs, plate, pen);
  const labels = parts.map(({ box, mark, size }) => ({
    box,
    mark,
    size,
    items: labelInside(pen, mark, size, box, plate, lying && layout.kind === "board"),
  }));
  const small = unsized(labels.map(({ mark, size, items }) => ({ mark, size, isTold: saysMore(items, mark) })));
  // In less room fewer sizes go in: the list gets no shorter by it.
  const wanted = sizesHeight(small, pen, frame.width);
  if (wanted > forSizes) return drawn(build, layout, { frame, pen, close }, below, wanted);
  const cuts = drawCuts(layout, board, boxes, plate, pen);
  const labelOf = (set: readonly { readonly mark: string; readonly box: Box }[]): readonly Item[] =>
    labelOutside(
      pen,
      set[0]?.mark ?? "",
      set.map(({ box }) => box),
      board.box,
      boxes,
      plate,
    );
  const beside = sideBySide(labels.filter(({ items }) => items === null)).flatMap((set) => {
    const one = labelOf(set);
    return one.length > 0 ? one : set.flatMap((each) => labelOf([each]));
  });
  if (beside.length > 0 && below < BELOW && bounds(leaves(beside))[3] > board.box.bottom) return null;
  const settingsTop = board.box.bottom + below + GRAIN;
  return {
    items: [
      outline(board.box, { fill: WHITE }),
      ...layout.offcuts.flatMap((offcut) => strokes(hatch(board.rectangle(offcut)), HATCH)),
      ...parts.map(({ box, stroke }) => outline(box, { fill: TINT.middle, stroke })),
      outline(board.box, { stroke: OUTLINE }),
      ...squaredEdges(layout, board),
      ...layout.offcuts.flatMap((offcut) =>
        offcutLabel(board.rectangle(offcut), `${pen.print(offcut.width)} × ${pen.print(offcut.length)}`, plate, pen),
      ),
      ...labels.flatMap(({ items }) => items ?? []),
      ...cuts,
      ...beside,
      ...grain,
      ...squaredLegend(layout, board, pen, frame, signs),
      ...drawSettings(layout, pen, { ...frame, y: settingsTop }),
      ...drawSizes(small, pen, { ...frame, y: settingsTop + settings }),
    ],
    alt: inWords(build, layout, pen),
    scale: scale.text,
    listed: small.length,
  };
}

/** Whether a label tells more than its mark. */
const saysMore = (items: readonly Item[] | null, mark: string): boolean =>
  (items ?? []).some((item) => item.kind === "text" && item.text !== mark);

/** "Offcut" and its size on a white ground, where it is large enough to be worth a word. */
function offcutLabel(box: Box, size: string, plate: Plate, pen: Pen): readonly Item[] {
  const middle: Spot = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  for (const text of [`offcut ${size}`, size]) {
    const wide = pen.measure(text, "regular", 10) + 6;
    const spare = (box.right - box.left - wide) / 2;
    // Beside the number of a cut rather than without its word.
    for (const share of [0, 0.5, -0.5, 1, -1]) {
      const spot: Spot = [middle[0] + share * spare, middle[1]];
      const { item, box: around } = centred(pen, text, spot, { ink: GREY });
      const high = around.bottom - around.top + 2;
      if (spare < 0 || high > box.bottom - box.top) continue;
      if (!plate.isFree(grown(around, 1))) continue;
      plate.addBox(around);
      return [rectangle(spot[0] - wide / 2, spot[1] - high / 2, wide, high, { fill: WHITE }), item];
    }
  }
  return [];
}

/** A double arrow along the board's length, below it, with its name. */
function grainArrow({ lying, box }: Board, y: number, plate: Plate, pen: Pen): readonly Item[] {
  const { item, box: text } = centred(pen, "grain", [box.left + 50, y], {});
  const stroke = { width: 0.7, ink: BLACK };
  plate.addBox(boxAround(box.left + 35, y, 70, 12));
  if (!lying) {
    const x = box.left + 8;
    return [
      ...strokes(
        [
          [
            [x, y - 8],
            [x, y + 8],
          ],
        ],
        stroke,
      ),
      arrowhead([x, y - 9], [0, -1], BLACK, 6),
      arrowhead([x, y + 9], [0, 1], BLACK, 6),
      { ...item, x: x + 10 } as Item,
    ];
  }
  return [
    ...strokes(
      [
        [
          [box.left + 2, y],
          [text.left - 6, y],
        ],
      ],
      stroke,
    ),
    arrowhead([box.left, y], [-1, 0], BLACK, 6),
    arrowhead([text.left - 4, y], [1, 0], BLACK, 6),
    item,
  ];
}

function inWords(build: Build, layout: Layout, pen: Pen): string {
  const { placements, cuts, offcuts, kind, width, length, stock } = layout;
  const label = build.design.stock.find(({ name }) => name === stock)?.label ?? stock;
  const rectangleWords = (r: { readonly width: typeof width; readonly length: typeof length }) =>
    `${pen.print(r.width)} × ${pen.print(r.length)}`;
  return [
    `${kind === "sheet" ? "Sheet" : "Board"} of ${label}, ${pen.print(width)} × ${pen.print(length)}.`,
    placements.length > 0 ? `Parts: ${listed(placements.map((p) => `${p.mark} ${rectangleWords(p)}`))}.` : "",
    cuts.length > 0
      ? `Cuts in order: ${listed(cuts.map((c) => `${c.number} ${c.kind} at ${pen.print(c.fence)}`))}.`
      : "",
    offcuts.length > 0 ? `Left over: ${listed(offcuts.map(rectangleWords))}.` : "",
  ]
    .filter((text) => text !== "")
    .join(" ");
}
