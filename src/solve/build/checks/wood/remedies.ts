/** What would keep a board from bending too far, worked out and rounded to the safe side. */
import { inches, type Length, millimetres, toMillimetres } from "../../../../units/length.ts";
import { roundTo } from "../../../../units/round.ts";
import type { Stock, Units } from "../../../design.ts";
import { cubeRoot, secondMoment, withStrip } from "./beam.ts";
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

/** No strip is higher than this: it would be a rail. */
const HIGHEST = 100;

/** The height of a strip of the same wood, as thick as the stock, glued under or along one edge, flush with the top. */
export function withEdge(shelf: Shelf, times: number, stock: Stock, units: Units, print: Print): readonly string[] {
  const strip = toMillimetres(stock.thickness);
  const wanted = times * secondMoment(shelf.broad, shelf.thick);
  const step = stepOf(units);
  for (let n = 1; toMillimetres(step) * n <= HIGHEST; n += 1) {
    const high = toMillimetres(step) * n;
    if (high <= shelf.thick) continue;
    if (withStrip({ broad: shelf.broad, thick: shelf.thick }, { broad: strip, high }) < wanted) continue;
    const [thick, tall] = [print(stock.thickness), print({ n: step.n * BigInt(n), d: step.d })];
    return [`glue a strip of wood ${thick} thick and ${tall} high along its front edge, flush with the top`];
  }
  return [];
}
