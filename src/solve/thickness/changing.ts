import type { Length } from "../../units/length.ts";
import { equal } from "../../units/rational.ts";
import { printedSizes } from "../build/cut-list/printed.ts";
import type { ChangingSizes } from "../build/model/thickness.ts";
import type { Build } from "../build.ts";
import type { Design } from "../design.ts";
import { movingPlaces, shiftingPlaces } from "./places.ts";
import { type Range, spread, stepOf } from "./range.ts";
import type { SolvedAt } from "./solved-at.ts";
import { changingSticks, hasOther } from "./sticks.ts";

/** The sizes of the cut list that depend on the thickness of a stock, as they are printed at some thicknesses of its range. */
export function changingSizes(
  range: Range,
  design: Design,
  { cutList: lines, steps }: Pick<Build, "cutList" | "steps">,
  solved: SolvedAt,
): ChangingSizes {
  const columns = spread(range, stepOf(design.units)).flatMap((thickness) => {
    const at = equal(thickness, range.drawn) ? design : solved.design(new Map([[range.stock, thickness]]));
    return at ? [{ thickness, parts: new Map(at.parts.map((part) => [part.id, part])) }] : [];
  });
  const rows = lines.flatMap(({ mark, parts }) =>
    (["width", "length"] as const).flatMap((size) => {
      const sizes = columns.flatMap((column): readonly Length[] => {
        const part = column.parts.get(parts[0] as string);
        return part ? [printedSizes(part, design.fits)[size]] : [];
      });
      return hasOther(sizes, columns.length) ? [{ mark, size, sizes }] : [];
    }),
  );
  const sticks = changingSticks(steps, columns, design.fits);
  const moving = movingPlaces(range, design, lines, solved).filter(({ mark, size }) =>
    rows.some((row) => row.mark === mark && row.size === size),
  );
  const shifting = shiftingPlaces(range, design, lines, solved, moving);
  return { stock: range.stock, thicknesses: columns.map(({ thickness }) => thickness), rows, sticks, moving, shifting };
}
