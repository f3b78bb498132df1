/** Promise 3: the steps have their times, one after another, and waits are kept. */
import type { Model } from "./model.ts";
import type { BuildRecord, Step } from "./record.ts";
import { type Violations, violation } from "./violation.ts";

export function* times({ record: { steps, timeline } }: Model): Violations {
  const timed = steps.flatMap((step) => (step.start === null || step.end === null ? [] : [{ ...step, ...span(step) }]));
  if (timed.length === 0) return;
  const fault = (step: Step, why: string) => violation("times hold", `step ${step.number}`, why);
  let free = 0;
  for (const step of timed) {
    if (step.end - step.start !== step.bench) yield fault(step, `takes ${step.end - step.start}, not ${step.bench}`);
    if (step.start < free) yield fault(step, "begins while another is done");
    free = step.end;
    for (const before of timed.filter(({ number }) => step.after.includes(number)))
      if (step.start < before.end) yield fault(step, `begins before step ${before.number} is over`);
    for (const before of timed.filter(({ number }) => step.afterWait.includes(number))) {
      const least = Math.min(...before.waits.map(({ minutes }) => minutes));
      if (!(step.start >= before.end + least)) yield fault(step, `does not wait for step ${before.number}`);
    }
  }
  const bench = timed.reduce((so, step) => so + step.bench, 0);
  const over = Math.max(...timed.map(({ end, waits }) => end + Math.max(0, ...waits.map(({ minutes }) => minutes))));
  if (timeline.bench !== bench || timeline.elapsed !== over)
    yield violation("times hold", "timeline", `${timeline.bench} and ${timeline.elapsed}, not ${bench} and ${over}`);
  yield* inDays(timeline, timed.at(-1)?.number ?? 0);
  if (timeline.lowerBound > timeline.elapsed)
    yield violation("times hold", "timeline", "is over sooner than its bound");
}

/** Day after day, in the order of the steps, all of the work, none of it at night; and no sooner than without nights. */
function* inDays({ bench, elapsed, hoursADay, days }: BuildRecord["timeline"], count: number): Violations {
  const fault = (why: string) => violation("times hold", "timeline", why);
  if (days.reduce((so, day) => so + day.bench, 0) !== bench) yield fault("its days do not hold all of the work");
  if (days.some((day) => day.bench > hoursADay * 60)) yield fault("a day is longer than it says");
  if (days.some(({ first }, i) => first !== (days[i - 1]?.last ?? 0) + 1)) yield fault("days are left out");
  const numbers = days.flatMap(({ steps }) => steps);
  if (numbers.some((n, i) => n < (numbers[i - 1] ?? 1)) || numbers.at(-1) !== count)
    yield fault("its days do not follow the steps");
  if ((days.at(-1)?.last ?? 0) * 24 * 60 < elapsed) yield fault("is over sooner by days than without nights");
}

const span = ({ start, end }: Step) => ({ start: start ?? 0, end: end ?? 0 });
