import { expect, test } from "vitest";
import { escapeText, printJson, printShort } from "../../../src/findings/print/index.ts";
import { parse } from "../../../src/parse/index.ts";

const findingsOf = (text: string) => parse({ name: "b.yaml", bytes: new TextEncoder().encode(text) }).findings;

test("the short form is one line each, as editors read it", () => {
  const findings = findingsOf(
    "plan: 1\ntitle: B\nunits: furlong\nsizes: { a: 3 inchs }\nstock: { p: {} }\npiece: { a: { made of: p } }\n",
  );
  expect(printShort(findings, "b.yaml")).toBe(
    "b.yaml:3:8: error: `units` cannot be `furlong` [unknown-word]\nb.yaml:4:15: error: no unit is called `inchs` [unknown-unit]\n",
  );
  expect(printShort([], "b.yaml")).toBe("");
});

test("the JSON form has every field", () => {
  const json = JSON.parse(
    printJson(findingsOf("plan: 1\nplan: 1\ntitle: B\nstock: { p: {} }\npiece: { a: { made of: p } }\n"), "b.yaml"),
  );
  expect(json.source).toBe("b.yaml");
  expect(json.findings[0]).toMatchObject({
    rule: "duplicate-key",
    severity: "error",
    at: { start: 8, end: 12, line: 2, column: 1 },
    also: [{ at: { line: 1, column: 1 }, label: "said here first" }],
  });
});

/** What terminals act on: ECMA-48 control functions (C0, C1), and the directional marks of the Unicode bidirectional algorithm. */
test.each([
  ["\u001b[31mred", "\\u{1b}[31mred"],
  ["\u001b]0;title\u0007", "\\u{1b}]0;title\\u{7}"],
  ["\u009b31m", "\\u{9b}31m"],
  ["a\nb\rc", "a\\u{a}b\\u{d}c"],
  ["a\tb", "a\tb"],
  ["\u202eevil\u202c", "\\u{202e}evil\\u{202c}"],
  ["\u2066\u2069\u200e\u200f\u061c", "\\u{2066}\\u{2069}\\u{200e}\\u{200f}\\u{61c}"],
  ["\ud800x", "\\u{d800}x"],
  ["🪵 é 日本", "🪵 é 日本"],
  ["\u0000\u007f", "\\u{0}\\u{7f}"],
])("%j is shown as %j, and showing it again changes nothing", (text, shown) => {
  expect(escapeText(text)).toBe(shown);
  expect(escapeText(shown)).toBe(shown);
});

test("names from outside are escaped in the short form too", () => {
  expect(printShort(findingsOf("plan: 1\ntitle:\n"), "a\u001b[2J.yaml")).toMatch(
    /^a\\u\{1b\}\[2J\.yaml:\d:\d: error: /,
  );
});
