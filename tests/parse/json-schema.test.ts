import { Ajv } from "ajv";
import { describe, expect, test } from "vitest";
import { parse as parseYaml } from "yaml";
import { catalogue } from "../../src/findings/catalogue.ts";
import { jsonSchema } from "../../src/parse/schema/index.ts";
import { EXAMPLES } from "../hostile/examples.ts";
import { parseText } from "./helpers.ts";

const validate = new Ajv({ strict: false, allErrors: true }).compile(jsonSchema());
const errors = (text: string): string[] => {
  validate(parseYaml(text, { merge: true }));
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
};

test.each(EXAMPLES)("the JSON Schema has nothing against %s", (_, text) => {
  expect(errors(text)).toEqual([]);
});

test("nor against any right example of the catalogue", () => {
  for (const { name, right } of catalogue) expect([name, errors(right)]).toEqual([name, []]);
});

describe("it sees the mistakes that a schema can see, as the program does", () => {
  test.each(["unknown-key", "missing-key", "unknown-word", "plan-version"])("%s", (name) => {
    const wrong = catalogue.find((rule) => rule.name === name)?.wrong ?? "";
    expect(errors(wrong).length).toBeGreaterThan(0);
    expect(parseText(wrong).findings.map(({ rule }) => rule)).toContain(name);
  });
});

test("every setting is described in one sentence", () => {
  const sentences: string[] = [];
  const walk = (value: unknown): void => {
    if (typeof value !== "object" || value === null) return;
    for (const [key, each] of Object.entries(value)) {
      if (key === "description" && typeof each === "string") sentences.push(each);
      walk(each);
    }
  };
  walk(jsonSchema());
  expect(sentences.length).toBeGreaterThan(100);
  for (const each of sentences) expect(each === "not in this version" || /^[A-Z].*\.$/.test(each), each).toBe(true);
});
