/** How much room views need for what stands beside them. */
import { once } from "../../once.ts";
import { bounds, leaves } from "../../shapes.ts";
import type { Frame } from "../../style.ts";
import { drawRows } from "../dimension/rows.ts";
import { type SideName, sideOf } from "../dimension/side.ts";
import type { Pen } from "../drawing.ts";
import { Plate } from "../plate.ts";
import { type Aspect, type Laid, laid } from "./aspect.ts";
import { onSide, type Rows } from "./dimensioning.ts";

export interface RoomBeside {
  /** How far the dimensions on a side of a view reach out. */
  readonly depth: (view: number, side: SideName) => number;
  /** How far the numbers at the ends of rows above and below a view stand past it on a side. */
  readonly past: (view: number, side: "left" | "right") => number;
  /** How far the caption of a view stands past it on both sides, if it is wider than what it stands under. */
  readonly captioned: (view: number, width: number) => number;
}

const ANYWHERE: Frame = { x: -1e5, y: -1e5, width: 2e5, height: 2e5 };

/** In points; `scale`: points per unit. */
export function roomBeside(aspects: readonly Aspect[], rows: readonly Rows[], scale: number, pen: Pen): RoomBeside {
  const views = aspects.map((aspect) => laid(aspect, scale, 0, 0));
  // Asked for on one side after the other, and in several arrangements.
  const told = rows.map((here) => ({
    ...{ view: here.view, side: here.side },
    drawn: once(() => beside(here, views[here.view] as Laid, new Plate(ANYWHERE), pen)),
  }));
  return {
    depth: (view, side) =>
      Math.max(0, ...told.flatMap((row) => (row.view === view && row.side === side ? row.drawn().depth : []))),
    past: (view, side) => {
      const level = told.filter((row) => row.view === view && (row.side === "below" || row.side === "above"));
      const items = level.flatMap(({ drawn }) => drawn().items);
      if (items.length === 0) return 0;
      const { box } = views[view] as Laid;
      const [left, , right] = bounds(leaves(items));
      return Math.max(0, side === "left" ? box.left - left : right - box.right);
    },
    captioned: (view, width) => Math.max(0, (pen.measure((aspects[view] as Aspect).caption, "bold", 10) - width) / 2),
  };
}

export function beside(row: Rows, view: Laid, plate: Plate, pen: Pen): ReturnType<typeof drawRows> {
  const { rows, feet } = onSide(row, view, pen);
  return drawRows(rows, feet, sideOf(view.box, row.side), plate, pen);
}
