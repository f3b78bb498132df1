/**
 * An auditor of build records. It knows only the record's description and shares no code with the program:
 * what it recomputes, it recomputes in its own way, in doubles.
 */
import { bodies } from "./bodies.ts";
import { congruence } from "./congruence.ts";
import { counts } from "./counts.ts";
import { curves } from "./curves.ts";
import { dovetails } from "./dovetails.ts";
import { drills } from "./drills.ts";
import { driving } from "./driving.ts";
import { finish } from "./finish.ts";
import { fits } from "./fits.ts";
import { form } from "./form.ts";
import { hanging } from "./hanging.ts";
import { holes } from "./holes.ts";
import { keep } from "./keep.ts";
import { layouts } from "./layouts.ts";
import { lists } from "./lists.ts";
import { making } from "./making.ts";
import { masses } from "./masses.ts";
import { modelOf } from "./model.ts";
import { replayed } from "./moments.ts";
import { motions } from "./motions.ts";
import { points } from "./points.ts";
import type { BuildRecord } from "./record.ts";
import { references } from "./references.ts";
import { sequence } from "./sequence.ts";
import { times } from "./times.ts";
import { travel } from "./travel.ts";
import { verdicts } from "./verdicts.ts";
import type { Violation } from "./violation.ts";

export { sameBytes } from "./bytes.ts";
export type { BuildRecord } from "./record.ts";
export type { Violation } from "./violation.ts";

/** Everything in a record, already parsed, that breaks a promise; an empty list for a record that keeps them all. */
export function audit(record: BuildRecord): Violation[] {
  const unresolved = [...references(record)];
  // The other checks follow ids and measure solids; where those are wrong, nothing more can be said.
  if (unresolved.length > 0) return unresolved;
  const model = modelOf(record);
  const malformed = [...form(model)];
  if (malformed.some(({ check }) => check === "pieces are closed" || check === "pieces are convex")) return malformed;
  const replay = replayed(record);
  const rest = [
    fits,
    lists,
    counts,
    making,
    masses,
    congruence,
    curves,
    dovetails,
    bodies,
    travel,
    sequence,
    times,
    finish,
    hanging,
    driving,
    holes,
    drills,
    keep,
    points,
    motions,
    layouts,
    verdicts,
  ].flatMap((check) => [...check(model, replay)]);
  return [...malformed, ...rest];
}
