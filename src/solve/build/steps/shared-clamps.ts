/** The same clamps go from one glue-up to the next: that waits until they are free. There are as many of each reach as some glue-up has on at once. */
import type { Length } from "../../../units/length.ts";
import { less, ZERO } from "../../../units/rational.ts";
import type { Clamping } from "../../build.ts";
import type { StepDraft } from "./draft.ts";
import { lagOf } from "./precedence.ts";

/** By place in the order of work: the place of the glue-up that has the clamps, and how long it keeps them, in minutes; null where enough are free. */
export function clampsFrom(
  drafts: readonly StepDraft[],
): readonly ({ readonly place: number; readonly minutes: number } | null)[] {
  const reaches = [...new Set(drafts.flatMap(({ clamps = [] }) => clamps.map(({ opening }) => opening)))];
  const sets = reaches.map((reach) => ({ reach, most: Math.max(...drafts.map(({ clamps }) => count(clamps, reach))) }));
  return drafts.map(({ clamps }, i) => {
    if (count(clamps) === 0) return null;
    const place = drafts.slice(0, i).findLastIndex((each) => count(each.clamps) > 0);
    const before = drafts[place];
    const enough = sets.every(({ reach, most }) => count(before?.clamps, reach) + count(clamps, reach) <= most);
    if (!before || enough) return null;
    const minutes = before.waits.reduce((so, each) => (each.binds === undefined ? Math.max(so, each.minutes) : so), 0);
    return { place, minutes };
  });
}

/** Of those that open so far. */
const count = (clamps: readonly Clamping[] = [], reach: Length = ZERO): number =>
  clamps.reduce((so, each) => (less(each.opening, reach) ? so : so + each.count), 0);

/** Whether this step, or one between, has the work of that glue-up in hand, and has to wait longer for its glue than its clamps do. */
function isHardBefore(
  drafts: readonly StepDraft[],
  { place, minutes }: { readonly place: number; readonly minutes: number },
  until: number,
): boolean {
  const glued = drafts[place];
  if (!glued) return false;
  const own = new Set([...glued.shows.present, ...glued.shows.fresh]);
  return drafts
    .slice(place + 1, until + 1)
    .some((next) => lagOf(glued, next) > minutes && next.shows.present.some((id) => own.has(id)));
}

/** Told where the work between is over before the clamps are free. */
export function withClampsTold(drafts: readonly StepDraft[]): readonly StepDraft[] {
  const from = clampsFrom(drafts);
  return drafts.map((draft, i) => {
    const busy = from[i];
    if (!busy) return draft;
    const worked = drafts.slice(busy.place + 1, i).reduce((so, { bench }) => so + bench, 0);
    if (worked >= busy.minutes || isHardBefore(drafts, busy, i)) return draft;
    const told = `With one set of clamps this waits until those of step ${busy.place + 1} are free, ${busy.minutes} minutes after it was closed: put it together dry meanwhile.`;
    return { ...draft, text: [told, ...draft.text] };
  });
}
