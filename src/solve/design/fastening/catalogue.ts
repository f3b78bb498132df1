/**
 * Screws, dowels, nails and brads as they are sold. Inch screws by gauge: diameter 0.060 + 0.013 × gauge in (formula from memory, fits the
 * published #6 0.138, #8 0.164, #10 0.190, #12 0.216). Countersunk heads about twice the shank, to the next 1/32 in (about ASME B18.6.1, from memory).
 * Pilot and clearance holes are common practice; published charts disagree. Every clearance hole here is at least the shank.
 */
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { less, multiply, rational } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { FastenerKind } from "../../design.ts";

export interface ScrewSize {
  /** "#8", "4 mm" */
  readonly name: string;
  readonly gauge: number;
  readonly shank: Length;
  readonly head: Length;
  readonly headHeight: Length;
  readonly clearance: Length;
  readonly pilot: { readonly softwood: Length; readonly hardwood: Length };
}

const inchScrew = (gauge: number, clearance: Length, softwood: Length, hardwood: Length): ScrewSize => {
  const shank = inches(60 + 13 * gauge, 1000);
  const head = roundTo(multiply(shank, rational(2)), inches(1, 32), "up");
  return {
    name: `#${gauge}`,
    gauge,
    shank,
    head,
    // The cone of a countersunk head, 82 degrees, is about a third of its width high.
    headHeight: roundTo(multiply(head, rational(1, 3)), inches(1, 64), "up"),
    clearance,
    pilot: { softwood, hardwood },
  };
};

const metricScrew = (tenths: number, softwood: number, hardwood: number): ScrewSize => {
  const shank = millimetres(tenths, 10);
  return {
    name: `${tenths / 10} mm`,
    gauge: tenths / 10,
    shank,
    head: multiply(shank, rational(2)),
    headHeight: multiply(shank, rational(3, 5)),
    clearance: millimetres(tenths + 5, 10),
    pilot: { softwood: millimetres(softwood, 10), hardwood: millimetres(hardwood, 10) },
  };
};

export const INCH_SCREWS: readonly ScrewSize[] = [
  inchScrew(4, inches(1, 8), inches(1, 16), inches(5, 64)),
  inchScrew(6, inches(9, 64), inches(5, 64), inches(3, 32)),
  inchScrew(8, inches(11, 64), inches(3, 32), inches(7, 64)),
  inchScrew(10, inches(13, 64), inches(7, 64), inches(1, 8)),
  inchScrew(12, inches(7, 32), inches(1, 8), inches(9, 64)),
  inchScrew(14, inches(1, 4), inches(9, 64), inches(5, 32)),
];

export const METRIC_SCREWS: readonly ScrewSize[] = [
  metricScrew(30, 15, 20),
  metricScrew(35, 20, 25),
  metricScrew(40, 25, 28),
  metricScrew(45, 25, 30),
  metricScrew(50, 30, 35),
  metricScrew(60, 40, 45),
];

const quarters = (...list: readonly number[]): readonly Length[] => list.map((n) => inches(Math.round(n * 8), 8));
const whole = (...list: readonly number[]): readonly Length[] => list.map((n) => millimetres(n));

/** Lengths on the shelf, shortest first (common practice, no source). */
export const SOLD_LENGTHS = {
  screw: {
    inch: quarters(0.5, 0.625, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 3, 3.5, 4, 4.5, 5, 6),
    mm: whole(12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 120, 140),
  },
  "pocket screw": { inch: quarters(0.75, 1, 1.25, 1.5, 2, 2.5), mm: whole(19, 25, 32, 38, 50, 64) },
  nail: { inch: quarters(1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5), mm: whole(25, 30, 40, 50, 60, 70, 80, 90) },
  brad: { inch: quarters(0.5, 0.625, 0.75, 1, 1.25, 1.5, 2), mm: whole(13, 16, 20, 25, 30, 35, 40, 50) },
  staple: { inch: quarters(0.375, 0.5, 0.625, 0.75, 1, 1.25, 1.5), mm: whole(10, 12, 15, 20, 25, 30, 40) },
  dowel: { inch: quarters(1, 1.25, 1.5, 2, 2.5, 3), mm: whole(25, 30, 35, 40, 50, 60) },
} as const;

/** Dowels by diameter. */
export const DOWELS = {
  inch: [inches(1, 4), inches(5, 16), inches(3, 8), inches(1, 2)],
  mm: [millimetres(6), millimetres(8), millimetres(10), millimetres(12)],
} as const;

/** What has no thread, and is driven by blows. */
export const NAILS: ReadonlySet<FastenerKind> = new Set<FastenerKind>(["nail", "brad", "staple"]);

/**
 * Wire of nails by their lengths, shortest first: box nails in inches (ASTM F1667), round wire nails in mm (EN 10230-1); from memory. One of a
 * length between has the wire of the shorter.
 */
const NAIL_WIRE: readonly (readonly [long: Length, shank: Length])[] = [
  [inches(1), inches(72, 1000)],
  [inches(5, 4), inches(76, 1000)],
  [inches(3, 2), inches(80, 1000)],
  [millimetres(40), millimetres(20, 10)],
  [millimetres(50), millimetres(22, 10)],
  [inches(2), inches(99, 1000)],
  [millimetres(60), millimetres(25, 10)],
  [inches(5, 2), inches(113, 1000)],
  [millimetres(70), millimetres(28, 10)],
  [inches(3), inches(128, 1000)],
  [millimetres(80), millimetres(31, 10)],
  [inches(7, 2), inches(135, 1000)],
  [millimetres(90), millimetres(34, 10)],
];

/** Wood in front of the point of a nail. Common practice, no source. */
export const NAIL_STOPS = { inch: inches(1, 8), mm: millimetres(3) } as const;

/** Of what is driven by blows. */
export function wireOf(
  kind: "nail" | "brad" | "staple",
  length: Length,
): { readonly shank: Length; readonly head: Length } {
  if (kind !== "nail") return WIRE[kind];
  const shank = NAIL_WIRE.findLast(([long]) => !less(length, long))?.[1] ?? inches(72, 1000);
  return { shank, head: multiply(shank, rational(5, 2)) };
}

/** Wire of brads, 0.048 in (18 gauge); staples 1/4 in wide of the same (from memory). */
const WIRE = {
  brad: { shank: inches(48, 1000), head: inches(5, 64) },
  staple: { shank: inches(48, 1000), head: inches(1, 4) },
} as const;

/** A pocket hole: bore for the head, pilot through the rest; the axis 15 degrees to the face (sine and cosine to ten places). */
export const POCKET = {
  sine: rational(2588190451, 10_000_000_000),
  cosine: rational(9659258263, 10_000_000_000),
  bore: { inch: inches(3, 8), mm: millimetres(95, 10) },
  pilot: { inch: inches(9, 64), mm: millimetres(35, 10) },
  head: { inch: inches(5, 16), mm: millimetres(8) },
} as const;
