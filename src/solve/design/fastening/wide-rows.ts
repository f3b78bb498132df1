import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, less, subtract } from "../../../units/rational.ts";
import type { Still } from "../../design.ts";
import { indexOf, thirdAxis, withAxis } from "../space.ts";
import type { PlacedRow } from "./places-of.ts";
import type { FasteningContext, Site } from "./site.ts";

/**
 * On a contact wider than 6 in (150 mm) one row would leave both edges of a panel free to cup: then there is a row 1 1/2 in (40 mm) from each edge, and
 * where the wood moves that way also one on the line where it is held. Common practice, no source.
 */
export function onWideContact(
  row: PlacedRow,
  { area, axis }: Site,
  still: Still,
  { units }: Pick<FasteningContext, "units">,
): PlacedRow {
  const inch = units === "inch";
  const [wide, edge] = inch ? [inches(6), inches(3, 2)] : [millimetres(150), millimetres(40)];
  const aside = thirdAxis(axis, row.along);
  if (!less(wide, subtract(area.high[aside], area.low[aside]))) return row;
  const [low, high] = [add(area.low[aside], edge), subtract(area.high[aside], edge)];
  const moves = indexOf(still.across) === aside;
  const held = moves && !less(still.at, area.low[aside]) && !less(area.high[aside], still.at);
  const near = (line: Length): boolean => less(subtract(line, still.at), edge) && less(subtract(still.at, line), edge);
  const outer = [low, high].filter((line) => !held || !near(line));
  const lines = [...outer, ...(held ? [inside(still.at, area.low[aside], area.high[aside], edge)] : [])].toSorted(
    compare,
  );
  const points = lines.flatMap((line) => row.points.map((at) => withAxis(at, aside, line)));
  return { ...row, points, ...(moves && { lines: true as const }) };
}

/** The line, but not nearer to an edge than half the usual distance. */
function inside(line: Length, low: Length, high: Length, edge: Length): Length {
  if (less(subtract(line, low), edge)) return add(low, edge);
  return less(subtract(high, line), edge) ? subtract(high, edge) : line;
}
