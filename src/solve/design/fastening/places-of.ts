import type { Length } from "../../../units/length.ts";
import { half, subtract } from "../../../units/rational.ts";
import { otherAxes } from "../space.ts";
import { type Row, type RowPlan, rowOn, usualRow } from "./row.ts";
import { type FasteningContext, options, type Site } from "./site.ts";

/** The row of a site as the maker described it, and how far its line is from the contact's long edges. Null: reported. */
export function placesOf(
  site: Site,
  offset: Length,
  context: FasteningContext,
  usual: RowPlan = usualRow(context.units === "inch"),
): (Row & { readonly toEdge: Length }) | null {
  const said = options(site.draft);
  const count = said.count ? context.count(said.count) : usual.count;
  const spacing = said.spacing ? context.measure(said.spacing) : usual.spacing;
  const fromEnds = said.inFromEnds ? context.measure(said.inFromEnds) : usual.fromEnds;
  if ((said.count && count === null) || !spacing || !fromEnds) return null;
  const row = rowOn(site.area, site.axis, { ...usual, count, spacing, fromEnds }, offset);
  const [a, b] = otherAxes(site.axis);
  const across = row.along === a ? b : a;
  return { ...row, toEdge: half(subtract(site.area.high[across], site.area.low[across])) };
}
