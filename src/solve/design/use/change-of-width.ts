import type { Movement } from "../../design.ts";

/** Moisture between which the coefficients of the tables hold, %. */
const [LOW, HIGH] = [6, 14];
/** Wetter wood does not swell: fibre saturation, %. */
const SATURATED = 30;

/**
 * The share by which wood changes its width from one moisture to another, below zero where it shrinks.
 * Wood Handbook FPL-GTR-190, Eq. 13-2: C_T (M_F - M_I) of flat-sawn wood; where one of the two lies outside 6 to 14 % and the shrinkage is known,
 * Eq. 13-3: (M_F - M_I) / (3000 / S_T - 30 + M_I). Of quarter-sawn boards with the radial figures; what lies between the two moves less than flat-sawn.
 */
export function changeOfWidth({ wide, shrinkage }: Movement, from: number, to: number): number {
  const [first, last] = [Math.min(from, SATURATED), Math.min(to, SATURATED)];
  const near = Math.min(first, last) >= LOW && Math.max(first, last) <= HIGH;
  if (near || shrinkage === null) return wide * (last - first);
  return (last - first) / ((SATURATED * 100) / shrinkage - SATURATED + first);
}
