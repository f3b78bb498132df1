import type { Contact } from "../../../geometry/index.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import {
  add,
  compare,
  divide,
  floor,
  half,
  less,
  max,
  min,
  multiply,
  rational,
  subtract,
  toNumber,
} from "../../../units/rational.ts";
import type { Box, Point } from "../../design.ts";
import { type AxisIndex, otherAxes, triple } from "../space.ts";

/** Where fasteners may stand on a contact: along the middle of its longer direction. */
export interface RowPlan {
  /** Centre to centre at most, when the count is left open. */
  readonly spacing: Length;
  /** From the ends of the contact to the first and the last. */
  readonly fromEnds: Length;
  readonly count: number | null;
  /** At least this many where the contact is this long. */
  readonly twoFrom: Length;
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

/** Points of a row on a contact rectangle, all shifted along it by `offset`. Those outside the contact are left out by the caller. */
export function rowOn(area: Box, normal: AxisIndex, plan: RowPlan, offset: Length): Row {
  const [a, b] = otherAxes(normal);
  const size = (i: AxisIndex): Length => subtract(area.high[i], area.low[i]);
  const along = less(size(a), size(b)) ? b : a;
  const across = along === a ? b : a;
  const long = size(along);
  const quarter = divide(long, rational(4));
  const ends = min(plan.fromEnds, quarter);
  const free = subtract(long, multiply(ends, rational(2)));
  const open = compare(long, plan.twoFrom) < 0 ? 1 : Math.max(2, Number(floor(divide(free, plan.spacing))) + 1);
  const count = plan.count ?? open;
  const middle = half(add(area.low[along], area.high[along]));
  const step = count > 1 ? divide(free, rational(count - 1)) : rational(0);
  const points = Array.from({ length: count }, (_, i) => {
    const at = add(add(middle, offset), multiply(step, rational(2 * i - count + 1, 2)));
    const held = max(add(area.low[along], half(ends)), min(subtract(area.high[along], half(ends)), at));
    return triple((axis) =>
      axis === along ? held : axis === across ? half(add(area.low[axis], area.high[axis])) : area.low[axis],
    );
  });
  return { along, across, points };
}
