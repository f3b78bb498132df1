import { type Solid, solidOf } from "../../../geometry/index.ts";
import type { Length } from "../../../units/length.ts";
import { add, half, max, min, multiply, rational, subtract } from "../../../units/rational.ts";
import type { Box, Point } from "../../design.ts";
import { type AxisIndex, triple } from "../space.ts";
import { type Fitter, type FittingSite, outwards } from "./fitter.ts";
import { measureOf } from "./items.ts";
import { pilot } from "./screwed.ts";
import { boxSolid } from "./solids.ts";

/** The wire, as a share of the room that the hook takes. */
const WIRE = rational(1, 4);

/** A collar on the wood, the shank, and the end bent up, out of square wire; under a shelf bent to the side. */
export const fitHook: Fitter = (site) => {
  const { id, item, part, at } = site;
  const solid = bent(site, measureOf(item, "out"), measureOf(item, "across"));
  const holes = [pilot(site, at, measureOf(item, "pilot"), measureOf(item, "screw"))];
  return { hardware: [{ id, item, joint: null, carriedBy: part.id, at, solid }], holes };
};

function bent(site: FittingSite, out: Length, across: Length): Solid {
  const { axis, at } = site;
  const up: AxisIndex = axis === 2 ? 0 : 2;
  const [wire, wide] = [multiply(across, WIRE), half(across)];
  const thin = half(wire);
  const collar = piece(site, at, [rational(0), thin], () => [half(across), half(across)]);
  const shank = piece(site, at, [thin, subtract(out, wire)], () => [thin, thin]);
  const tip = piece(site, at, [subtract(out, wire), out], (i) => (i === up ? [thin, wide] : [thin, thin]));
  return solidOf([...collar.pieces, ...shank.pieces, ...tip.pieces]);
}

/** From one distance off the wood to another, and so far below and above `at` in the other directions. */
function piece(
  site: FittingSite,
  at: Point,
  [from, to]: readonly [Length, Length],
  reach: (i: AxisIndex) => readonly [Length, Length],
): Solid {
  const { axis } = site;
  const [near, far] = [from, to].map((by) => add(at[axis], outwards(site, by))) as [Length, Length];
  const box: Box = {
    low: triple((i) => (i === axis ? min(near, far) : subtract(at[i], reach(i)[0]))),
    high: triple((i) => (i === axis ? max(near, far) : add(at[i], reach(i)[1]))),
  };
  return boxSolid(box);
}
