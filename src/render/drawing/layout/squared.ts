/** The two edges of a sheet that are squared first: heavy, and said below, so that nobody measures from a factory edge. */
import type { Layout } from "../../../solve/build.ts";
import { sign, ZERO } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { BLACK } from "../../palette.ts";
import type { Frame } from "../../style.ts";
import type { Pen } from "../drawing.ts";
import { centred, strokes } from "../ink.ts";
import type { Segment } from "../plate.ts";
import type { Board } from "./board.ts";

const HEAVY = { width: 2.6, ink: BLACK } as const;

const isSquared = ({ kind, squaring }: Layout): boolean => kind === "sheet" && sign(squaring) > 0;

/** Along x = 0 and y = 0. */
export function squaredEdges(layout: Layout, { spot }: Board): readonly Item[] {
  if (!isSquared(layout)) return [];
  const corner = spot(ZERO, ZERO);
  const edges: readonly Segment[] = [
    [corner, spot(layout.width, ZERO)],
    [corner, spot(ZERO, layout.length)],
  ];
  return strokes(edges, HEAVY);
}

/** What the heavy lines mean, right of the sign for the grain, in as many words as there is room for. */
export function squaredLegend(layout: Layout, { box }: Board, pen: Pen, frame: Frame, y: number): readonly Item[] {
  if (!isSquared(layout)) return [];
  const first = `squared first, ${pen.print(layout.squaring)} off`;
  const right = Math.max(box.right, Math.min(box.left + 420, frame.x + frame.width));
  const room = right - box.left - 96 - 24;
  const texts = [`${first}: measure from here, never from a factory edge`, first, "squared"];
  const text = texts.find((each) => pen.measure(each, "regular", 10) <= room);
  if (text === undefined) return [];
  const width = pen.measure(text, "regular", 10);
  const left = right - width - 24;
  const { item } = centred(pen, text, [left + 24 + width / 2, y], {});
  return [
    ...strokes(
      [
        [
          [left, y],
          [left + 18, y],
        ],
      ],
      HEAVY,
    ),
    item,
  ];
}
