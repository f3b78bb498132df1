/** What would keep a board from bending too far, worked out and rounded to the safe side. */
import { inches, type Length, millimetres, toMillimetres } from "../../../../units/length.ts";
import { roundTo } from "../../../../units/round.ts";
import type { Stock, Units } from "../../../design.ts";
import { cubeRoot, rigidity } from "./beam.ts";
import type { Shelf } from "./shelf.ts";

type Print = (length: Length) => string;

const length = (mm: number, units: Units, way: "up" | "down", step: Length = stepOf(units)): Length =>
  roundTo(millimetres(Math.round(mm * 1e6), 1e6), step, way);
const stepOf = (units: Units): Length => (units === "inch" ? inches(1, 8) : millimetres(1));

/** The thickness at which `times` as much stiffness is there: it goes with the third power. */
export const thicker = (thick: number, times: number, units: Units, print: Print): readonly string[] => [
  `make it at least ${print(length(thick * cubeRoot(times), units, "up"))} thick`,
];

/** The longest reach at which `sagOf` stays below its limit, found by halving; nothing where that is too short to be of use. */
export function longerSpan(
  shelf: Shelf,
  sagOf: (shelf: Shelf) => number,
  limit: number,
  units: Units,
  print: Print,
): readonly string[] {
  const beyond = shelf.long - shelf.reach;
  let [good, bad] = [0, shelf.reach];
  for (let i = 0; i < 40; i += 1) {
    const reach = (good + bad) / 2;
    if (sagOf({ ...shelf, reach, long: reach + beyond }) <= limit * reach) good = reach;
    else bad = reach;
  }
  if (good < 100) return [];
  const half = units === "inch" ? inches(1, 2) : millimetres(10);
  return [`hold it up so that no stretch is longer than ${print(length(good, units, "down", half))}`];
}

/** The thickness at which a board, with what is glued along it, is `times` as stiff; its top stays where it is. */
export function thickerShelf({ section, thick }: Shelf, times: number, units: Units, print: Print): readonly string[] {
  const [board, ...edges] = section;
  const stiff = (high: number): boolean =>
    rigidity([{ ...board, low: board.high - high }, ...edges]) >= times * rigidity(section);
  const needed = firstStep(units, (high) => high > thick && stiff(high));
  return needed ? [`make it at least ${print(needed)} thick`] : [];
}

/** No strip is higher than this: it would be a rail. Nor is a shelf thicker. */
const HIGHEST = 100;

/** The first whole step that does. */
function firstStep(units: Units, does: (mm: number) => boolean): Length | null {
  const step = stepOf(units);
  for (let n = 1; toMillimetres(step) * n <= HIGHEST; n += 1)
    if (does(toMillimetres(step) * n)) return { n: step.n * BigInt(n), d: step.d };
  return null;
}

/** The height of a strip of the same stock, glued along an edge, flush with the top; along the other where one has a strip. */
export function withEdge(
  { section, thick }: Shelf,
  times: number,
  stock: Stock,
  units: Units,
  print: Print,
): readonly string[] {
  const [{ high: top, modulus }, ...edges] = section;
  const broad = toMillimetres(stock.thickness);
  const stiff = (high: number): boolean =>
    rigidity([...section, { broad, low: top - high, high: top, modulus }]) >= times * rigidity(section);
  const needed = firstStep(units, (high) => high > thick && stiff(high));
  const where = edges.length === 0 ? "its front edge" : "its other edge too";
  return needed
    ? [
        `glue a strip of wood ${print(stock.thickness)} thick and ${print(needed)} high along ${where}, flush with the top`,
      ]
    : [];
}
