/** The actions one after another, each with the bodies that those before it made. */
import type { Action, BuildRecord, Step } from "./record.ts";

export type Body = ReadonlySet<string>;

export interface Moment {
  readonly step: Step;
  readonly action: Action;
  /** Bodies before the action. */
  readonly bodies: readonly Body[];
  /** Bodies when the step is over. */
  readonly later: readonly Body[];
}

export interface Replay {
  readonly moments: readonly Moment[];
  readonly end: readonly Body[];
}

export const bodyOf = (bodies: readonly Body[], part: string | undefined): Body | undefined =>
  bodies.find((body) => part !== undefined && body.has(part));

/** Whether all the parts are in one body. */
export const together = (bodies: readonly Body[], parts: readonly string[]): boolean =>
  bodies.some((body) => parts.every((part) => body.has(part)));

export function replayed(record: BuildRecord): Replay {
  let bodies: readonly Body[] = [];
  const moments = record.steps.flatMap((step) => {
    const states = step.actions.map((action) => {
      const before = bodies;
      bodies = after(before, action);
      return { step, action, bodies: before };
    });
    const later = bodies;
    return states.map((state) => ({ ...state, later }));
  });
  return { moments, end: bodies };
}

function after(bodies: readonly Body[], action: Action): readonly Body[] {
  if (action.do === "add") {
    const touched = bodies.filter((body) => [...action.parts, ...action.to].some((part) => body.has(part)));
    const whole = new Set([...touched.flatMap((body) => [...body]), ...action.parts]);
    return [...bodies.filter((body) => !touched.includes(body)), whole];
  }
  if (action.do === "remove") {
    const gone = new Set(action.parts);
    const left = bodies.map((body) => new Set([...body].filter((part) => !gone.has(part))));
    return [...left, gone].filter((body) => body.size > 0);
  }
  return bodies;
}
