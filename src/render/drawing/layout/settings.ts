/** Below the board: what fence or stop is set to, once for all cuts that follow one another at one setting. */
import { type Setting, settingsOf } from "../../../solve/build/layout-facts.ts";
import type { Layout } from "../../../solve/build.ts";
import type { Item } from "../../document.ts";
import { BLACK, GREY } from "../../palette.ts";
import type { Frame } from "../../style.ts";
import type { Pen } from "../drawing.ts";
import { numberAt, widthOf } from "./cuts.ts";

const SIZE = 10;
const GAP = 14;
const ROW = 18;
/** Between numbers of one setting. */
const CLOSE = 2;
const HEAD = "Fence or stop:";

interface Entry {
  readonly setting: Setting;
  readonly x: number;
  readonly row: number;
}

const numbersWide = (pen: Pen, { cuts }: Setting): number =>
  cuts.reduce((so, cut) => so + widthOf(pen, cut) + CLOSE, -CLOSE);

/** How high the list of settings is, at a width. */
export const settingsHeight = (layout: Layout, pen: Pen, width: number): number =>
  layout.cuts.length === 0 ? 0 : (entries(layout, pen, width).at(-1)?.row ?? 0) * ROW + ROW + 2;

function entries(layout: Layout, pen: Pen, width: number): readonly Entry[] {
  let [x, row] = [pen.measure(HEAD, "regular", SIZE) + 10, 0];
  return settingsOf(layout)
    .flatMap(splitTo(pen, width))
    .map((setting): Entry => {
      const wide = numbersWide(pen, setting) + 4 + pen.measure(pen.print(setting.fence), "regular", SIZE) + GAP;
      if (x + wide - GAP > width) [x, row] = [0, row + 1];
      const entry = { setting, x, row };
      x += wide;
      return entry;
    });
}

/** A setting with more cuts than a row holds stands in several. */
const splitTo =
  (pen: Pen, width: number) =>
  (setting: Setting): readonly Setting[] => {
    const fit = Math.max(
      1,
      Math.floor((width - 80) / (Math.max(...setting.cuts.map((cut) => widthOf(pen, cut))) + CLOSE)),
    );
    const parts = Math.ceil(setting.cuts.length / fit);
    return Array.from({ length: parts }, (_, i) => ({ ...setting, cuts: setting.cuts.slice(i * fit, (i + 1) * fit) }));
  };

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
    ...entries(layout, pen, width).flatMap(({ setting, x: from, row }) => {
      const middle = y + row * ROW + ROW / 2;
      let left = x + from;
      const numbers = setting.cuts.flatMap((cut) => {
        const wide = widthOf(pen, cut);
        const drawn = numberAt(pen, cut, [left + wide / 2, middle]);
        left += wide + CLOSE;
        return drawn;
      });
      return [...numbers, text(left + 2, middle, pen.print(setting.fence))];
    }),
  ];
}
