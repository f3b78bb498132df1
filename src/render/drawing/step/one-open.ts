/** Drawers are put in and taken out one after another, since several open at once tip a piece over: one of them shows how. */
import type { Vec } from "../../../geometry/types.ts";
import { dot } from "../../../geometry/vec.ts";
import type { Build } from "../../../solve/build.ts";

interface Going {
  readonly parts: readonly string[];
  readonly along: Vec;
}

/** Without those of the drawers that go one way that are drawn shut: all but the lowest, which stands before none of them. */
export function oneOpen<T extends Going>({ motions, parts }: Pick<Build, "motions" | "parts">, goings: readonly T[]) {
  const lows = new Map(parts.map(({ id, solid }) => [id, solid.low[2]]));
  const lowest = ({ parts: ids }: Going): number => Math.min(...ids.flatMap((id) => lows.get(id) ?? []));
  const slides = motions.filter(({ kind }) => kind === "slide");
  const isDrawer = ({ parts: ids }: Going): boolean =>
    slides.some(({ moves }) => ids.every((id) => moves.includes(id)));
  const drawers = goings.filter(isDrawer);
  return goings.filter(
    (one) =>
      !drawers.includes(one) ||
      drawers
        .filter((other) => dot(other.along, one.along) > 1 - 1e-9)
        .every((other) => other === one || lowest(other) > lowest(one) || isFirst(drawers, one, other, lowest)),
  );
}

const isFirst = <T>(all: readonly T[], one: T, other: T, low: (of: T) => number): boolean =>
  low(one) === low(other) && all.indexOf(one) < all.indexOf(other);
