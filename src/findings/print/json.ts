import type { Finding } from "../finding.ts";
import { inOrder } from "./order.ts";

/** Findings as a JSON text for programs: every field of each, and the name of the source. */
export const printJson = (findings: readonly Finding[], sourceName: string): string =>
  `${JSON.stringify({ source: sourceName, findings: inOrder(findings).map(plain) }, null, 2)}\n`;

const plain = ({ when, ...finding }: Finding) => (when ? { ...finding, when: Object.fromEntries(when) } : finding);
