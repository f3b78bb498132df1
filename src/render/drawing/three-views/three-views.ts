/**
 * Front, side and top, the top above the front and the right side to its right, or below it where all three are then larger;
 * with dimensions: outside sizes on the outer rows, and inside them chains of the places that matter.
 */
import type { Build } from "../../../solve/build.ts";
import type { Item } from "../../document.ts";
import { once } from "../../once.ts";
import type { Frame } from "../../style.ts";
import { type Bar, barBeside, scaleBar } from "../bar.ts";
import { type Drawing, NOT_TO_SCALE, type Pen } from "../drawing.ts";
import { centred } from "../ink.ts";
import { outsideOf } from "../outside.ts";
import { Plate } from "../plate.ts";
import { closeScales, type Scale, usualScale, wholeOf } from "../scale.ts";
import { outsideInWords } from "../words.ts";
import { aspectsOf, edgeLines, type Laid, linedOut } from "./aspect.ts";
import { beside } from "./room-beside.ts";
import { ORDERS, type Places, rowsOf, setOut } from "./setting-out.ts";

export interface ThreeViewsOptions {
  readonly frame: Frame;
  readonly pen: Pen;
}

export function threeViews(build: Build, { frame, pen }: ThreeViewsOptions): Drawing {
  const { units, title } = build.design;
  const outside = outsideOf(build.parts);
  if (!outside) return { items: [], alt: "", scale: NOT_TO_SCALE };
  const aspects = aspectsOf(build, outside, build.hardware);
  const at = function* (scale: Scale): Generator<Drawn> {
    const told = once(() => rowsOf(build, aspects, scale.points, pen));
    for (const order of ORDERS) {
      const places = setOut(told, aspects, scale.points, { room: frame, pen, order });
      const bar: Bar = (spot) => scaleBar(scale, units, pen, spot);
      if (places) yield { ...drawn(places, new Plate(frame), pen, bar), scale };
    }
  };
  const firstAt = (scale: Scale): Drawn | undefined => at(scale).next().value;
  const best = wholeOf(closeScales(units), at);
  const scale = best?.scale ?? usualScale(units, (each) => firstAt(each) !== undefined);
  return {
    items: (best ?? firstAt(scale))?.items ?? [],
    alt: `Front, right side and top of ${title}: ${outsideInWords(build.parts, units, pen)}`,
    scale: scale.text,
  };
}

interface Drawn {
  readonly scale: Scale;
  readonly items: readonly Item[];
  /** How much found no place: dimensions, or the bar. */
  readonly lost: number;
}

function drawn({ views, rows, captions, foot }: Places, plate: Plate, pen: Pen, bar: Bar): Omit<Drawn, "scale"> {
  const items: Item[] = [];
  views.forEach(({ aspect, fit, box }, i) => {
    const lines = edgeLines(aspect, fit);
    for (const line of lines) plate.addLine(line);
    const caption = centred(pen, aspect.caption, captions[i] ?? [box.left, box.bottom], { font: "bold" });
    plate.addBox(caption.box);
    items.push(...linedOut(aspect, lines, fit), caption.item);
  });
  let lost = 0;
  for (const row of rows) {
    const told = beside(row, views[row.view] as Laid, plate, pen);
    items.push(...told.items);
    lost += told.lost;
  }
  const scale = barBeside(foot, plate, bar);
  return { items: [...items, ...scale], lost: lost + (scale.length === 0 ? 1 : 0) };
}
