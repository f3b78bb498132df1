import type { Finding, Severity } from "../finding.ts";

const RANK: Readonly<Record<Severity, number>> = { error: 0, warning: 1, advice: 2 };

/** Errors first, then warnings, then advice, each in the order of the source. */
export function inOrder(findings: readonly Finding[]): readonly Finding[] {
  return findings
    .map((finding, index) => ({ finding, index }))
    .sort(
      (a, b) =>
        RANK[a.finding.severity] - RANK[b.finding.severity] ||
        a.finding.at.start - b.finding.at.start ||
        a.index - b.index,
    )
    .map(({ finding }) => finding);
}
