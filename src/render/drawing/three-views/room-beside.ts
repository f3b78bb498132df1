/** How much room views need for what stands beside them. */
import { bounds, leaves } from "../../shapes.ts";
import type { Frame } from "../../style.ts";
import { drawRows } from "../dimension/rows.ts";
import { type SideName, sideOf } from "../dimension/side.ts";
import type { Pen } from "../drawing.ts";
import { Plate } from "../plate.ts";
import { type Aspect, type Laid, laid, type Outside } from "./aspect.ts";
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
export function roomBeside(
  aspects: readonly Aspect[],
  rows: readonly Rows[],
  outside: Outside,
  scale: number,
  pen: Pen,
): RoomBeside {
  const at = (view: number): Aspect => aspects[view] as Aspect;
  return {
    depth: (view, side) =>
      Math.max(
        0,
        ...rows
          .filter((each) => each.view === view && each.side === side)
          .map((here) => beside(here, laid(at(view), scale, 0, 0), outside, new Plate(ANYWHERE), pen).depth),
      ),
    past: (view, side) => {
      const placed = laid(at(view), scale, 0, 0);
      const items = rows
        .filter((each) => each.view === view && (each.side === "below" || each.side === "above"))
        .flatMap((here) => beside(here, placed, outside, new Plate(ANYWHERE), pen).items);
      if (items.length === 0) return 0;
      const [left, , right] = bounds(leaves(items));
      return Math.max(0, side === "left" ? placed.box.left - left : right - placed.box.right);
    },
    captioned: (view, width) => Math.max(0, (pen.measure(at(view).caption, "bold", 10) - width) / 2),
  };
}

export function beside(row: Rows, view: Laid, outside: Outside, plate: Plate, pen: Pen): ReturnType<typeof drawRows> {
  const { rows, feet } = onSide(row, view, outside, pen);
  return drawRows(rows, feet, sideOf(view.box, row.side), plate, pen);
}
