import { inches, type Length } from "../../../units/length.ts";
import {
  compare,
  equal,
  half,
  less,
  max,
  min,
  multiply,
  negate,
  rational,
  subtract,
  ZERO,
} from "../../../units/rational.ts";
import type { Point } from "../../design.ts";
import { type AxisIndex, shift } from "../space.ts";
import { depthAt } from "./line.ts";
import type { Row } from "./row.ts";
import type { Site } from "./site.ts";

/** The two parts that fasteners go through and into. */
export type Wood = Pick<Site, "head" | "hold" | "axis" | "sign" | "area">;

/**
 * A row whose points all stand on sound wood. Where a dado or another cut leaves less than half of the depth that the best point has,
 * in either part, a point goes to the nearest place along the row, in steps of `step`, around which there is enough, also to both sides
 * of the row if that can be. Points for which there is none stay, and are told by those who need the wood. `margin`: how much of it there has to be on both sides.
 * Before that the whole row is moved out of a groove in which its heads would stand.
 */
export function onWood(placed: Row, site: Wood, step: Length, margin: Length = half(step)): Row {
  const row = outOfGroove(placed, site, step, max(margin, BESIDE));
  const rooms = row.points.map((point) => depths(point, site));
  const most = rooms.reduce((a, b): Depths => [max(a[0], b[0]), max(a[1], b[1])], [ZERO, ZERO] as Depths);
  const least = most.map(half);
  // Places that are looked at lie in steps along the row, and their sides are places as well.
  const deep = once((at: Point): boolean => depths(at, site).every((depth, i) => !less(depth, least[i] as Length)));
  // The edge of a cut is as bad as its middle: there has to be wood on both sides.
  const enough = (at: Point): boolean =>
    [negate(margin), ZERO, margin].every((aside) => deep(shift(at, row.along, aside)));
  const beside = (at: Point): readonly Point[] => [negate(BESIDE), BESIDE].map((aside) => shift(at, row.across, aside));
  const clear = (at: Point): boolean => enough(at) && beside(at).every(deep);
  if (row.points.every(clear)) return row;
  // A cut along the row: a little to one side there may be wood under all of it.
  for (const by of ASIDE) {
    const points = row.points.map((point) => shift(point, row.across, multiply(step, by)));
    if (points.every((point) => clear(point) && isInside(point, row.across, site.area))) return { ...row, points };
  }
  const sounder = (point: Point): Point => {
    if (clear(point)) return point;
    const sound = nearest(point, row.along, site, step, (at) => enough(at) && beside(at).every(enough));
    return sound ?? (enough(point) ? point : (nearest(point, row.along, site, step, enough) ?? point));
  };
  const points = row.points.map(sounder);
  return { ...row, points };
}

/** Heads stand on the face of their part, `reach` of it on both sides of the row, where the contact has room for such a line. */
function outOfGroove(row: Row, { head, axis, sign, area }: Wood, step: Length, reach: Length): Row {
  const thick = subtract(head.body.high[axis], head.body.low[axis]);
  const onFace = (at: Point): boolean => equal(depthAt(head.solid, at, axis, sign > 0 ? -1 : 1), thick);
  // A groove along the row lies under its ends as well.
  const whole = (points: readonly Point[], wide: Length): boolean =>
    [points[0], points.at(-1)].every((at) =>
      QUARTERS.every((quarter) => at && onFace(shift(at, row.across, multiply(wide, quarter)))),
    );
  if (row.points.length === 0 || head.solid.pieces.length === 1 || whole(row.points, reach)) return row;
  const lines = FAR_ASIDE.map((by) => row.points.map((point) => shift(point, row.across, multiply(step, by)))).filter(
    (points) => points.every((point) => isInside(point, row.across, area)),
  );
  // Rather with room to spare, for a slot.
  const roomy = (wide: Length) => lines.find((points) => whole(points, wide));
  const points = roomy(multiply(reach, rational(3, 2))) ?? roomy(reach);
  return points ? { ...row, points } : row;
}

/** Deeper than this no fastener needs to look: a long board is no better than a short one. */
const PLENTY = inches(2);

type Depths = readonly [Length, Length];

/** How much wood there is at a point, ahead in the part that holds and behind in the headed one. */
const depths = (at: Point, { head, hold, axis, sign }: Wood): Depths => [
  min(depthAt(hold.solid, at, axis, sign), PLENTY),
  min(depthAt(head.solid, at, axis, sign > 0 ? -1 : 1), PLENTY),
];

function once(of: (at: Point) => boolean): typeof of {
  const known = new Map<string, boolean>();
  return (at) => {
    const key = at.map(({ n, d }) => `${n}/${d}`).join();
    const found = known.get(key) ?? of(at);
    known.set(key, found);
    return found;
  };
}

const FARTHEST = 12;
/** A head reaches this far to either side. */
const BESIDE = inches(3, 16);
const QUARTERS = [-4, -3, -2, -1, 0, 1, 2, 3, 4].map((n) => rational(n, 4));
/** In steps, the nearest first. */
const FAR_ASIDE = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12].flatMap((quarters) => [
  rational(quarters, 4),
  rational(-quarters, 4),
]);
const ASIDE = [1, -1, 2, -2, 3, -3].map((quarters) => rational(quarters, 4));

const isInside = (at: Point, axis: AxisIndex, area: Wood["area"]): boolean => {
  const [low, high] = [area.low[axis], area.high[axis]];
  return compare(min(low, high), at[axis]) <= 0 && compare(at[axis], max(low, high)) <= 0;
};

function nearest(
  from: Point,
  along: AxisIndex,
  { area }: Wood,
  step: Length,
  enough: (at: Point) => boolean,
): Point | null {
  for (let steps = 1; steps <= FARTHEST; steps += 1)
    for (const way of [-1, 1]) {
      const at = shift(from, along, multiply(step, rational(steps * way)));
      const [low, high] = [min(at[along], area.low[along]), max(at[along], area.high[along])];
      const inside = compare(low, area.low[along]) >= 0 && compare(high, area.high[along]) <= 0;
      if (inside && enough(at)) return at;
    }
  return null;
}
