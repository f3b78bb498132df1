/** Below the board: what fence or stop is set to, once for all cuts that follow one another at one setting. */
import { type Setting, settingsOf } from "../../../solve/build/layout-facts.ts";
import type { Layout } from "../../../solve/build.ts";
import type { Item } from "../../document.ts";
import type { Frame } from "../../style.ts";
import type { Pen } from "../drawing.ts";
import { numberAt, widthOf } from "./cuts.ts";
import { headOf, type InRow, inRows, middleOf, ROW, SIZE, word } from "./in-rows.ts";

/** Between numbers of one setting. */
const CLOSE = 2;
const HEAD = "Fence or stop:";

const numbersWide = (pen: Pen, { cuts }: Setting): number =>
  cuts.reduce((so, cut) => so + widthOf(pen, cut) + CLOSE, -CLOSE);

/** How high the list of settings is, at a width. */
export const settingsHeight = (layout: Layout, pen: Pen, width: number): number =>
  layout.cuts.length === 0 ? 0 : (entries(layout, pen, width).at(-1)?.row ?? 0) * ROW + ROW + 2;

const entries = (layout: Layout, pen: Pen, width: number): readonly InRow<Setting>[] =>
  inRows(
    settingsOf(layout).flatMap(splitTo(pen, width)),
    (setting) => numbersWide(pen, setting) + 4 + pen.measure(pen.print(setting.fence), "regular", SIZE),
    { head: HEAD, pen, width },
  );

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
  return [
    headOf(pen, HEAD, x, y),
    ...entries(layout, pen, width).flatMap(({ entry: setting, x: from, row }) => {
      const middle = middleOf(y, row);
      let left = x + from;
      const numbers = setting.cuts.flatMap((cut) => {
        const wide = widthOf(pen, cut);
        const drawn = numberAt(pen, cut, [left + wide / 2, middle]);
        left += wide + CLOSE;
        return drawn;
      });
      return [...numbers, word(pen, pen.print(setting.fence), [left + 2, middle])];
    }),
  ];
}
