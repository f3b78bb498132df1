/** Promise 0: masses are those of the solids, and add up. */
import type { Convex } from "./convex.ts";
import type { Model } from "./model.ts";
import type { V3 } from "./vector.ts";
import { cross, dot, minus, plus, times, ZERO } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

/** Masses are printed to a millionth of a kilogram. */
const PRINTED = 1e-6;

export function* masses(model: Model): Violations {
  const { record } = model;
  const densities = new Map<string, number>();
  let mass = 0;
  let moment: V3 = ZERO;
  for (const part of record.parts) {
    const { volume, centre } = moments(model.solid(part.id));
    mass += part.mass;
    moment = plus(moment, times(centre, part.mass));
    const density = part.mass / volume;
    const before = densities.get(part.stock);
    if (before === undefined) densities.set(part.stock, density);
    else if (Math.abs(part.mass - before * volume) > 1e-3 * part.mass + PRINTED)
      yield violation("masses are those of the solids", part.id, `is ${density / before} times as dense as its stock`);
  }
  if (Math.abs(mass - record.mass) > PRINTED * (record.parts.length + 1))
    yield violation("masses are those of the solids", "mass", `the parts weigh ${mass}, the piece ${record.mass}`);
  const off = minus(times(moment, 1 / mass), record.centreOfMass);
  if (Math.sqrt(dot(off, off)) > 0.01)
    yield violation("masses are those of the solids", "centreOfMass", `is off by ${off.join(", ")}`);
}

/** Volume and centroid of convex pieces, by the tetrahedra between a point of theirs and their faces. */
export function moments(pieces: readonly Convex[]): { readonly volume: number; readonly centre: V3 } {
  let volume = 0;
  let sum: V3 = ZERO;
  for (const { points, faces } of pieces) {
    const apex = points[0] ?? ZERO;
    for (const { ring } of faces)
      for (const [i, c] of ring.entries()) {
        const [a, b] = [ring[0] ?? ZERO, ring[i - 1] ?? ZERO];
        if (i < 2) continue;
        const sixth = dot(minus(a, apex), cross(minus(b, apex), minus(c, apex))) / 6;
        volume += sixth;
        sum = plus(sum, times(plus(plus(apex, a), plus(b, c)), sixth / 4));
      }
  }
  return { volume, centre: times(sum, 1 / volume) };
}
