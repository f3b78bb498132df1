/** What is screwed on and comes off when the rest is off is shown in a picture of its own: else it would seem to come off first. */
import type { Step } from "../../../solve/build.ts";

/** What is said below the two. */
export const TURNS = ["Comes off first", "Comes off last"] as const;

/** The step as it is shown first, with what is drawn last still on, and at its end, without what came off before; null where all comes off alike. */
export function inTurns(step: Step): readonly [Step, Step] | null {
  const { actions, shows } = step;
  const removed = actions.flatMap((action) => (action.do === "remove" ? [action] : []));
  const begins = removed.findIndex(({ undrives }) => undrives.length > 0);
  if (begins < 1) return null;
  const [early, late] = [removed.slice(0, begins), removed.slice(begins)];
  const [before, after] = [early, late].map((all) => new Set(all.flatMap(({ parts }) => parts))) as [
    Set<string>,
    Set<string>,
  ];
  const without = (ids: readonly string[], off: ReadonlySet<string>): readonly string[] =>
    ids.filter((id) => !off.has(id));
  return [
    {
      ...step,
      actions: early,
      shows: {
        ...shows,
        fresh: without(shows.fresh, after),
        present: [...without(shows.present, after), ...after],
      },
    },
    {
      ...step,
      actions: late,
      shows: { ...shows, fresh: without(shows.fresh, before), present: without(shows.present, before) },
    },
  ];
}
