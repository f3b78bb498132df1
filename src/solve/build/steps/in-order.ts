/** The steps in the order that fills the waits, each with its time. */
import type { Step, Timeline } from "../../build.ts";
import { BENCH_DAY, type Calendar, calendarOf, scheduled } from "../schedule/index.ts";
import type { StepDraft } from "./draft.ts";
import type { Before } from "./precedence.ts";
import { clampsFrom } from "./shared-clamps.ts";

/** A step without its number, with the places (in the new order) of what comes before it. */
export interface Timed {
  readonly draft: StepDraft;
  readonly after: readonly number[];
  /** Those of `after` of which a wait has to be over as well. */
  readonly afterWait: readonly number[];
  readonly start: number;
  readonly end: number;
}

/** `null` where steps wait for each other. */
export function inOrder(
  estimated: readonly StepDraft[],
  before: readonly Before[],
): { readonly steps: readonly Timed[]; readonly timeline: Omit<Timeline, "days">; readonly calendar: Calendar } | null {
  const drafts = estimated.map(asTold);
  const own = drafts.map((_, i) => before.filter(({ next }) => next === i));
  const jobs = drafts.map(({ bench, waits, again }, i) => ({
    ...{ minutes: bench, ...(again && { again }) },
    after: (own[i] ?? []).map(({ first, lag }) => ({ job: first, lag })),
    tail: waits.reduce((so, { minutes }) => Math.max(so, minutes), 0),
  }));
  const found = scheduled(jobs);
  if (!found) return null;
  const place = new Map(found.order.map((job, at) => [job, at]));
  const steps = found.order.map((job): Timed => {
    const [draft, start] = [drafts[job] as StepDraft, found.starts[job] ?? 0];
    return {
      ...{ draft, start, end: start + draft.bench },
      after: placesOf(direct(own, job), place),
      afterWait: placesOf(waited(own, job), place),
    };
  });
  const bench = drafts.reduce((so, draft) => so + draft.bench, 0);
  // Who has one set of clamps waits for it: that is in the days.
  const clamps = clampsFrom(found.order.map((job) => drafts[job] as StepDraft));
  const held = jobs.map((job, i) => {
    const busy = clamps[place.get(i) ?? -1];
    const from = busy ? found.order[busy.place] : undefined;
    return busy && from !== undefined ? { ...job, after: [...job.after, { job: from, lag: busy.minutes }] } : job;
  });
  const { stints, ends, days } = calendarOf(held, found.order);
  return {
    steps,
    timeline: { bench, elapsed: found.elapsed, lowerBound: found.lowerBound, hoursADay: BENCH_DAY / 60 },
    // By the places of the steps in the order of work.
    calendar: {
      stints: stints.map((stint) => ({ ...stint, job: place.get(stint.job) ?? 0 })),
      ends: found.order.map((job) => ends[job] ?? 0),
      days,
    },
  };
}

/** Nobody can tell it more closely. Minutes. */
const EVEN = { short: 5, long: 10, from: 60 };

/** The times of a step as they are printed, so that those of the days and of the whole are their sums. */
function asTold(draft: StepDraft): StepDraft {
  const { bench, again } = draft;
  const even = (minutes: number, mark: number): number => mark * Math.max(1, Math.round(minutes / mark));
  if (bench === 0) return draft;
  const coat = again && { ...again, minutes: even(again.minutes, EVEN.short) };
  const least = coat ? coat.count * coat.minutes + EVEN.short : 0;
  return {
    ...draft,
    bench: Math.max(least, even(bench, bench < EVEN.from ? EVEN.short : EVEN.long)),
    ...(coat && { again: coat }),
  };
}

const placesOf = (jobs: readonly number[], place: ReadonlyMap<number, number>): Step["after"] =>
  jobs.map((job) => place.get(job) ?? 0).toSorted((a, b) => a - b);

/** What comes right before a step: what is before that goes without saying. */
function direct(own: readonly (readonly Before[])[], job: number): readonly number[] {
  const all = (own[job] ?? []).map(({ first }) => first);
  return all.filter((a) => !all.some((b) => own[b]?.some(({ first }) => first === a)));
}

/** Of what waits have to be over: those that another step has not waited for already. */
function waited(own: readonly (readonly Before[])[], job: number): readonly number[] {
  const all = own[job] ?? [];
  const already = ({ first, lag }: Before): boolean =>
    all.some((between) => own[between.first]?.some((before) => before.first === first && before.lag >= lag));
  return all.filter((before) => before.lag > 0 && !already(before)).map(({ first }) => first);
}
