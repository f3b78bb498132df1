/** How a surface is finished. Types only. */
import type { Finishing } from "./purchase.ts";

export interface FinishSchedule {
  readonly rows: readonly FinishRow[];
  /** Sentences: in which way, in the order of work. */
  readonly how: readonly string[];
  /** What no finish comes on; no sentences. */
  readonly free: readonly string[];
}

export interface FinishRow extends Finishing {
  /** Of its parts, in the order of the cut list. */
  readonly marks: readonly string[];
  readonly grits: readonly number[];
  /** Used from a tin, over all coats, as printed: "12 oz". */
  readonly amount: string;
  /** From a coat to the next, hours; and until it takes knocks, days. */
  readonly recoat: number;
  readonly cure: number;
  /** Grit between coats; null where they are not sanded. */
  readonly between: number | null;
}
