import type { Contact } from "../../../geometry/index.ts";
import type { Axis } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import {
  add,
  compare,
  divide,
  floor,
  half,
  less,
  min,
  multiply,
  rational,
  subtract,
  toNumber,
  ZERO,
} from "../../../units/rational.ts";
import type { Box, Point } from "../../design.ts";
import { type AxisIndex, indexOf, otherAxes, thirdAxis, triple } from "../space.ts";
import type { RowShift } from "./site.ts";

/** Where fasteners may stand on a contact: along the middle of its longer direction. */
export interface RowPlan {
  /** Centre to centre at most, when the count is left open. */
  readonly spacing: Length;
  /** From the ends of the contact to the first and the last. */
  readonly fromEnds: Length;
  readonly count: number | null;
  /** At least this many where the contact is this long. */
  readonly twoFrom: Length;
  /** Where the row runs along this direction, an odd number when the count is left open, so that one stands in the middle. */
  readonly odd?: Axis | null;
  /** Sound wood on both sides along the row: the radius of what lies under the heads. Absent: 1/8 in. */
  readonly clear?: Length;
}

/** Common practice, no source: 4 in apart, 1 in from the ends, two in wood 2 1/2 in and wider. */
export const usualRow = (inch: boolean): RowPlan => ({
  spacing: inch ? inches(4) : millimetres(100),
  fromEnds: inch ? inches(1) : millimetres(25),
  count: null,
  twoFrom: inch ? inches(5, 2) : millimetres(60),
});

export interface Row {
  readonly along: AxisIndex;
  readonly across: AxisIndex;
  /** Points on the contact, in order. */
  readonly points: readonly Point[];
}

/** The rectangle that a contact fills, exact: the meeting of the two boxes that it lies between. */
export const contactBox = (a: Box, b: Box, contact: Contact): Box => ({
  low: triple((i) => snap(contact, i, "low", [a.low[i], b.low[i], a.high[i], b.high[i]])),
  high: triple((i) => snap(contact, i, "high", [a.low[i], b.low[i], a.high[i], b.high[i]])),
});

/** A bound of the contact's polygons, taken from the exact candidate that it stands for, else rounded to whole units. */
function snap(contact: Contact, axis: AxisIndex, side: "low" | "high", candidates: readonly Length[]): Length {
  const values = contact.polygons.flatMap((polygon) => polygon.map((p) => p[axis]));
  const bound = side === "low" ? Math.min(...values) : Math.max(...values);
  const exact = candidates.find((c) => Math.abs(toNumber(c) - bound) < 1);
  return exact ?? rational(Math.round(bound));
}

/**
 * Points of a row on a contact rectangle, along its longer direction unless `turned`, all moved along by `shift.by`, the outer ones in by `shift.in`.
 * Null where the row, so moved, would run off the contact, or where the shorter direction has no room for it.
 */
export function rowOn(area: Box, normal: AxisIndex, plan: RowPlan, shift: RowShift): Row | null {
  const [a, b] = otherAxes(normal);
  const size = (i: AxisIndex): Length => subtract(area.high[i], area.low[i]);
  const longer = less(size(a), size(b)) ? b : a;
  const along = shift.turned ? thirdAxis(normal, longer) : longer;
  const across = thirdAxis(normal, along);
  const long = size(along);
  const ends = add(min(plan.fromEnds, divide(long, rational(4))), shift.in ?? ZERO);
  const free = subtract(long, multiply(ends, rational(2)));
  if (shift.in && less(multiply(free, rational(2)), long)) return null;
  const fitting = compare(long, plan.twoFrom) < 0 ? 1 : Math.max(2, Number(floor(divide(free, plan.spacing))) + 1);
  const even = plan.odd !== null && plan.odd !== undefined && indexOf(plan.odd) === along && fitting % 2 === 0;
  const count = plan.count ?? (even ? fitting + 1 : fitting);
  // Turned round, a row must not get narrower than half of what it was.
  if (shift.turned && (count < 2 || less(multiply(long, rational(2)), size(across)))) return null;
  const middle = half(add(area.low[along], area.high[along]));
  const step = count > 1 ? divide(free, rational(count - 1)) : rational(0);
  const stops = Array.from({ length: count }, (_, i) =>
    add(add(middle, shift.by), multiply(step, rational(2 * i - count + 1, 2))),
  );
  const [first, last] = [stops[0] as Length, stops.at(-1) as Length];
  const limit = half(ends);
  if (less(first, add(area.low[along], limit)) || less(subtract(area.high[along], limit), last)) return null;
  const line = half(add(area.low[across], area.high[across]));
  const points = stops.map((at) => triple((axis) => (axis === along ? at : axis === across ? line : area.low[axis])));
  return { along, across, points };
}
