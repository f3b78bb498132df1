/** What is drawn and measured of a part, whatever the scale. */
import type { View } from "../../../geometry/picture/index.ts";
import { extentOfItems } from "../fit.ts";
import type { Ladder } from "./ladders.ts";
import { linesAlone } from "./lines-alone.ts";
import type { Lying } from "./lying.ts";
import { type Numbers, spacesOf, type Told, told } from "./ordinates.ts";
import { placesOf } from "./places.ts";

/** `rows`: of its holes. */
export function measured(lies: Lying, rows: readonly Ladder[], how: Numbers) {
  const { part, zero } = lies;
  const item = { id: part.id, solid: part.solid };
  const aspect = (view: View) => ({ view, extent: extentOfItems([item], view), lines: linesAlone(part.solid, view) });
  const [face, edge] = [aspect(lies.face), aspect(lies.edge)];
  const places = placesOf(lies, rows);
  const from = [face.extent[zero.along][0], face.extent[zero.across][1], edge.extent.low[1]] as const;
  const numbers = {
    along: told(places.along, from[0], how),
    below: told(places.below, from[0], how),
    across: told(places.across, from[1], how),
    through: told(places.through, from[2], how),
  };
  const runs = ([places.runs.along, places.runs.across, places.runs.through] as const).flatMap((all, i) =>
    all.map((row): Ladder => ({ axis: i as 0 | 1 | 2, row, letters: [], holes: [] })),
  );
  const ladders = [...rows, ...runs].map((ladder) => {
    const [low, high] = told([ladder.row.from, ladder.row.to], from[ladder.axis], how) as [Told, Told];
    const name = ladder.letters.length > 0 ? `${ladder.letters.join(", ")}: ` : "";
    const { from: first, to: last, spaces } = ladder.row;
    const each = Array.from({ length: spaces - 1 }, (_, i) => first + ((i + 1) * (last - first)) / spaces);
    return {
      ...ladder,
      ends: [low.text, high.text] as const,
      words: `${name}${spacesOf(ladder.row, how)}`,
      inside: told(each, from[ladder.axis], how),
    };
  });
  return {
    lies,
    numbers,
    ladders,
    kept: places.kept,
    least: places.least,
    face,
    edge,
    end: lies.end && aspect(lies.end.view),
  };
}
export type Sheet = ReturnType<typeof measured>;

/** The numbers around a part, and the lines of its rows. */
export const tellsOf = ({ numbers: { along, below, across, through }, ladders }: Sheet): number =>
  along.length + below.length + across.length + through.length + ladders.length;
