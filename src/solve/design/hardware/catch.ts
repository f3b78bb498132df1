import { fitsNothing } from "../../../findings/rules/fits-nothing.ts";
import { isSame, type Length, millimetres } from "../../../units/length.ts";
import { add, half, less, max, negate, subtract } from "../../../units/rational.ts";
import type { Item, Point } from "../../design.ts";
import { indexOf, middle, shift, thirdAxis, withAxis } from "../space.ts";
import { type Fitter, type FitterContext, type FittingSite, outwards } from "./fitter.ts";
import { measureOf } from "./items.ts";
import { screwedOn } from "./screwed.ts";

/** The lugs of a catch that its screws go through (common practice, no source). */
const LUG = millimetres(3, 2);

/**
 * The body in the case, so near to the shut door that it touches its strike; the strike on the door in front of it. On an inset door the strike ends
 * with the edge of the door: further out it would lie in the gap, strike the case, and leave its screws no wood.
 */
export const fitCatch: Fitter = (site, context) => {
  const { id, part, against, axis, draft } = site;
  const to = against && indexOf(against.axes.thickness);
  if (!against || to === null || to === axis || against.turned) {
    const because = against ? "facing" : "against";
    context.report(fitsNothing(draft.at, { item: site.item.kind, part: part.id, because }));
    return null;
  }
  const run = thirdAxis(axis, to);
  const said = (i: 0 | 1 | 2): boolean => draft.place[(["across", "deep", "up"] as const)[i]] !== undefined;
  // The door lies before or behind the place of the catch.
  const place = said(to) ? site.at[to] : middle(part.body, to);
  const way = less(middle(against.body, to), place) ? -1 : 1;
  const face = (way < 0 ? against.body.high : against.body.low)[to];
  const inwards = (by: Length): Length => (way < 0 ? by : negate(by));
  const [reach, high, thin] = [
    measureOf(site.item, "reach"),
    measureOf(site.item, "high"),
    measureOf(site.item, "strike"),
  ];
  const near = said(to) ? site.at : withAxis(site.at, to, add(face, inwards(add(thin, half(reach)))));
  const apart = way < 0 ? subtract(near[to], face) : subtract(face, near[to]);
  const item = screwedAt(site.item, apart, isSame(apart, add(thin, half(reach))), context);
  const at: Point = said(run) ? near : withAxis(near, run, middle(against.body, run));
  const own = { ...site, item, run, at };
  const body = screwedOn(own, { long: measureOf(item, "long"), wide: reach, thick: high, passed: LUG }, context);
  const wide = measureOf(item, "strike wide");
  const edge = subtract(near[axis], (site.sign > 0 ? against.body.low : against.body.high)[axis]);
  const gap = site.sign > 0 ? negate(edge) : edge;
  const middleOfStrike = max(half(max(high, wide)), add(gap, half(wide)));
  const opposite: FittingSite = {
    ...own,
    id: `${id}.strike`,
    part: against,
    body: against.body,
    axis: to,
    sign: way < 0 ? 1 : -1,
    at: withAxis(shift(at, axis, outwards(site, middleOfStrike)), to, face),
  };
  const strike = screwedOn(opposite, { long: measureOf(item, "strike long"), wide, thick: thin }, context);
  if (!body || !strike) return null;
  const other = { id: opposite.id, carriedBy: against.id, at: opposite.at, solid: strike.solid, halfOf: id };
  return {
    hardware: [
      { id, item, joint: null, carriedBy: part.id, at, solid: body.solid },
      { ...other, item, joint: null },
    ],
    holes: [...body.holes, ...strike.holes],
  };
};

/** It has to reach the strike from where it is screwed on, and not every catch does; where the plan itself says how far that is, its name tells it too. */
function screwedAt(item: Item, apart: Length, isUsual: boolean, { printItem }: FitterContext): Item {
  const value = printItem(apart);
  return {
    ...item,
    ...(!isUsual && { label: `${item.label}, ${value} from its screws to the shut door` }),
    decides: [...item.decides, { name: "from its screws to the shut door", value }],
  };
}
