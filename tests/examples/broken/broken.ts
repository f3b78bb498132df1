/** One mistake in the boot bench, what is said of it, and what comes of following that to the letter. */
export interface Broken {
  readonly what: string;
  /** The mistake: this text of the boot bench becomes that. */
  readonly from: string;
  readonly to: string;
  readonly rule: string;
  /** Text of the line that the finding must point at (in the broken source). */
  readonly line: string;
  /** What the help must say. */
  readonly help: string;
  /** The help followed to the letter: this text of the broken source becomes that. */
  readonly mend: readonly [string, string];
}
