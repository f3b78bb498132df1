/** Masses of a hand-made record, from its solids: all of wood of one density. */
import { convexOf } from "../convex.ts";
import { moments } from "../masses.ts";
import type { BuildRecord } from "../record.ts";
import { plus, times, ZERO } from "../vector.ts";

/** kg/mm³ */
const DENSITY = 7e-7;

export function weigh(record: BuildRecord): void {
  let moment = ZERO;
  for (const part of record.parts) {
    const { volume, centre } = moments(part.solids.map(convexOf));
    part.mass = volume * DENSITY;
    moment = plus(moment, times(centre, part.mass));
  }
  record.mass = record.parts.reduce((so, part) => so + part.mass, 0);
  record.centreOfMass = times(moment, 1 / record.mass);
}
