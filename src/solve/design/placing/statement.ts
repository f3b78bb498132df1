import type { Span } from "../../../findings/span.ts";
import type { Length } from "../../../units/length.ts";
import type { Triple } from "../space.ts";

/** What a statement fixes in its direction. Two different ones place a part in that direction. */
export type Role = "low" | "high" | "extent" | "centre";

/** One thing that is known about a part in one direction. */
export interface Statement {
  readonly role: Role;
  /** The source key, or the stock, that says it. */
  readonly key: string;
  readonly at: Span;
  /** Worked out when it is needed; null when that failed and has been reported. */
  readonly value: () => Length | null;
}

export type Statements = Triple<readonly Statement[]>;

/** The key of what the boards of a stock say. */
export const STOCK_WIDTH = "the stock's width";

export const rolesOf = (statements: readonly Statement[]): ReadonlySet<Role> => new Set(statements.map((s) => s.role));
