import { solidOf } from "../../../geometry/index.ts";
import { half, max, min, multiply, negate, rational, subtract } from "../../../units/rational.ts";
import { shift } from "../space.ts";
import { type Fitter, outwards } from "./fitter.ts";
import { fromBehind, headsBehind } from "./from-behind.ts";
import { withScrew } from "./grip-screw.ts";
import { measureOf } from "./items.ts";
import { block } from "./solids.ts";

/** The bar is the outer third of what stands out. */
const BAR = rational(1, 3);

/** A bar on two feet, over two screws from behind. */
export const fitPull: Fitter = (site, context) => {
  const { id, part, axis, run, at } = site;
  const item = withScrew(site, context);
  const [out, foot, centres] = [measureOf(item, "out"), measureOf(item, "foot"), measureOf(item, "centres")];
  const bar = multiply(out, BAR);
  const away = half(centres);
  const points = [shift(at, run, negate(away)), shift(at, run, away)];
  const stand = subtract(out, bar);
  const feet = points.map((each) => block(each, axis, outwards(site, stand), { run, long: foot, wide: foot }));
  const over = shift(at, axis, outwards(site, stand));
  const long = max(measureOf(item, "long"), centres);
  const grip = block(over, axis, outwards(site, bar), { run, long, wide: min(foot, long) });
  const thread = measureOf(item, "thread");
  const solid = solidOf([...feet, grip, ...headsBehind(site, thread, points)].flatMap(({ pieces }) => pieces));
  const hardware = [{ id, item, joint: null, carriedBy: part.id, at, solid }];
  return { hardware, holes: fromBehind(site, thread, points) };
};
