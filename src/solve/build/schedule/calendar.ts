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
}

export interface Calendar {
  readonly stints: readonly Stint[];
  /** By place of the job: minutes from the beginning, nights included. */
  readonly ends: readonly number[];
  /** Until the last job is over and dry. */
  readonly days: number;
}

/** Each job of an order as soon as it can begin. None is broken off that fits into a day: what does not fit today begins tomorrow. */
export function calendarOf(jobs: readonly Job[], order: readonly number[]): Calendar {
  const ends: number[] = jobs.map(() => 0);
  const stints: Stint[] = [];
  let now = 0;
  for (const i of order) {
    const { minutes, after } = jobs[i] as Job;
    now = begin(
      after.reduce((so, { job, lag }) => Math.max(so, (ends[job] ?? 0) + lag), now),
      minutes,
    );
    for (let left = minutes; left > 0; ) {
      if (now % DAY >= BENCH_DAY) now = morningAfter(now);
      const part = Math.min(left, BENCH_DAY - (now % DAY));
      stints.push({ job: i, day: Math.floor(now / DAY), minutes: part });
      now += part;
      left -= part;
    }
    ends[i] = now;
  }
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
