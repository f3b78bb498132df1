/**
 * Drills as they are sold. Inch: by 1/64 up to 1/2 in (fractional series of ASME B94.11M, from memory), by 1/16 up to 1 1/2 in, by 1/8 above
 * (brad-point, spade and Forstner bits; common practice, no source). Metric: by 0.1 mm up to 6 mm, by 0.5 mm up to 13 mm (within the series of
 * ISO 235, from memory), by 1 mm above (common practice, no source).
 */
import type { Units } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { printLength, sayLength } from "../../../units/print-length.ts";
import { compare, divide } from "../../../units/rational.ts";
import { type Direction, roundTo } from "../../../units/round.ts";

/** Steps of a series, each up to a diameter. */
type Series = readonly { readonly to: Length | null; readonly step: Length }[];

const SERIES: Readonly<Record<Units, Series>> = {
  inch: [
    { to: inches(1, 2), step: inches(1, 64) },
    { to: inches(3, 2), step: inches(1, 16) },
    { to: null, step: inches(1, 8) },
  ],
  mm: [
    { to: millimetres(6), step: millimetres(1, 10) },
    { to: millimetres(13), step: millimetres(1, 2) },
    { to: null, step: millimetres(1) },
  ],
};

const stepAt = (diameter: Length, units: Units): Length =>
  (SERIES[units].find(({ to }) => to === null || compare(diameter, to) <= 0) as Series[number]).step;

const isSold = (diameter: Length, units: Units): boolean => divide(diameter, stepAt(diameter, units)).d === 1n;

const other = (units: Units): Units => (units === "inch" ? "mm" : "inch");

/**
 * What a hole is for: it must *hold* a thread, so that it is no wider than wanted; be *clear* of what passes, so that it is no narrower; or *fit*
 * what is sold to go into it, so that it is just as wide.
 */
export type Fit = "hold" | "clear" | "fit";

/** The drill that is bored with. One of the plan's own units; for what fits also one of the other units, where only that is as wide. */
export function drillFor(wanted: Length, fit: Fit, units: Units): Length {
  if (isSold(wanted, units) || (fit === "fit" && isSold(wanted, other(units)))) return wanted;
  const way: Direction = fit === "hold" ? "down" : "up";
  const drill = roundTo(wanted, stepAt(wanted, units), way);
  // No drill is thinner than the first of its series.
  return drill.n > 0n ? drill : stepAt(wanted, units);
}

/** A drill with the unit it is sold by: "3/8 in"; "35 mm" also in a plan in inches. */
export const sayDrill = (diameter: Length, units: Units): string =>
  sayLength(diameter, { units: unitsOf(diameter, units), style: "typographic" });

/** The same without the plan's own unit: "3/8", but "35 mm". */
export const printDrill = (diameter: Length, units: Units): string =>
  unitsOf(diameter, units) === units
    ? printLength(diameter, { units, style: "typographic" }).text
    : sayDrill(diameter, units);

const unitsOf = (diameter: Length, units: Units): Units =>
  !isSold(diameter, units) && isSold(diameter, other(units)) ? other(units) : units;
