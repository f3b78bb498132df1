import { sayWeight, takesTwo } from "../../cut-list/weight.ts";
import { capital, listed, type Work } from "../draft.ts";

/** A caution where what is lifted together is too heavy for one. */
export function liftCaution(work: Work, ids: readonly string[]): readonly string[] {
  const mass = ids.reduce((so, id) => so + work.mass(id), 0);
  if (!takesTwo(mass)) return [];
  const what = ids.length === 1 ? capital(listed(work, ids)) : "This";
  return [`${what} weighs about ${sayWeight(mass, work.design.units)}: lift with a second person.`];
}
