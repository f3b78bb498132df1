/** Whether what is drawn of a step is crowded in a column, and what it would gain over the width of the page. */
import type { Build, Step } from "../../solve/build.ts";
import { manyNails } from "../drawing/step/screws.ts";
import type { Drawn } from "./drawn-part.ts";

/** Numbers so far from their places, in points, crowd a drawing. */
const BENT = 16;
/** Holes that are drawn so close to each other, in points, cannot be told apart. */
const NEAR = 5;
/** A smaller scale than this crowds it too. */
const SMALLEST = 72 / 406_400 / 16.5;
/** The same of one that has so many times as many numbers around it as a plain one. */
const SMALLEST_FULL = 72 / 406_400 / 15.5;
const FULL = 1.5;
/** So many numbers stand around a drawing that is not plain. */
export const RICH = 10;
/** So much larger it is drawn at least where that helps. */
const HELPS = 1.3;

/** Of a part to scale. */
export const isCrowded = ({ scale }: Drawn): boolean =>
  scale !== undefined &&
  (scale.bent > BENT || scale.near < NEAR || scale.points < (scale.tells < FULL * RICH ? SMALLEST : SMALLEST_FULL));

/** Of a picture: where so many screws, buttons or dowels go in that each is hardly seen. */
export const isFull = ({ fasteners }: Pick<Build, "fasteners">, { shows }: Step): boolean => {
  const driven = fasteners.filter(({ id }) => shows.fasteners.includes(id));
  return driven.length - manyNails(driven).size > MANY_DRIVEN;
};
const MANY_DRIVEN = 8;

/** The share that the largest of some gains. */
export function gainOf(wide: readonly { readonly larger: number }[]): number {
  const most = Math.max(1, ...wide.map(({ larger }) => larger));
  return most < HELPS ? 0 : 1 - 1 / (most * most);
}
