/** Weight of the piece and where it acts. */
import { centroid, type Vec } from "../../../geometry/index.ts";
import type { BuiltPart } from "../../../solve/build.ts";

/** Mass in kg; centre in units of 1/16 µm, undefined where nothing has a mass. Each part counts as of even density. */
export function balanceOf(parts: readonly BuiltPart[]): { readonly mass: number; readonly centre: Vec | undefined } {
  let [mass, x, y, z] = [0, 0, 0, 0];
  for (const part of parts) {
    const centre = centroid(part.solid);
    mass += part.mass;
    x += part.mass * centre[0];
    y += part.mass * centre[1];
    z += part.mass * centre[2];
  }
  return { mass, centre: mass > 0 ? [x / mass, y / mass, z / mass] : undefined };
}
