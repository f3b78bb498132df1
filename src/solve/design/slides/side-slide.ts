import { type Length, millimetres } from "../../../units/length.ts";
import { add, half, max, min, negate, subtract, ZERO } from "../../../units/rational.ts";
import type { Arrangement, Hardware, Hole, Point } from "../../design.ts";
import { depthAt } from "../fastening/line.ts";
import type { Maker, Member } from "../fastening/site.ts";
import { measureOf } from "../hardware/items.ts";
import { boxSolid } from "../hardware/solids.ts";
import { type AxisIndex, middle, triple, unit } from "../space.ts";
import { behind, extensionOf, ofLength, type Run, runOf, screwPlaces, slideLength, slidesOut, startOf } from "./run.ts";

/** Pilots for the short screws that come with slides (common practice, no source). */
const PILOT = { diameter: millimetres(5, 2), deep: millimetres(9), under: millimetres(3, 2) };

/**
 * A slide at the side of a drawer: the joined part is the drawer's side, the other what it runs beside. Its middle lies in the middle of the drawer's side, or
 * `up from the bottom`. Other arrangements take other holes of the slide, so that two may be screwed to a partition back to back.
 */
export const sideSlides: Maker = (site, moved, context) => {
  const { draft, head: side, hold: wall, axis, sign } = site;
  const run = runOf(site);
  const found = context.items.find(draft.hardware, ["side slide"]);
  if (!found || !run || moved.turned) return [];
  const start = startOf(site, found, run, context);
  const up = draft.upFromBottom ? context.measure(draft.upFromBottom) : null;
  if (!start || (draft.upFromBottom && !up)) return [];
  const length = slideLength(found, start, site, run, context);
  const item = ofLength(found, length, context);
  const level = up ? add(side.body.low[run.cross], up) : middle(side.body, run.cross);
  const [high, thick] = [half(measureOf(item, "high")), half(measureOf(item, "thick"))];
  const end = behind(start, length, run);
  const skin = (member: Member, facing: number): Length => (facing > 0 ? member.body.high : member.body.low)[axis];
  const [inner, outer] = [skin(side, sign), skin(wall, -sign)];
  const member = (from: Length, to: Length) =>
    boxSolid({
      low: triple((i) => (i === axis ? min(from, to) : i === run.axis ? min(start, end) : subtract(level, high))),
      high: triple((i) => (i === axis ? max(from, to) : i === run.axis ? max(start, end) : add(level, high))),
    });
  const out = (by: Length): Length => (sign > 0 ? by : negate(by));
  const at = (surface: Length): Point => triple((i) => (i === axis ? surface : i === run.axis ? start : level));
  const ids = [`${site.joint}.case`, `${site.joint}.drawer`] as const;
  const common = { item, joint: site.joint } as const;
  const hardware: readonly Hardware[] = [
    { ...common, id: ids[0], carriedBy: wall.id, at: at(outer), solid: member(outer, subtract(outer, out(thick))) },
    {
      ...common,
      id: ids[1],
      carriedBy: side.id,
      at: at(inner),
      solid: member(inner, add(inner, out(thick))),
      halfOf: ids[0],
    },
  ];
  const motion = slidesOut(run, extensionOf(item, length, context.units));
  return ([0, 1, 2] as const).map((shifted): Arrangement => {
    const places = screwPlaces(length, shifted).map((place) => behind(start, place, run));
    const pilots = (part: Member, surface: Length, into: 1 | -1, id: string): readonly Hole[] =>
      places.flatMap((place) => pilot(part, withRun(at(surface), place, run), axis, into, id) ?? []);
    const holes = [...pilots(wall, outer, sign, ids[0]), ...pilots(side, inner, sign > 0 ? -1 : 1, ids[1])];
    return { fasteners: [], holes, hardware, motion };
  });
};

const withRun = (at: Point, place: Length, run: Run): Point => triple((i) => (i === run.axis ? place : at[i]));

/** The pilot of a slide's screw; none where it finds no wood, since the part ends before the slide does. */
export function pilot(part: Member, at: Point, axis: AxisIndex, into: 1 | -1, id: string): Hole | null {
  const wood = depthAt(part.solid, at, axis, into);
  const deep = min(PILOT.deep, subtract(wood, PILOT.under));
  if (deep.n <= 0n) return null;
  return {
    ...{ part: part.id, kind: "pilot", at, direction: unit(axis, into), through: false, for: id, atBench: true },
    stages: [{ diameter: PILOT.diameter, depth: deep }],
    keep: { edge: ZERO, end: ZERO, under: ZERO },
  };
}
