/** In which grits wood is sanded: what the steps say, the schedule shows and the shopping list has. Common practice, no source. */
import type { Finishing } from "../model/purchase.ts";
import { productOf } from "../steps/finishing/products.ts";

/** One after another, before the first coat. */
export const GRITS: readonly number[] = [120, 180];

/** "120, then 180 grit" */
export const gritWords = `${GRITS.join(", then ")} grit`;

/** A grit, and the square metres that are sanded with it. */
export interface Sanded {
  readonly grit: number;
  readonly area: number;
}

/** Of all that is made of wood, and between the coats of each finish. */
export function sandedIn(all: number, finishing: readonly Finishing[]): readonly Sanded[] {
  const between = finishing.flatMap(({ product, coats, area }): readonly Sanded[] => {
    const grit = productOf(product).between;
    return grit !== undefined && coats > 1 && area > 0 ? [{ grit, area: area * (coats - 1) }] : [];
  });
  const every = [...GRITS.map((grit) => ({ grit, area: all })), ...between];
  return [...new Set(every.map(({ grit }) => grit))]
    .toSorted((a, b) => a - b)
    .map((grit) => ({
      grit,
      area: every.reduce((so, each) => so + (each.grit === grit ? each.area : 0), 0),
    }));
}
