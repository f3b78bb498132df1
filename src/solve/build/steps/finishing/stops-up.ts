/** What keeps a drawer from coming out is turned up as that goes in again. */
import type { Removable } from "../../order/index.ts";
import type { Work } from "../draft.ts";

/** A stop that is left level holds no drawer. */
export function stopsTexts({ plan }: Work, bodies: readonly Removable[]): readonly string[] {
  const ids = new Set(bodies.flatMap(({ parts }) => parts));
  const stops = plan.hardware.filter(({ item, carriedBy }) => item.kind === "drawer stop" && ids.has(carriedBy));
  if (stops.length === 0) return [];
  const [its, one] = stops.length > 1 ? ["its", "each drawer"] : ["the", "the drawer"];
  return [`When ${one} is half way in, turn ${its} stop up, and pull: the drawer must not come out.`];
}
