/** The order of work that fills the waits. */
import { boundOf, bySoonest, type Ends, headsOf } from "./bound.ts";
import type { Job, Schedule } from "./job.ts";
import { type Network, networkOf } from "./network.ts";

/** Nobody times a workshop more finely. Minutes. */
const QUARTER = 15;
const quarterUp = (minutes: number): number => QUARTER * Math.ceil(minutes / QUARTER);
/** Places looked at before a good order is taken that may not be the best. */
const EFFORT = 20_000;

/**
 * The order that is over soonest, in quarter hours; of those the one in which hands are idle last, and else the order given. Exact unless
 * the effort runs out: then `lowerBound` tells how far off it may be. `null` where the jobs go round in a circle.
 */
export function scheduled(jobs: readonly Job[]): Schedule | null {
  const network = networkOf(jobs);
  if (!network) return null;
  const none: Ends = jobs.map(() => undefined);
  const bound = boundOf(network, none, headsOf(network, none, 0));
  const { tails } = network;
  const known = [
    inOrder(network, (a, b) => a - b),
    inOrder(network, (a, b) => (tails[b] ?? 0) - (tails[a] ?? 0) || a - b),
  ];
  const best = known.reduce((so, one) => (one.elapsed < so.elapsed ? one : so));
  const effort = { left: EFFORT };
  let least = bound;
  for (let limit = quarterUp(bound); limit <= quarterUp(best.elapsed); limit += QUARTER) {
    const found = within(network, limit, effort);
    if (found) return { ...found, lowerBound: Math.min(least, found.elapsed) };
    if (effort.left <= 0) break;
    least = limit + 1;
  }
  return { ...best, lowerBound: Math.min(least, best.elapsed) };
}

type Found = Omit<Schedule, "lowerBound">;

interface State {
  readonly order: readonly number[];
  readonly ends: Ends;
  readonly now: number;
}

const start = ({ jobs }: Network): State => ({ order: [], ends: jobs.map(() => undefined), now: 0 });

const put = ({ order, ends, now }: State, job: number, heads: readonly number[], minutes: number): State => {
  const end = Math.max(now, heads[job] ?? 0) + minutes;
  return { order: [...order, job], ends: ends.with(job, end), now: end };
};

const openJobs = ({ jobs }: Network, ends: Ends): number[] =>
  jobs.flatMap(({ after }, i) =>
    ends[i] === undefined && after.every(({ job }) => ends[job] !== undefined) ? [i] : [],
  );

function foundOf({ jobs }: Network, { order, ends }: State): Found {
  const starts = jobs.map(({ minutes }, i) => (ends[i] ?? 0) - minutes);
  return { order, starts, elapsed: jobs.reduce((so, { tail }, i) => Math.max(so, (ends[i] ?? 0) + tail), 0) };
}

/** Always something that can begin first, and of those the first by `prefer`. */
function inOrder(network: Network, prefer: (a: number, b: number) => number): Found {
  let state = start(network);
  while (state.order.length < network.jobs.length) {
    const heads = headsOf(network, state.ends, state.now);
    const [next = 0] = openJobs(network, state.ends).toSorted(
      (a, b) => (heads[a] ?? 0) - (heads[b] ?? 0) || prefer(a, b),
    );
    state = put(state, next, heads, network.jobs[next]?.minutes ?? 0);
  }
  return foundOf(network, state);
}

/** The first order by (start, place) that is over within the limit; null where there is none, or the effort runs out. */
function within(network: Network, limit: number, effort: { left: number }): Found | null {
  /** By what is done: when the rest could have begun where it came to nothing. */
  const dead = new Map<string, (readonly number[])[]>();
  const visit = (state: State): State | null => {
    if (state.order.length === network.jobs.length) return state;
    if (effort.left-- <= 0) return null;
    const heads = headsOf(network, state.ends, state.now);
    if (boundOf(network, state.ends, heads, limit) > limit) return null;
    const rest = network.sorted.filter((i) => state.ends[i] === undefined);
    const key = String.fromCharCode(...rest);
    const times = rest.map((i) => heads[i] ?? 0);
    const failed = dead.get(key) ?? [];
    if (failed.some((sooner) => sooner.every((time, i) => time <= (times[i] ?? 0)))) return null;
    const open = bySoonest(openJobs(network, state.ends), heads);
    const minutes = (i: number): number => network.jobs[i]?.minutes ?? 0;
    const idle = Math.min(...open.map((i) => (heads[i] ?? 0) + minutes(i)));
    for (const job of open) {
      // Something else could be done in the time before it.
      if ((heads[job] ?? 0) >= idle && minutes(job) > 0) continue;
      const found = visit(put(state, job, heads, minutes(job)));
      if (found) return found;
      if (effort.left <= 0) return null;
    }
    dead.set(key, [...failed, times]);
    return null;
  };
  const found = visit(start(network));
  return found && foundOf(network, found);
}
