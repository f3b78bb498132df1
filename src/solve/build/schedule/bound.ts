/** How soon everything can be over, when some of the jobs are done. */
import type { Job } from "./job.ts";
import type { Network } from "./network.ts";

/** When each job is over; absent: it is not done. */
export type Ends = readonly (number | undefined)[];

/** The soonest that each job that is not done could begin, hands being free from `now` on. */
export function headsOf({ jobs, sorted }: Network, ends: Ends, now: number): readonly number[] {
  const heads = jobs.map(() => now);
  // Asked for every order that is begun: plain loops.
  for (let k = 0; k < sorted.length; k += 1) {
    const i = sorted[k] as number;
    if (ends[i] !== undefined) continue;
    const { after } = jobs[i] as Job;
    let head = now;
    for (let n = 0; n < after.length; n += 1) {
      const { job, lag } = after[n] as Job["after"][number];
      const over = ends[job] ?? (heads[job] as number) + (jobs[job] as Job).minutes;
      if (over + lag > head) head = over + lag;
    }
    heads[i] = head;
  }
  return heads;
}

/**
 * The schedule in which work may be interrupted, that with the longest tail always first; no schedule without interruptions is over
 * sooner. (J. R. Jackson's rule with preemption: J. Carlier, European J. Oper. Res. 11 (1982) 42–47.) Stops early, with some value above
 * `enough`, when that is passed.
 */
export function boundOf(
  { jobs, tails, rank }: Network,
  ends: Ends,
  heads: readonly number[],
  enough = Number.POSITIVE_INFINITY,
): number {
  const waiting: number[] = [];
  let over = 0;
  for (let i = 0; i < jobs.length; i += 1) {
    const end = ends[i];
    if (end === undefined) waiting.push(i);
    else over = Math.max(over, end + (jobs[i] as Job).tail);
  }
  bySoonest(waiting, heads);
  const left = jobs.map(({ minutes }) => minutes);
  let now = 0;
  let begun = 0;
  /** The longest tail last. */
  const ready: number[] = [];
  while (begun < waiting.length || ready.length > 0) {
    if (ready.length === 0) now = Math.max(now, heads[waiting[begun] ?? 0] ?? 0);
    for (let next = waiting[begun]; next !== undefined && (heads[next] ?? 0) <= now; next = waiting[begun]) {
      insert(ready, next, rank);
      begun += 1;
    }
    const job = ready[ready.length - 1] as number;
    const until = Math.min(now + (left[job] ?? 0), heads[waiting[begun] ?? -1] ?? Number.POSITIVE_INFINITY);
    left[job] = (left[job] ?? 0) - (until - now);
    now = until;
    if ((left[job] ?? 0) > 0) continue;
    ready.pop();
    over = Math.max(over, now + (tails[job] ?? 0));
    if (over > enough) return over;
  }
  return over;
}

/** Sorted by head, then by place, in place: jobs come nearly in order, so that each moves but little. */
export function bySoonest(jobs: number[], heads: readonly number[]): number[] {
  for (let i = 1; i < jobs.length; i += 1) {
    const job = jobs[i] as number;
    const head = heads[job] as number;
    let at = i;
    for (; at > 0; at -= 1) {
      const before = jobs[at - 1] as number;
      const other = heads[before] as number;
      if (other < head || (other === head && before < job)) break;
      jobs[at] = before;
    }
    jobs[at] = job;
  }
  return jobs;
}

/** Puts a job into a list in which the first by rank is the last. */
function insert(jobs: number[], job: number, rank: readonly number[]): void {
  const own = rank[job] as number;
  let at = jobs.length;
  for (; at > 0 && (rank[jobs[at - 1] as number] as number) < own; at -= 1) jobs[at] = jobs[at - 1] as number;
  jobs[at] = job;
}
