/** Promise 0: what the checks say agrees with what was found, and what is accepted has a reason. */
import type { Model } from "./model.ts";
import { type Violations, violation } from "./violation.ts";

export function* verdicts({ record }: Model): Violations {
  const found = new Set(record.findings.map(({ rule }) => rule));
  for (const { rule, subject, verdict, because } of record.checks) {
    if ((verdict === "accepted") !== (because !== null && because !== ""))
      yield violation("what is accepted has a reason", subject, `${rule} is ${verdict}, for the reason ${because}`);
    if ((verdict === "warns" || verdict === "fails") && !found.has(rule))
      yield violation("a verdict has its finding", subject, `${rule} ${verdict}, and no finding says so`);
  }
}
