import type { BuildRecord } from "../record.ts";
import { frame } from "./frame.ts";

/** The frame with two coats on all of it in its last step, and with times. */
export function finished(): BuildRecord {
  const record = frame();
  const parts = record.parts.map(({ id }) => id);
  record.steps.at(-1)?.actions.push({ do: "finish", parts, coat: 1 }, { do: "finish", parts, coat: 2 });
  let now = 0;
  for (const step of record.steps) {
    Object.assign(step, { start: now, bench: 20, end: now + 20, waits: [{ for: "glue", minutes: 60 }] });
    now += 100;
  }
  for (const step of record.steps.slice(2)) step.afterWait = [2];
  record.timeline = {
    bench: 60,
    elapsed: 280,
    lowerBound: 280,
    hoursADay: 8,
    days: [{ first: 1, last: 1, steps: [1, 3], bench: 60, dries: [] }],
  };
  return record;
}
