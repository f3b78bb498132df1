import { exactBounds } from "../../geometry/bounds.ts";
import { isEmpty } from "../../geometry/solid.ts";
import type { Point } from "../../geometry/types.ts";
import type { BuiltPart } from "../../solve/build.ts";
import { max, min } from "../../units/index.ts";

/** The exact corners of the box around some parts; null where there is no wood. */
export function outsideOf(
  parts: readonly Pick<BuiltPart, "solid">[],
): { readonly low: Point; readonly high: Point } | null {
  const [first, ...others] = parts.filter(({ solid }) => !isEmpty(solid)).map(({ solid }) => exactBounds(solid));
  if (!first) return null;
  const each = (of: typeof min, a: Point, b: Point): Point => [of(a[0], b[0]), of(a[1], b[1]), of(a[2], b[2])];
  return others.reduce((so, b) => ({ low: each(min, so.low, b.low), high: each(max, so.high, b.high) }), first);
}
