/** An order of work laid over working days: nobody stands at the bench day and night. */
import type { Job } from "./job.ts";

/** Minutes at the bench in a day (common practice, no source), and in the whole of it. */
export const BENCH_DAY = 8 * 60;
const DAY = 24 * 60;

/** Work on one job in one day, counted from 0, and where in the day it begins; minutes. */
export interface Stint {
  readonly job: number;
  readonly day: number;
  readonly minutes: number;
  /** A further coat of a job that was begun before. */
  readonly later?: true;
}

export interface Calendar {
  readonly stints: readonly Stint[];
  /** By place of the job: minutes from the beginning, nights included; of what is done again, less the rests that its lags hold. */
  readonly ends: readonly number[];
  /** Until the last job is over and dry. */
  readonly days: number;
}

/** What is done again, and when it can be. */
interface Open {
  readonly job: number;
  readonly left: number;
  readonly ready: number;
}

/**
 * Each job of an order as soon as it can begin; what is done again, as soon as it has rested. None is broken off that fits into a day: what does not fit
 * today begins tomorrow.
 */
export function calendarOf(jobs: readonly Job[], order: readonly number[]): Calendar {
  const ends: number[] = jobs.map(() => 0);
  const stints: Stint[] = [];
  const open: Open[] = [];
  let now = 0;
  const work = (job: number, minutes: number, soonest: number, later: boolean): void => {
    now = begin(Math.max(now, soonest), minutes);
    for (let left = minutes; left > 0; ) {
      if (now % DAY >= BENCH_DAY) now = morningAfter(now);
      const part = Math.min(left, BENCH_DAY - (now % DAY));
      stints.push({ job, day: Math.floor(now / DAY), minutes: part, ...(later && { later }) });
      now += part;
      left -= part;
    }
  };
  /** The rest of a job that has `left` to be done again. */
  const rests = (job: number, left: number): void => {
    const { count, rest } = (jobs[job] as Job).again ?? { count: 0, rest: 0 };
    ends[job] = now - (count - left) * rest;
    if (left > 0) open.push({ job, left, ready: now + rest });
  };
  const again = (): void => {
    const { job, left, ready } = open.shift() as Open;
    work(job, (jobs[job] as Job).again?.minutes ?? 0, ready, true);
    rests(job, left - 1);
    open.sort((a, b) => a.ready - b.ready);
  };
  for (const i of order) {
    const { minutes, after, again: more } = jobs[i] as Job;
    const first = minutes - (more ? more.count * more.minutes : 0);
    const soonest = (): number => after.reduce((so, { job, lag }) => Math.max(so, (ends[job] ?? 0) + lag), now);
    const waits = ({ job, ready }: Open): boolean =>
      ready <= begin(soonest(), first) || after.some((each) => each.job === job);
    while (open.some(waits)) again();
    work(i, first, soonest(), false);
    rests(i, more?.count ?? 0);
    open.sort((a, b) => a.ready - b.ready);
  }
  while (open.length > 0) again();
  const over = jobs.reduce((so, { tail }, i) => Math.max(so, (ends[i] ?? 0) + tail), 0);
  return { stints, ends, days: Math.ceil(over / DAY) };
}

const morningAfter = (at: number): number => DAY * (Math.floor(at / DAY) + 1);

/** Within working hours, and in the morning where the rest of the day is too short. */
function begin(soonest: number, minutes: number): number {
  const hour = soonest % DAY;
  const fits = hour + minutes <= BENCH_DAY || (hour < BENCH_DAY && minutes > BENCH_DAY);
  return fits ? soonest : morningAfter(soonest);
}
