import { expect, test } from "vitest";
import { printedSource, printJson, printShort, printTerminal } from "../../src/findings/print/index.ts";
import { parse } from "../../src/parse/index.ts";
import { normaliseText } from "../../src/parse/text/read-text.ts";
import { EXAMPLES } from "./examples.ts";
import { mutate, numbers } from "./mutate.ts";

/** MUTATIONS and SEED in the environment ask for another run; a seed that finds something becomes a file in `found`. */
const COUNT = Number(process.env.MUTATIONS ?? 400);
const SEED = Number(process.env.SEED ?? 1);

// biome-ignore lint/suspicious/noControlCharactersInRegex: these must never reach a terminal
const STEERS = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;

test(`${COUNT} damaged examples (seed ${SEED}) give findings with a place, and never an exception`, () => {
  const random = numbers(SEED);
  let [good, slowest] = [0, 0];
  for (let run = 0; run < COUNT; run += 1) {
    const [name = "", text = ""] = EXAMPLES[random(EXAMPLES.length)] ?? [];
    const source = mutate(text, random);
    const bytes = new TextEncoder().encode(source);
    const begin = performance.now();
    const { value, findings } = parse({ name, bytes });
    slowest = Math.max(slowest, performance.now() - begin);
    const hasError = findings.some(({ severity }) => severity === "error");
    expect(value === undefined, `run ${run}: a value exactly when nothing is wrong`).toBe(hasError);
    good += value === undefined ? 0 : 1;
    const read = normaliseText(new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes));
    const lines = read.split("\n");
    for (const { at, rule, message, label, also } of findings)
      for (const place of [at, ...also.map((other) => other.at)]) {
        const where = `run ${run}: ${rule} at ${place.line}:${place.column}`;
        expect(place.start <= place.end && place.end <= read.length, where).toBe(true);
        expect(
          lines.slice(0, place.line - 1).join("\n").length + (place.line > 1 ? 1 : 0) + place.column - 1,
          where,
        ).toBe(place.start);
        expect(message.length > 0 && message.length < 300, `${where}: ${message}`).toBe(true);
        expect([...label].length, `${where}: ${label}`).toBeLessThanOrEqual(40);
      }
    const printed = printTerminal(findings, printedSource(name, source)) + printShort(findings, name);
    expect(STEERS.exec(printed), `run ${run}`).toBeNull();
    JSON.parse(printJson(findings, name));
  }
  expect(good, "some damage is harmless: a test that refuses everything tests nothing").toBeGreaterThan(COUNT / 100);
  expect(good).toBeLessThan(COUNT / 2);
  expect(slowest, "milliseconds for one source").toBeLessThan(2000);
});
