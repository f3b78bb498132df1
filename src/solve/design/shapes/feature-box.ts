import { add, multiply, rational } from "../../../units/rational.ts";
import type { Box, Feature, Point } from "../../design.ts";
import { enclosing, triple } from "../space.ts";

type BoxFeature = Extract<Feature, { readonly size: unknown }>;

/** Whether its three directions are axes. */
export const isSquare = ({ along, across, into }: BoxFeature): boolean =>
  [along, across, into].every((way) => way.filter((n) => n !== 0).length === 1);

/** The box of a feature whose three directions are axes. Throws a RangeError for one that lies aslant. */
export function featureBox({ origin, along, across, into, size }: BoxFeature): Box {
  const far = [along, across, into].reduce<Point>(
    (so, way, k) => triple((i) => add(so[i], multiply(size[k as 0 | 1 | 2], rational(way[i])))),
    origin,
  );
  return enclosing({ low: origin, high: origin }, { low: far, high: far });
}
