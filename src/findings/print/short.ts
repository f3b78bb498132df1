import type { Finding } from "../finding.ts";
import { escapeText } from "./escape.ts";
import { inOrder } from "./order.ts";

/** One line each, as editors understand it: `file:line:column: error: message [rule]`. */
export const printShort = (findings: readonly Finding[], sourceName: string): string =>
  inOrder(findings)
    .map(({ at, severity, message, rule }) => {
      const place = `${escapeText(sourceName)}:${at.line}:${at.column}`;
      return `${place}: ${severity}: ${escapeText(message)} [${rule}]\n`;
    })
    .join("");
