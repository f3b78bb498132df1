/** Work for one pair of hands, and the waits between. Types only. Minutes. */

export interface Job {
  readonly minutes: number;
  /** What must be over before it, and how long before it. Jobs by their places. */
  readonly after: readonly { readonly job: number; readonly lag: number }[];
  /** What still dries when it is over, whatever follows. */
  readonly tail: number;
  /** What of it is done again later, as further coats are: how often, how long each takes, and the rest before each. Lags and the tail hold those rests. */
  readonly again?: { readonly count: number; readonly minutes: number; readonly rest: number };
}

export interface Schedule {
  /** Places of the jobs, in the order in which they are done. */
  readonly order: readonly number[];
  /** By place of the job. */
  readonly starts: readonly number[];
  /** Until the last job is over and dry. */
  readonly elapsed: number;
  /** No order of the jobs is over sooner. */
  readonly lowerBound: number;
}
