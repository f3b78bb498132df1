/** The schedule against trying every order. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calendarOf, type Job, scheduled } from "../../src/solve/build/schedule/index.ts";

const quarters = (minutes: number): number => Math.ceil(minutes / 15);

/** The soonest end over all orders in which each job begins as soon as it can. */
function byTrying(jobs: readonly Job[]): number {
  const ends: (number | undefined)[] = jobs.map(() => undefined);
  const visit = (now: number, left: number): number => {
    if (left === 0) return Math.max(...jobs.map(({ tail }, i) => (ends[i] ?? 0) + tail));
    let best = Number.POSITIVE_INFINITY;
    for (const [i, { after, minutes }] of jobs.entries()) {
      if (ends[i] !== undefined || after.some(({ job }) => ends[job] === undefined)) continue;
      const start = Math.max(now, ...after.map(({ job, lag }) => (ends[job] ?? 0) + lag));
      ends[i] = start + minutes;
      best = Math.min(best, visit(start + minutes, left - 1));
      ends[i] = undefined;
    }
    return best;
  };
  return visit(0, jobs.length);
}

const someJobs = fc.array(fc.record({ minutes: fc.integer({ min: 1, max: 60 }), tail: fc.nat(90) }), {
  minLength: 1,
  maxLength: 7,
});
const network = someJobs.chain((jobs) =>
  fc
    .array(fc.record({ a: fc.nat(jobs.length - 1), b: fc.nat(jobs.length - 1), lag: fc.nat(120) }), { maxLength: 9 })
    .map((edges) =>
      jobs.map(
        (job, i): Job => ({
          ...job,
          after: edges.flatMap(({ a, b, lag }) =>
            Math.max(a, b) === i && a !== b ? [{ job: Math.min(a, b), lag }] : [],
          ),
        }),
      ),
    ),
);

describe("the schedule", () => {
  it("is over in the quarter hour of the best order of all, and bounded below", () => {
    fc.assert(
      fc.property(network, (jobs) => {
        const found = scheduled(jobs);
        const best = byTrying(jobs);
        expect(quarters(found?.elapsed ?? 0)).toBe(quarters(best));
        expect(found?.lowerBound).toBeLessThanOrEqual(best);
        expect(quarters(found?.lowerBound ?? 0)).toBe(quarters(best));
      }),
      { numRuns: 300, seed: 7 },
    );
  });

  it("never does two things at once, and waits as long as it must", () => {
    fc.assert(
      fc.property(network, (jobs) => {
        const { order, starts } = scheduled(jobs) ?? { order: [], starts: [] };
        expect(order.toSorted((a, b) => a - b)).toEqual(jobs.map((_, i) => i));
        const end = (i: number): number => (starts[i] ?? 0) + (jobs[i]?.minutes ?? 0);
        for (const [k, i] of order.entries()) {
          if (k > 0) expect(starts[i]).toBeGreaterThanOrEqual(end(order[k - 1] ?? 0));
          for (const { job, lag } of jobs[i]?.after ?? []) expect(starts[i]).toBeGreaterThanOrEqual(end(job) + lag);
        }
      }),
      { numRuns: 200, seed: 8 },
    );
  });

  it("fills a night of drying with other work: 30 + 1440 + 60 min, the rest between", () => {
    const night: Job[] = [
      { minutes: 30, after: [], tail: 0 },
      { minutes: 60, after: [{ job: 0, lag: 1440 }], tail: 0 },
      { minutes: 200, after: [], tail: 0 },
      { minutes: 100, after: [{ job: 2, lag: 0 }], tail: 0 },
    ];
    expect(scheduled(night)).toMatchObject({ order: [0, 2, 3, 1], elapsed: 1530, lowerBound: 1530 });
  });

  // By hand: 5 h and 2 h fill the first day but for 1 h, the 3 h go to the second morning, and what waits 24 h begins at the fifth hour of it.
  it("lies over days of 8 hours: nothing that fits into a day is broken off, and nights dry", () => {
    const jobs: Job[] = [
      { minutes: 300, after: [], tail: 0 },
      { minutes: 120, after: [], tail: 0 },
      { minutes: 180, after: [], tail: 0 },
      { minutes: 60, after: [{ job: 0, lag: 1440 }], tail: 0 },
      { minutes: 600, after: [], tail: 2 * 1440 },
    ];
    const { stints, days } = calendarOf(jobs, [0, 1, 2, 3, 4]);
    expect(stints.map(({ job, day, minutes }) => [job, day, minutes])).toEqual([
      [0, 0, 300],
      [1, 0, 120],
      [2, 1, 180],
      [3, 1, 60],
      [4, 1, 120],
      [4, 2, 480],
    ]);
    expect(days).toBe(5);
  });

  // By hand: 2 h and the first coat of 1 h, 12 h of rest, the second coat of 1 h on the second morning, 24 h until it bears handling.
  it("begins a further coat when the last has dried, and what follows after all of them", () => {
    const jobs: Job[] = [
      { minutes: 240, after: [], tail: 720 + 1440, again: { count: 1, minutes: 60, rest: 720 } },
      { minutes: 30, after: [], tail: 0 },
      { minutes: 60, after: [{ job: 0, lag: 720 + 1440 }], tail: 0 },
    ];
    const { stints, days } = calendarOf(jobs, [0, 1, 2]);
    expect(stints.map(({ job, day, minutes, later = false }) => [job, day, minutes, later])).toEqual([
      [0, 0, 180, false],
      [1, 0, 30, false],
      [0, 1, 60, true],
      [2, 2, 60, false],
    ]);
    expect(days).toBe(3);
  });

  it("has no answer where jobs wait for each other", () => {
    expect(
      scheduled([
        { minutes: 1, after: [{ job: 1, lag: 0 }], tail: 0 },
        { minutes: 1, after: [{ job: 0, lag: 0 }], tail: 0 },
      ]),
    ).toBeNull();
  });
});
