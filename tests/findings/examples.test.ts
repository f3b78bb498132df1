import { describe, expect, test } from "vitest";
import { compile, solve } from "../../src/compile.ts";
import { catalogue } from "../../src/findings/catalogue.ts";
import type { Finding } from "../../src/findings/finding.ts";
import { printedSource, printTerminal } from "../../src/findings/print/index.ts";

/** As bytes. A � in an example stands for a byte that is no text in UTF-8. */
const bytesOf = (text: string): Uint8Array =>
  Buffer.from(Buffer.from(text).toString("latin1").replaceAll("\u00ef\u00bf\u00bd", "\u00ff"), "latin1");

type Settings = readonly (readonly [string, string])[];

const solved = (text: string, settings: Settings = [], measured: Settings = []) =>
  solve({ name: "plan.yaml", bytes: bytesOf(text) }, { sizes: new Map(settings), measured: new Map(measured) });

/** Rules that speak of pages, which are printed for these only: the others are found before. */
const ON_PAGES: ReadonlySet<string> = new Set(["character-not-in-type"]);

async function findingsOf(name: string, ...plan: Parameters<typeof solved>): Promise<readonly Finding[]> {
  const found = solved(...plan);
  return ON_PAGES.has(name) ? (await compile(found, { date: "1970-01-01", version: "0" })).findings : found.findings;
}

describe.each(catalogue.map((rule) => [rule.name, rule] as const))("%s", (name, rule) => {
  test("is given by the plan that is wrong, in its own words and at a place", async () => {
    const found = (await findingsOf(name, rule.wrong, rule.wrongSettings, rule.wrongMeasured)).filter(
      (finding) => finding.rule === name,
    );
    expect(found.length).toBeGreaterThan(0);
    for (const { at, label, message, severity } of found) {
      expect(severity).toBe(rule.severity);
      expect(at.line).toBeLessThanOrEqual(rule.wrong.split("\n").length);
      expect(at.end).toBeGreaterThanOrEqual(at.start);
      expect(message).not.toMatch(/[.!]$|undefined|NaN|\[object/);
      expect(label.length).toBeLessThanOrEqual(40);
    }
    const printed = printTerminal(found, printedSource("plan.yaml", rule.wrong), { width: 80 });
    expect(Math.max(...printed.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test("nothing at all is found in the plan that is right", async () => {
    expect((await findingsOf(name, rule.right)).map(({ rule: other, message }) => `${other}: ${message}`)).toEqual([]);
  });
});
