import type { Finding } from "../../../findings/finding.ts";
import { errorNotAccepted } from "../../../findings/rules/error-not-accepted.ts";
import { nothingToAccept } from "../../../findings/rules/nothing-to-accept.ts";
import { nearest } from "../../../findings/suggest.ts";
import type { Accepted } from "../../design.ts";
import type { Verdict } from "./check.ts";

/**
 * Verdicts after the maker's `allow`: what is accepted keeps its value and limit, carries the reason, and is no finding any more. Errors are
 * not accepted; and what accepts nothing is told.
 */
export function accept(
  verdicts: readonly Verdict[],
  accepted: readonly Accepted[],
): { readonly verdicts: readonly Verdict[]; readonly findings: readonly Finding[] } {
  const about = ({ rule, of }: Accepted, { check, finding }: Verdict): boolean =>
    finding?.rule === rule && (of === null || of.includes(check.subject));
  const isError = ({ finding }: Verdict): boolean => finding?.severity === "error";
  const changed = verdicts.map((verdict): Verdict => {
    const reason = isError(verdict) ? undefined : accepted.find((each) => about(each, verdict));
    return reason ? { check: { ...verdict.check, verdict: "accepted", because: reason.because } } : verdict;
  });
  const findings = accepted.flatMap((each): readonly Finding[] => {
    const matching = verdicts.filter((verdict) => about(each, verdict));
    if (matching.some(isError)) return [errorNotAccepted(each.at, { finding: each.rule })];
    if (matching.length > 0) return [];
    const found = [...new Set(verdicts.flatMap(({ finding }) => finding?.rule ?? []))];
    const of = each.of === null ? null : each.of.join(", ");
    return [nothingToAccept(each.at, { finding: each.rule, of, near: nearest(each.rule, found) })];
  });
  return { verdicts: changed, findings };
}
