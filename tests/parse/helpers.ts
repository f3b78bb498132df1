import { expect } from "vitest";
import type { Finding } from "../../src/findings/finding.ts";
import type { Outcome } from "../../src/findings/outcome.ts";
import type { Draft } from "../../src/parse/draft.ts";
import { parse } from "../../src/parse/index.ts";

export const parseText = (text: string): Outcome<Draft> =>
  parse({ name: "plan.yaml", bytes: new TextEncoder().encode(text) });

/** The Draft of a source that has nothing wrong. */
export function draftOf(text: string): Draft {
  const { value, findings } = parseText(text);
  expect(findings.map(say)).toEqual([]);
  if (value === undefined) throw new Error("no draft");
  return value;
}

export const say = ({ at, rule, message }: Finding): string => `${at.line}:${at.column} ${rule}: ${message}`;
/** What a finding points at: its place and the text there. */
export const point = ({ at, rule }: Finding, text: string): string =>
  `${at.line}:${at.column} ${rule} ${JSON.stringify(text.slice(at.start, at.end))}`;
export const rulesOf = (text: string): string[] => parseText(text).findings.map(({ rule }) => rule);

/** The same without places, and with `key` spans left out: what a source means. */
export const meaning = (value: unknown): unknown => {
  if (value instanceof Map) return [...value].map(([key, each]) => [key, meaning(each)]);
  if (Array.isArray(value)) return value.map(meaning);
  if (typeof value === "bigint") return `${value}n`;
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).filter(
    ([key, each]) => key !== "at" && !(key === "key" && typeof each === "object"),
  );
  return Object.fromEntries(entries.map(([key, each]) => [key, meaning(each)]));
};

/** A small plan with something of its own. */
export const planWith = ({
  top = "",
  stock = "pine: { sold as: 1x8 }",
  piece = "shelf: { made of: pine }",
  joints = "",
}) =>
  [
    "plan: 1\ntitle: Test",
    top,
    "stock:",
    stock.replace(/^/gm, "  "),
    "piece:",
    piece.replace(/^/gm, "  "),
    ...(joints === "" ? [] : ["joints:", joints.replace(/^/gm, "  ")]),
    "",
  ].join("\n");

/** What a part with these settings comes to, without places. */
export function partWith(lines: string): unknown {
  const piece = `shelf:\n  made of: pine\n${lines.replace(/^/gm, "  ")}`;
  return (meaning(draftOf(planWith({ piece })).piece) as unknown[])[0];
}
/** A bare number in a Draft, without its place. */
export const number = (n: number, d = 1) => ({ kind: "number", value: { n: `${n}n`, d: `${d}n` } });
export const named = (...path: string[]) => ({ kind: "name", path });
