/** Promise 3: the steps have their times, one after another, and waits are kept. */
import type { Model } from "./model.ts";
import type { Step } from "./record.ts";
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
  if (timeline.lowerBound > timeline.elapsed)
    yield violation("times hold", "timeline", "is over sooner than its bound");
}

const span = ({ start, end }: Step) => ({ start: start ?? 0, end: end ?? 0 });
