import type { Finding, Severity } from "../finding.ts";
import { inOrder } from "./order.ts";

const MANY: Readonly<Record<Severity, string>> = { error: "errors", warning: "warnings", advice: "pieces of advice" };
const ONE: Readonly<Record<Severity, string>> = { error: "error", warning: "warning", advice: "piece of advice" };

/** "2 errors, 1 warning"; the empty text where nothing was found. */
export const countFindings = (findings: readonly Finding[]): string =>
  (["error", "warning", "advice"] as const)
    .map((severity) => ({ severity, count: findings.filter((finding) => finding.severity === severity).length }))
    .filter(({ count }) => count > 0)
    .map(({ severity, count }) => `${count} ${count === 1 ? ONE[severity] : MANY[severity]}`)
    .join(", ");

/**
 * The last line: how many there are, what came of it (a sentence such as "No plan was written."), and the way on.
 * The empty text where nothing was found and nothing is to be said.
 */
export function summary(findings: readonly Finding[], result = ""): string {
  const first = inOrder(findings)[0];
  const count = countFindings(findings);
  const parts = [
    ...(count === "" ? [] : [`${count}.`]),
    ...(result === "" ? [] : [result]),
    ...(first === undefined ? [] : [`\`boardwright explain ${first.rule}\` tells more.`]),
  ];
  return parts.length === 0 ? "" : `${parts.join(" ")}\n`;
}
