/** What a piece stands on: feet, levellers and casters under it. */
import { fitsNothing } from "../../../findings/rules/fits-nothing.ts";
import { solidOf } from "../../../geometry/index.ts";
import { millimetres } from "../../../units/length.ts";
import { add, half, less, min, negate, subtract } from "../../../units/rational.ts";
import { extent, shift, thirdAxis } from "../space.ts";
import { type Fitter, outwards } from "./fitter.ts";
import { measureOf } from "./items.ts";
import { pilot, screwedOn } from "./screwed.ts";
import { block, drum } from "./solids.ts";

/** A stem turns freely in a hole this much larger. Common practice, no source. */
const FREE = millimetres(1);

/** A drum on one screw in its middle. */
export const fitFoot: Fitter = (site) => {
  const { id, item, part, axis, at } = site;
  const solid = drum(at, axis, outwards(site, measureOf(item, "high")), half(measureOf(item, "across")));
  const hole = pilot(site, at, measureOf(item, "pilot"), measureOf(item, "screw"));
  return { hardware: [{ id, item, joint: null, carriedBy: part.id, at, solid }], holes: [hole] };
};

/** A drum in the middle of its travel; the hole of its insert, and beyond it that for the stem. */
export const fitLeveller: Fitter = (site) => {
  const { id, item, part, axis, at, body } = site;
  const solid = drum(at, axis, outwards(site, measureOf(item, "high")), half(measureOf(item, "across")));
  const [insert, stem] = [measureOf(item, "insert long"), measureOf(item, "stem")];
  const bore = pilot(site, at, measureOf(item, "insert"), insert);
  const deep = min(stem, extent(body, axis));
  const beyond = less(insert, deep) ? [{ diameter: add(measureOf(item, "thread"), FREE), depth: deep }] : [];
  const through = bore.through || !less(stem, extent(body, axis));
  const hole = { ...bore, through, stages: [...bore.stages, ...beyond] };
  return { hardware: [{ id, item, joint: null, carriedBy: part.id, at, solid }], holes: [hole] };
};

/** A plate, a fork and a wheel under its middle; what a swivel sweeps is not part of it. */
export const fitCaster: Fitter = (site, context) => {
  const { id, item, part, axis, run, at, draft } = site;
  const [plate, wheel, tread] = [measureOf(item, "plate"), measureOf(item, "wheel"), measureOf(item, "tread")];
  const fork = subtract(measureOf(item, "high"), add(plate, wheel));
  if (fork.n < 0n) {
    context.report(fitsNothing(draft.at, { item: item.kind, part: part.id, because: "wheel" }));
    return null;
  }
  const made = screwedOn(site, { long: measureOf(item, "long"), wide: measureOf(item, "wide"), thick: plate }, context);
  if (!made) return null;
  const under = shift(at, axis, outwards(site, plate));
  const hub = shift(under, axis, outwards(site, add(fork, half(wheel))));
  const across = thirdAxis(axis, run);
  const turning = drum(shift(hub, across, negate(half(tread))), across, tread, half(wheel));
  const forks = fork.n > 0n ? [block(under, axis, outwards(site, fork), { run, long: tread, wide: tread })] : [];
  const solid = solidOf([made.solid, ...forks, turning].flatMap(({ pieces }) => pieces));
  return { hardware: [{ id, item, joint: null, carriedBy: part.id, at, solid }], holes: made.holes };
};
