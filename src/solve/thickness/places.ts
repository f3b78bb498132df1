/** Which places on a part go with which of its ends when the thickness of a stock makes it longer or shorter. */

import { type Length, less, min, rational, subtract, toNumber } from "../../units/index.ts";
import { isSame, TOLERANCE } from "../../units/length.ts";
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
