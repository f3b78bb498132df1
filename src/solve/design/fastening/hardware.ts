/**
 * Washers, plugs, bolts and their nuts, pins, and what holds a table top down, by size. Common practice, no source, unless named.
 */
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, multiply, rational } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { ScrewSize } from "./catalogue.ts";
import type { FasteningContext } from "./site.ts";

type Printing = Pick<FasteningContext, "units" | "printItem">;

/** A wood plug over a screw: 3/8 in over thin screws, 1/2 in from #10 on. */
export function plugFor({ head }: ScrewSize, context: Printing) {
  const sizes =
    context.units === "inch" ? [inches(3, 8), inches(1, 2), inches(5, 8)] : [8, 10, 12, 15].map((n) => millimetres(n));
  const diameter = sizes.find((d) => compare(head, d) <= 0) ?? (sizes.at(-1) as Length);
  return { diameter, item: `wood plug ${context.printItem(diameter)}` };
}

/** A washer is at least 3/8 in wider than the hole that it covers. */
export function washerFor(hole: Length, context: Printing) {
  const inch = context.units === "inch";
  const diameter = inch
    ? roundTo(add(hole, inches(3, 8)), inches(1, 8), "up")
    : roundTo(add(hole, millimetres(10)), millimetres(2), "up");
  return {
    diameter,
    thick: inch ? inches(1, 16) : millimetres(3, 2),
    item: `washer ${context.printItem(diameter)} wide`,
  };
}

export interface BoltSize {
  readonly name: string;
  readonly rod: Length;
  /** Over the corners of the hexagon: 1.155 times the width over its flats. */
  readonly head: Length;
  readonly headHeight: Length;
  readonly nutHeight: Length;
  readonly washer: { readonly diameter: Length; readonly thick: Length };
  /** The barrel of a cross dowel, and the lengths it is sold in. */
  readonly cross: { readonly diameter: Length; readonly lengths: readonly Length[] };
}

const overCorners = (flats: Length): Length => multiply(flats, rational(1155, 1000));

/** Widths over flats, heights: ASME B18.2.1 and B18.2.2, from memory. */
const inchBolt = (
  rod: Length,
  [flats, headHeight, nutHeight]: readonly [Length, Length, Length],
  washer: Length,
  cross: BoltSize["cross"],
  name: string,
): BoltSize => ({
  name,
  rod,
  head: overCorners(flats),
  headHeight,
  nutHeight,
  washer: { diameter: washer, thick: inches(1, 16) },
  cross,
});

export const INCH_BOLTS: readonly BoltSize[] = [
  inchBolt(
    inches(1, 4),
    [inches(7, 16), inches(11, 64), inches(7, 32)],
    inches(3, 4),
    { diameter: inches(3, 8), lengths: [inches(1, 2), inches(5, 8), inches(3, 4)] },
    "1/4 in",
  ),
  inchBolt(
    inches(5, 16),
    [inches(1, 2), inches(7, 32), inches(17, 64)],
    inches(7, 8),
    { diameter: inches(1, 2), lengths: [inches(5, 8), inches(3, 4), inches(1)] },
    "5/16 in",
  ),
  inchBolt(
    inches(3, 8),
    [inches(9, 16), inches(1, 4), inches(21, 64)],
    inches(1),
    { diameter: inches(5, 8), lengths: [inches(3, 4), inches(1), inches(5, 4)] },
    "3/8 in",
  ),
];

/** Widths over flats and heights: ISO 4014 and 4032, washers ISO 7089; from memory. */
const metricBolt = (
  rod: number,
  flats: number,
  tenths: readonly [number, number],
  washer: number,
  cross: number,
): BoltSize => ({
  name: `M${rod}`,
  rod: millimetres(rod),
  head: overCorners(millimetres(flats)),
  headHeight: millimetres(tenths[0], 10),
  nutHeight: millimetres(tenths[1], 10),
  washer: { diameter: millimetres(washer), thick: millimetres(2) },
  cross: { diameter: millimetres(cross), lengths: [cross + 2, cross + 6, cross + 10].map((n) => millimetres(n)) },
});

export const METRIC_BOLTS: readonly BoltSize[] = [
  metricBolt(6, 10, [40, 52], 12, 10),
  metricBolt(8, 13, [53, 68], 16, 12),
  metricBolt(10, 16, [64, 84], 20, 16),
];

export const BOLT_LENGTHS = {
  inch: [8, 10, 12, 16, 20, 24, 28, 32, 36, 40, 48, 56, 64].map((n) => inches(n, 8)),
  mm: [20, 25, 30, 35, 40, 50, 60, 70, 80, 90, 100, 110, 120, 140, 160, 180, 200].map((n) => millimetres(n)),
} as const;

/** Pins under shelves, besides what their kind of hardware says: `loose` is how much thinner than its hole a pin is. Spare holes stay away from the `ends` of the side. */
export const PIN = {
  inch: {
    loose: inches(1, 64),
    fromEdge: inches(3, 2),
    least: inches(1, 8),
    apart: inches(5, 4),
    ends: inches(5),
  },
  mm: {
    loose: millimetres(3, 10),
    fromEdge: millimetres(37),
    least: millimetres(3),
    apart: millimetres(32),
    ends: millimetres(125),
  },
} as const;

/** Two discs side by side: one let into the edge of the rail, one under the top. Sizes from memory. */
export const FIGURE_EIGHT = {
  inch: { disc: inches(3, 4), apart: inches(5, 8), thick: inches(1, 8), in: inches(1, 4), outside: inches(1, 16) },
  mm: {
    disc: millimetres(19),
    apart: millimetres(16),
    thick: millimetres(3),
    in: millimetres(6),
    outside: millimetres(3, 2),
  },
} as const;

/** A button or clip: its tongue lies in a groove or mortise of the rail, its body under the top. */
export interface Keeper {
  /** From the edge under the top to the groove, and its width. */
  readonly down: Length;
  readonly wide: Length;
  /** Of itself, along the rail. */
  readonly across: Length;
  /** From its shoulder to the screw, and to its end. */
  readonly toScrew: Length;
  readonly body: Length;
  /** Under the screw's head, with the gap of 1/32 in (1 mm) that lets the screw draw the top down. */
  readonly under: Length;
}

export const KEEPERS: Readonly<Record<"button" | "clip", Readonly<Record<"inch" | "mm", Keeper>>>> = {
  button: {
    inch: {
      down: inches(3, 8),
      wide: inches(3, 8),
      across: inches(1),
      toScrew: inches(5, 8),
      body: inches(5, 4),
      under: inches(25, 32),
    },
    mm: {
      down: millimetres(10),
      wide: millimetres(10),
      across: millimetres(25),
      toScrew: millimetres(16),
      body: millimetres(32),
      under: millimetres(20),
    },
  },
  clip: {
    inch: {
      down: inches(7, 16),
      wide: inches(1, 8),
      across: inches(3, 4),
      toScrew: inches(1, 2),
      body: inches(3, 4),
      under: inches(1, 16),
    },
    mm: {
      down: millimetres(11),
      wide: millimetres(3),
      across: millimetres(20),
      toScrew: millimetres(12),
      body: millimetres(20),
      under: millimetres(2),
    },
  },
};

/** What of a tongue stays in its groove when the top has moved as far as it may, and what stays free behind it. */
export const hairOf = (inch: boolean): Length => (inch ? inches(1, 16) : millimetres(2));
