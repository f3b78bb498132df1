/** Where a piece stands and where its weight is. Millimetres and kg. */
import { centroid } from "../../../../geometry/index.ts";
import { UNITS_PER_MM } from "../../../../units/length.ts";
import type { Part } from "../../../design.ts";
import type { Checked } from "../check.ts";

export type Place = readonly [number, number, number];
export interface Heavy {
  readonly id: string;
  readonly kg: number;
  readonly at: Place;
}

const KILOGRAMS_PER_POUND = 0.45359237;
export const pounds = (lb: number): number => lb * KILOGRAMS_PER_POUND;
/** For sentences. */
export const massText = (kg: number, units: "inch" | "mm"): string =>
  units === "mm" ? `${Math.round(kg)} kg` : `${Math.round(kg / KILOGRAMS_PER_POUND)} lb`;

/** Every part with its centre of mass. Hardware is left out: of each it is not known what it weighs. */
export const weights = ({ design, mass }: Pick<Checked, "design" | "mass">): readonly Heavy[] =>
  design.parts.map((part) => ({ id: part.id, kg: mass(part), at: millimetresOf(centroid(part.solid)) }));

export const millimetresOf = ([x, y, z]: readonly [number, number, number]): Place => [
  x / UNITS_PER_MM,
  y / UNITS_PER_MM,
  z / UNITS_PER_MM,
];

export const total = (all: readonly Heavy[]): number => all.reduce((so, { kg }) => so + kg, 0);
export const centreOf = (all: readonly Heavy[]): Place => {
  const kg = total(all) || 1;
  const along = (i: 0 | 1 | 2): number => all.reduce((so, each) => so + each.kg * each.at[i], 0) / kg;
  return [along(0), along(1), along(2)];
};

/** A box of doubles. */
export interface Bounds {
  readonly low: Place;
  readonly high: Place;
}
const boundsOf = (solid: Part["solid"]): Bounds => ({ low: millimetresOf(solid.low), high: millimetresOf(solid.high) });

export function around(solids: readonly Part["solid"][]): Bounds {
  const all = solids.map(boundsOf);
  const least = (i: 0 | 1 | 2): number => Math.min(...all.map(({ low }) => low[i]));
  const most = (i: 0 | 1 | 2): number => Math.max(...all.map(({ high }) => high[i]));
  return { low: [least(0), least(1), least(2)], high: [most(0), most(1), most(2)] };
}

/** What touches the floor lies within this. */
const FLOOR = 1;

/** The ground that the piece stands on: the box around all that ends lowest, parts and feet. */
export function footing({ design, hardware }: Pick<Checked, "design" | "hardware">): Bounds {
  const solids = [...design.parts, ...hardware].map(({ solid }) => solid);
  const { low } = around(solids);
  return around(solids.filter((solid) => boundsOf(solid).low[2] <= low[2] + FLOOR));
}
