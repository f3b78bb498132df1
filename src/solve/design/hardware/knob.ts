import { solidOf } from "../../../geometry/index.ts";
import { half, multiply, rational, subtract } from "../../../units/rational.ts";
import { shift } from "../space.ts";
import { type Fitter, outwards } from "./fitter.ts";
import { fromBehind, headsBehind } from "./from-behind.ts";
import { withScrew } from "./grip-screw.ts";
import { measureOf } from "./items.ts";
import { drum } from "./solids.ts";

/** The foot is a third of what stands out, the head the rest: near enough to judge what a knob strikes. */
const FOOT = rational(1, 3);

/** A knob's screw comes from behind, through everything that the knob is on. */
export const fitKnob: Fitter = (site, context) => {
  const { id, part, axis, at } = site;
  const item = withScrew(site, context);
  const out = measureOf(item, "out");
  const foot = multiply(out, FOOT);
  const neck = drum(at, axis, outwards(site, foot), half(measureOf(item, "foot")));
  const head = drum(
    shift(at, axis, outwards(site, foot)),
    axis,
    outwards(site, subtract(out, foot)),
    half(measureOf(item, "across")),
  );
  const thread = measureOf(item, "thread");
  const behind = headsBehind(site, thread, [at]);
  const solid = solidOf([neck, head, ...behind].flatMap(({ pieces }) => pieces));
  const hardware = [{ id, item, joint: null, carriedBy: part.id, at, solid }];
  return { hardware, holes: fromBehind(site, thread, [at]) };
};
