import type { Method } from "../draft.ts";
import type { Settings, Value } from "../expand/make.ts";
import { toNode } from "../expand/make.ts";
import { method } from "../schema/joint-words.ts";
import type { Site } from "./assembly.ts";

/** Driven through the part under `join` into the part under `to`. */
const DRIVEN: ReadonlySet<Method> = new Set<Method>([
  ...(["screws", "nails", "brads", "staples", "bolts", "bolts and cross dowels", "lag screws"] as const),
]);
/** Both parts are as long as they are over the corner, and each loses what the other fills. */
const CROSSING: ReadonlySet<Method> = new Set<Method>([
  ...(["half lap", "bridle", "mitre", "splined mitre", "keyed mitre", "box joint", "dovetail"] as const),
]);

/** The kind of a joint as it was written; null where it is none. */
export function methodOf({ with: said }: Settings, { at, where }: Site): Method | null {
  if (said === undefined) return null;
  return method.read(toNode(said, at), { ...where, findings: [] }) ?? null;
}

/** Whether the bodies cross at a corner with such a joint, or the end of one meets the side of the other. */
export function crosses(how: Settings, site: Site): boolean {
  const found = methodOf(how, site);
  return found !== null && CROSSING.has(found);
}

/** Joins the ends of some parts to the sides of others: what is driven in goes through the latter, all else is cut on the former. */
export function endJoint(ending: Value, through: Value, how: Settings, site: Site): Settings {
  const found = methodOf(how, site);
  const driven = found !== null && DRIVEN.has(found);
  return driven ? { join: through, to: ending, ...how } : { join: ending, to: through, ...how };
}
