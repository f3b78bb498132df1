/** Steps are counted, not timed, so that every machine stops at the same plan. */
export interface Steps {
  left: number;
}
