import { type Finding, whenOf } from "../finding.ts";
import { escapeText } from "./escape.ts";
import { inOrder } from "./order.ts";

/** One line each, as editors understand it: `file:line:column: error: message [rule]`. */
export const printShort = (findings: readonly Finding[], sourceName: string): string =>
  inOrder(findings)
    .map((finding) => {
      const { at, severity, message, rule } = finding;
      const when = whenOf(finding);
      const place = `${escapeText(at.file ?? sourceName)}:${at.line}:${at.column}`;
      return `${place}: ${severity}: ${escapeText(when ? `${message}, ${when}` : message)} [${rule}]\n`;
    })
    .join("");
