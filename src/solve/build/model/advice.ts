/** What a plan says besides its steps. Types only. */

/** A paragraph, and the few words that it is found by: "Lifting.". */
export interface Advice {
  readonly head: string;
  readonly text: string;
}

/** Each only with what this piece gives reason for. */
export interface AdviceOn {
  /** Before the first cut. */
  readonly cautions: readonly Advice[];
  /** From the workshop to its place, and afterwards. */
  readonly room: readonly Advice[];
  /** What may not fit, and what to do then. */
  readonly cures: readonly Advice[];
}
