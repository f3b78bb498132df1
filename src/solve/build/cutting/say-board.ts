import type { Units } from "../../../parse/draft.ts";
import { divide, inches, type Length, sayLength } from "../../../units/index.ts";

/** The length of a board as shops say it: in feet where it is whole feet and the plan is in inches. */
export function sayBoardLength(length: Length, units: Units): string {
  const feet = divide(length, inches(12));
  return units === "inch" && feet.d === 1n ? `${feet.n} ft` : sayLength(length, { units });
}
