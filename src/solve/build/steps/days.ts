/** The work day by day: which steps, how long, and what dries or rests when the day is over. */
import type { Step, WorkDay } from "../../build.ts";
import { BENCH_DAY, type Calendar } from "../schedule/index.ts";

const DAY = 24 * 60;
/** Shorter waits are over within a day of work. Minutes. */
const OVERNIGHT = 8 * 60;

/** `calendar` has the steps by their place in the order of work. Days without work are told together. */
export function daysOf(steps: readonly Step[], calendar: Calendar): readonly WorkDay[] {
  const { stints, days } = calendar;
  const rows: WorkDay[] = [];
  for (let day = 0; day < days; day++) {
    const own = stints.filter((stint) => stint.day === day);
    const dries = driesIn(steps, calendar, day, own.length > 0 ? BENCH_DAY : 0);
    const before = rows.at(-1);
    if (
      own.length === 0 &&
      before &&
      before.steps === null &&
      before.again.length === 0 &&
      before.dries.join() === dries.join()
    ) {
      rows[rows.length - 1] = { ...before, last: day + 1 };
      continue;
    }
    const numbersOf = (some: typeof own): readonly number[] =>
      [...new Set(some.map(({ job }) => steps[job]?.number ?? 0))].sort((a, b) => a - b);
    // A further coat does not take the days back to its step.
    const begun = rows.findLast((row) => row.steps !== null)?.steps?.[1] ?? 0;
    const numbers = numbersOf(own.filter(({ later }) => !later)).map((number) => Math.max(begun, number));
    const [first, last] = [numbers[0], numbers.at(-1)];
    rows.push({
      ...{ first: day + 1, last: day + 1 },
      steps: first === undefined || last === undefined ? null : [first, last],
      again: numbersOf(own.filter(({ later }) => later)),
      bench: own.reduce((so, { minutes }) => so + minutes, 0),
      dries,
    });
  }
  return rows;
}

/**
 * What is begun and not over when the work of a day ends, or on a day without work when that begins; long waits only. Of what has several coats the first
 * is on. `worked`: minutes.
 */
const driesIn = (
  steps: readonly Step[],
  { stints, ends }: Calendar,
  day: number,
  worked: number,
): readonly string[] => [
  ...new Set(
    steps.flatMap(({ waits }, i) => {
      const begun = stints.findLast(({ job, later }) => job === i && !later);
      if (begun === undefined || begun.day > day) return [];
      return waits.flatMap(({ for: what, minutes }) =>
        minutes >= OVERNIGHT && (ends[i] ?? 0) + minutes > day * DAY + worked ? [what] : [],
      );
    }),
  ),
];
