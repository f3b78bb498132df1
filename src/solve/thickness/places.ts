/** Which places on a part go with which of its ends when the thickness of a stock makes it longer or shorter. */

import { equal, type Length, less, min, rational, subtract, toNumber } from "../../units/index.ts";
import { isSame, TOLERANCE } from "../../units/length.ts";
import { absolute } from "../../units/rational.ts";
import { LOCATED } from "../build/jigs/spacers.ts";
import type { MovingPlaces } from "../build/model/thickness.ts";
import type { CutLine } from "../build.ts";
import { type AxisIndex, faceOf, INDICES, indexOf } from "../design/space.ts";
import type { Design, Feature, Part } from "../design.ts";
import type { Range } from "./range.ts";
import type { SolvedAt } from "./solved-at.ts";

/** Of the lines of a cut list, over the range of a stock: from which place on what is cut and bored keeps its distance from the far end. */
export function movingPlaces(
  range: Range,
  drawn: Design,
  lines: readonly CutLine[],
  solved: SolvedAt,
): readonly MovingPlaces[] {
  const [thin, thick] = [range.low, range.high].map((at) => solved.design(new Map([[range.stock, at]])));
  if (!thin || !thick) return [];
  return lines.flatMap(({ mark, parts: [id = ""] }) =>
    (["length", "width"] as const).flatMap((size): readonly MovingPlaces[] => {
      const [here, one, two] = [drawn, thin, thick].map((design) => placed(design, id));
      if (!here || !one || !two || here.part.turned) return [];
      const axis = indexOf(here.part.axes[size]);
      const long = ({ part }: typeof here): number => toNumber(part.blank.high[axis]) - toNumber(part.blank.low[axis]);
      if (Math.abs(long(one) - long(two)) <= TOLERANCE) return [];
      const moving = here.places.filter((_, i) => {
        const [a, b] = [one, two].map((each) => each.places[i]?.[axis]);
        // What keeps its distance from the far end, and not from the near one.
        return a !== undefined && b !== undefined && same(a.above, b.above) && !same(a.below, b.below);
      });
      const from = moving.flatMap((place) => place[axis].below);
      if (from.length === 0) return [];
      return [{ mark, size, from: from.reduce(min), near: faceOf(axis, false), far: faceOf(axis, true) }];
    }),
  );
}

const same = (a: readonly Length[], b: readonly Length[]): boolean =>
  a.length === b.length && a.every((each, i) => isSame(each, b[i] as Length));

/**
 * Of which lines of a cut list a printed place changes over the range of a stock, so that neither end of the part has it: of a cut or hole, from the nearer
 * end; of the part itself on another, where nothing else puts it there. `told`: what is said to go with the far end.
 */
export function shiftingPlaces(
  range: Range,
  drawn: Design,
  lines: readonly CutLine[],
  solved: SolvedAt,
  told: readonly MovingPlaces[],
): readonly string[] {
  const ends = [range.low, range.high].flatMap((at) => solved.design(new Map([[range.stock, at]])) ?? []);
  const changes = (here: Length | undefined, there: readonly (Length | undefined)[]): boolean =>
    here !== undefined &&
    there.some((each) => !each || Math.abs(toNumber(subtract(each, here))) >= toNumber(drawn.fits) / 2 - TOLERANCE);
  const cutsShift = (mark: string, id: string): boolean => {
    const here = placed(drawn, id);
    const there = ends.flatMap((each) => placed(each, id) ?? []);
    if (!here || here.part.turned) return false;
    return INDICES.some((axis) => {
      if (axis === indexOf(here.part.axes.thickness)) return false;
      const goesWith = told.some((each) => each.mark === mark && axis === indexOf(here.part.axes[each.size]));
      return here.places.some((place, i) => {
        const at = there.map((each) => each.places[i]?.[axis]);
        const far = goesWith && at.every((each) => each && same(each.above, place[axis].above));
        const side = nearer(place[axis]);
        return (
          !far &&
          side !== null &&
          changes(
            place[axis][side].at(END[side]),
            at.map((each) => each?.[side].at(END[side])),
          )
        );
      });
    });
  };
  const liesShift = (id: string): boolean =>
    drawn.joints
      .filter(({ method, contact, parts: [own] }) => own === id && contact.length > 0 && !LOCATED.has(method))
      .some(({ contact: [first], parts }) =>
        INDICES.filter((axis) => Math.abs(first?.normal[axis] ?? 1) < 0.5).some((axis) => {
          const here = liesOn(drawn, parts, axis);
          const side = here && nearer(here);
          if (!here || !side || equal(here.below[0] as Length, here.above[0] as Length)) return false;
          return changes(
            here[side][0],
            ends.map((each) => liesOn(each, parts, axis)?.[side][0]),
          );
        }),
      );
  return lines.flatMap(({ mark, parts }) =>
    parts.slice(0, 1).some((id) => cutsShift(mark, id)) || parts.some(liesShift) ? [mark] : [],
  );
}

/** Of two sides of a cut, the one that is told from the lower end, and from the higher. */
const END = { below: 0, above: -1 } as const;

/** From which end a place is told; null of what has none. */
function nearer({ below, above }: Reach): "below" | "above" | null {
  const [low, high] = [below.at(END.below), above.at(END.above)];
  return low && high ? (less(absolute(high), absolute(low)) ? "above" : "below") : null;
}

function liesOn({ parts }: Design, [own, mate]: readonly [string, string], axis: AxisIndex): Reach | null {
  const [a, b] = [own, mate].map((id) => parts.find((part) => part.id === id));
  if (!a || !b || a.turned || b.turned) return null;
  return {
    below: [subtract(a.body.low[axis], b.body.low[axis])],
    above: [subtract(b.body.high[axis], a.body.high[axis])],
  };
}

/** The distances of the sides of a cut, or of the middle of a hole, from both ends of its part. */
interface Reach {
  readonly below: readonly Length[];
  readonly above: readonly Length[];
}

/** A part, and where what is cut and bored is along each axis. */
function placed(design: Design, id: string) {
  const part = design.parts.find((each) => each.id === id);
  if (!part) return null;
  const joints = design.joints.flatMap(({ arrangements: [first] }) => first?.holes ?? []);
  const fixed = design.fittings.flatMap(({ holes }) => holes);
  const holes = [...part.holes, ...joints, ...fixed].filter((hole) => hole.part === id);
  const places = [
    ...part.features.map((feature) => INDICES.map((axis) => reachOf(part, axis, sidesOf(feature, axis)))),
    ...holes.map(({ at }) => INDICES.map((axis) => reachOf(part, axis, [at[axis]]))),
  ] as unknown as readonly (readonly [Reach, Reach, Reach])[];
  return { part, places };
}

const reachOf = ({ blank }: Part, axis: AxisIndex, sides: readonly Length[]): Reach => ({
  below: sides.map((side) => subtract(side, blank.low[axis])),
  above: sides.map((side) => subtract(blank.high[axis], side)),
});

/** Both sides of a cut along an axis; of a plane none. */
function sidesOf(feature: Feature, axis: AxisIndex): readonly Length[] {
  if ("normal" in feature || feature.kind === "tenon" || feature.kind === "tongue") return [];
  const start = toNumber(feature.origin[axis]);
  const far = [feature.along, feature.across, feature.into].reduce(
    (so, way, i) => so + way[axis] * toNumber(feature.size[i] as Length),
    start,
  );
  const ends = [start, far].map((value) => rational(Math.round(value)));
  return less(ends[1] as Length, ends[0] as Length) ? ends.toReversed() : ends;
}
