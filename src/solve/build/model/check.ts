/** What a check of the solved piece says of one thing. */
export interface Check {
  readonly rule: string;
  readonly subject: string;
  readonly verdict: "holds" | "warns" | "fails" | "accepted";
  /** Why the maker accepts it; only where it is accepted. */
  readonly because?: string;
  /** In `unit`. */
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
  readonly basis: string;
  /** mm; the thickness of stock from which on it holds, where it does not over the whole range. */
  readonly holdsFrom?: number;
}
