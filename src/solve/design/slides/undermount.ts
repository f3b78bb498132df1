import { type Length, millimetres } from "../../../units/length.ts";
import { add, max, min, negate, subtract } from "../../../units/rational.ts";
import type { Hardware } from "../../design.ts";
import type { Maker } from "../fastening/site.ts";
import { measureOf } from "../hardware/items.ts";
import { boxSolid } from "../hardware/solids.ts";
import { triple } from "../space.ts";
import { behind, extensionOf, ofLength, runOf, screwPlaces, slideLength, slidesOut, startOf } from "./run.ts";
import { pilot } from "./side-slide.ts";

/** What the drawer hooks on begins behind the box's front, where the locks are (common practice, no source). */
const BEHIND_FRONT = millimetres(20);

/** A slide under a drawer: the joined part is the drawer's side. The member on the case passes under it; the one that the box lies on is inside of it, under the bottom. */
export const undermountSlides: Maker = (site, moved, context) => {
  const { draft, head: side, hold: wall, axis, sign } = site;
  const run = runOf(site);
  const found = context.items.find(draft.hardware, ["undermount slide"]);
  if (!found || run?.cross !== 2 || moved.turned) return [];
  const start = startOf(site, found, run, context);
  if (!start) return [];
  const length = slideLength(found, start, site, run, context);
  const item = ofLength(found, length, context);
  const end = behind(start, length, run);
  const towards = (by: Length): Length => (sign > 0 ? negate(by) : by);
  const outer = (sign > 0 ? wall.body.low : wall.body.high)[axis];
  const inside = (sign > 0 ? side.body.low : side.body.high)[axis];
  const reach = add(inside, towards(measureOf(item, "wide")));
  const low = side.body.low[2];
  const member = (from: Length, to: Length, first: Length, bottom: Length, top: Length) =>
    boxSolid({
      low: triple((i) => (i === axis ? min(from, to) : i === run.axis ? min(first, end) : bottom)),
      high: triple((i) => (i === axis ? max(from, to) : i === run.axis ? max(first, end) : top)),
    });
  const under = subtract(low, measureOf(item, "high"));
  const ids = [`${site.joint}.case`, `${site.joint}.drawer`] as const;
  const common = { item, joint: site.joint } as const;
  const at = (surface: Length, up: Length) => triple((i) => (i === axis ? surface : i === run.axis ? start : up));
  const hardware: readonly Hardware[] = [
    {
      ...{ ...common, id: ids[0], carriedBy: wall.id, at: at(outer, under) },
      solid: member(outer, reach, start, under, low),
    },
    {
      ...{ ...common, id: ids[1], carriedBy: side.id, at: at(inside, low), halfOf: ids[0] },
      solid: member(inside, reach, behind(start, BEHIND_FRONT, run), low, add(low, measureOf(item, "bottom up"))),
    },
  ];
  const level = subtract(low, millimetres(6));
  const motion = slidesOut(run, extensionOf(item, length, context.units));
  return ([0, 1, 2] as const).map((shifted) => {
    const holes = screwPlaces(length, shifted).flatMap((place) => {
      const mouth = triple((i) => (i === axis ? outer : i === run.axis ? behind(start, place, run) : level));
      return pilot(wall, mouth, axis, sign, ids[0]) ?? [];
    });
    return { fasteners: [], holes, hardware, motion };
  });
};
