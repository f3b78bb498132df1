/** What the program's exit status says. */
export const EXIT = {
  done: 0,
  /** The plan has errors. */
  errors: 1,
  /** Wrong use, or a file that cannot be read or written. */
  misuse: 2,
  /** A fault of the program. */
  fault: 70,
} as const;

export type Exit = (typeof EXIT)[keyof typeof EXIT];

/** Something about the command, not the plan, that the user can mend: told in one sentence, exit status 2. */
export class Misuse extends Error {}
