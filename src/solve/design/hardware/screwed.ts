/** What is held by screws from outside: a plate or block on a face, and the pilot holes under it. */
import { fitsNothing } from "../../../findings/rules/fits-nothing.ts";
import type { Solid } from "../../../geometry/index.ts";
import { inches, type Length, millimetres, UNITS_PER_INCH } from "../../../units/length.ts";
import { add, compare, half, min, multiply, negate, rational, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Hole, Point } from "../../design.ts";
import { type AxisIndex, extent, shift, thirdAxis, unit } from "../space.ts";
import { type FitterContext, type FittingSite, outwards } from "./fitter.ts";
import { measureOf, numberOf } from "./items.ts";
import { block } from "./solids.ts";

export interface Plate {
  readonly long: Length;
  readonly wide: Length;
  readonly thick: Length;
  /** What its screws pass before they reach wood; absent: all of its thickness. */
  readonly passed?: Length;
}

/** Screws stand this share of a plate's size in from its ends. */
const IN = rational(1, 6);

/** From the middle of a plate to its outer screws: to a mark, so that the distance between two holes and their places along a part agree on paper. */
export const reachOf = (size: Length): Length =>
  roundTo(subtract(half(size), multiply(size, IN)), markFor(size), "down");

/** The plate in its place and its pilot holes; null where its screws do not reach the wood, which has been reported. */
export function screwedOn(
  site: FittingSite,
  plate: Plate,
  context: FitterContext,
): { readonly solid: Solid; readonly holes: readonly Hole[] } | null {
  const { item, part, axis, run, at, draft } = site;
  const solid = block(at, axis, outwards(site, plate.thick), { run, long: plate.long, wide: plate.wide });
  const bite = subtract(measureOf(item, "screw"), plate.passed ?? plate.thick);
  if (bite.n <= 0n) {
    context.report(fitsNothing(draft.at, { item: item.kind, part: part.id, because: "screws" }));
    return null;
  }
  const points = pattern(Math.round(numberOf(item, "screws")), at, run, thirdAxis(axis, run), plate);
  return { solid, holes: points.map((point) => pilot(site, point, measureOf(item, "pilot"), bite)) };
}

/** A hole into the face, as deep as wanted or right through where the wood is no thicker. */
export function pilot({ id, part, axis, sign, body }: FittingSite, at: Point, diameter: Length, deep: Length): Hole {
  const depth = min(deep, extent(body, axis));
  return {
    ...{ part: part.id, kind: "pilot", at, direction: unit(axis, -sign), for: id, atBench: true },
    through: compare(deep, extent(body, axis)) >= 0,
    stages: [{ diameter, depth }],
    keep: { edge: ZERO, end: ZERO, under: ZERO },
  };
}

/** One screw in each corner of a plate with four; else a row along its middle. */
function pattern(count: number, at: Point, run: AxisIndex, cross: AxisIndex, { long, wide }: Plate): readonly Point[] {
  const [a, b] = [reachOf(long), reachOf(wide)];
  if (count === 4) return [negate(a), a].flatMap((x) => [negate(b), b].map((y) => shift(shift(at, run, x), cross, y)));
  if (count < 2) return [at];
  return Array.from({ length: count }, (_, i) =>
    shift(at, run, add(negate(a), multiply(add(a, a), rational(i, count - 1)))),
  );
}

/** Half a millimetre for what is made in millimetres. */
const markFor = (size: Length): Length =>
  multiply(size, rational(32, UNITS_PER_INCH)).d === 1n ? inches(1, 32) : millimetres(1, 2);
