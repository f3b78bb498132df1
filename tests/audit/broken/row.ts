/** Records with one thing wrong, and all that the auditor has to say of each. */
import type { Action, BuildRecord } from "../record.ts";
import type { Check } from "../violation.ts";

export type Row = readonly [
  what: string,
  sample: () => BuildRecord,
  spoil: (record: BuildRecord) => void,
  ...found: Check[],
];

/** The thing called so; a row that looks for what is not there is itself wrong. */
export function the<T extends { id: string }>(list: readonly T[], id: string): T {
  return at(
    list.filter((item) => item.id === id),
    0,
  );
}

export function at<T>(list: readonly T[], i: number): T {
  const item = list.at(i);
  if (item === undefined) throw new RangeError(`no item ${i}`);
  return item;
}

/** The n-th action of a kind, from 0 on. */
export function action<K extends Action["do"]>(record: BuildRecord, kind: K, n = 0): Extract<Action, { do: K }> {
  const all = record.steps.flatMap((step) => step.actions).filter((a) => a.do === kind);
  return at(all, n) as Extract<Action, { do: K }>;
}

/** Takes an action out and returns it. */
export function without(record: BuildRecord, gone: Action): Action {
  for (const { actions } of record.steps) if (actions.includes(gone)) actions.splice(actions.indexOf(gone), 1);
  return gone;
}
