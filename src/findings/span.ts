/** A piece of the source: character offsets from its start, and the line and column (both from 1) where it begins. */
export interface Span {
  readonly start: number;
  readonly end: number;
  readonly line: number;
  readonly column: number;
  /** The included file in which it stands; absent for the plan itself. */
  readonly file?: string;
}

/** A value together with the place in the source that gave it. */
export interface Located<T> {
  readonly value: T;
  readonly at: Span;
}
