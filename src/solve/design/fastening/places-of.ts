import { tooManyFasteners } from "../../../findings/rules/too-many-fasteners.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { less, max, min, multiply, rational, subtract } from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import { otherAxes } from "../space.ts";
import { onWood, type Wood } from "./on-wood.ts";
import { type Row, type RowPlan, rowOn, usualRow } from "./row.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";

/** A row, how far its line is from the sides of the part that holds, and from the sides of the contact. */
export interface PlacedRow extends Row {
  readonly toEdge: Length;
  readonly contactEdge: Length;
  /** Several rows beside each other, one of them on the line where the wood is held. */
  readonly lines?: true;
}

/** What of a joint decides where its fasteners stand; of a whole site also the wood does. */
export type RowSite = Pick<Site, "draft" | "area" | "axis"> & {
  readonly hold: { readonly id: string; readonly body: Box };
};

/** The row of a site as the maker described it; null: reported. */
export function placesOf(
  site: RowSite,
  shift: RowShift,
  context: Pick<FasteningContext, "units" | "measure" | "count" | "report" | "print">,
  usual: RowPlan = usualRow(context.units === "inch"),
): PlacedRow | null {
  const said = options(site.draft);
  const count = said.count ? context.count(said.count) : usual.count;
  const spacing = said.spacing ? context.measure(said.spacing) : usual.spacing;
  const fromEnds = said.inFromEnds ? context.measure(said.inFromEnds) : usual.fromEnds;
  if ((said.count && count === null) || !spacing || !fromEnds) return null;
  const room = longest(site);
  const closest = context.units === "inch" ? inches(1, 4) : millimetres(6);
  if (count !== null && less(room, multiply(closest, rational(count - 1)))) {
    context.report(
      tooManyFasteners(said.count?.at ?? site.draft.at, { count, room: context.print(room), part: site.hold.id }),
    );
    return null;
  }
  const straight = rowOn(site.area, site.axis, { ...usual, count, spacing, fromEnds }, shift);
  if (!straight) return null;
  const wood = "head" in site ? (site as Wood & RowSite) : null;
  const row = wood
    ? onWood(straight, wood, context.units === "inch" ? inches(1, 4) : millimetres(6), usual.clear)
    : straight;
  const line = row.points[0]?.[row.across] ?? site.area.low[row.across];
  const beside = (box: Box): Length => min(subtract(line, box.low[row.across]), subtract(box.high[row.across], line));
  return { ...row, toEdge: beside(site.hold.body), contactEdge: beside(site.area) };
}

/** The longer side of a contact. */
const longest = ({ area, axis }: RowSite): Length =>
  otherAxes(axis)
    .map((i) => subtract(area.high[i], area.low[i]))
    .reduce((a, b) => max(a, b));
