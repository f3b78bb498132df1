import type { Finding } from "./finding.ts";

/** What a phase returns: a value if there is one, and what was found on the way. */
export interface Outcome<T> {
  readonly value?: T;
  readonly findings: readonly Finding[];
}

export const outcome = <T>(value: T, findings: readonly Finding[] = []): Outcome<T> => ({ value, findings });
export const failed = (findings: readonly Finding[]): Outcome<never> => ({ findings });
export const hasErrors = (findings: readonly Finding[]): boolean => findings.some((f) => f.severity === "error");

/**
 * Runs the next phase if the one before gave a value, and joins the findings.
 * (Not called `then`: a module that exports a `then` cannot be imported on demand, since `await import()` takes it for a promise.)
 */
export function andThen<A, B>(first: Outcome<A>, next: (value: A) => Outcome<B>): Outcome<B> {
  if (first.value === undefined) return { findings: first.findings };
  const second = next(first.value);
  return { ...second, findings: [...first.findings, ...second.findings] };
}
