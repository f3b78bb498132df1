import { expect, test } from "vitest";
import { solve } from "../../src/compile.ts";
import { parse } from "../../src/parse/index.ts";
import { EXAMPLES } from "./examples.ts";
import { exchangeWords, numbers } from "./mutate.ts";

/** EXCHANGES and SEED in the environment ask for another run. */
const COUNT = Number(process.env.EXCHANGES ?? 16);
const SEED = Number(process.env.SEED ?? 2);

test(`${COUNT} examples with words exchanged (seed ${SEED}) are solved or give findings, and never an exception`, () => {
  const random = numbers(SEED);
  let [readable, solved] = [0, 0];
  for (let run = 0; run < COUNT; run += 1) {
    const [name = "", text = ""] = EXAMPLES[random(EXAMPLES.length)] ?? [];
    const source = { name, bytes: new TextEncoder().encode(exchangeWords(text, random)) };
    if (parse(source).value === undefined) continue;
    readable += 1;
    const { value, findings } = solve(source, { sizes: new Map() });
    expect(value !== undefined || findings.some(({ severity }) => severity === "error"), `run ${run}`).toBe(true);
    solved += value === undefined ? 0 : 1;
  }
  expect(readable).toBeGreaterThan(COUNT / 10);
  expect(solved, "some exchanges are harmless").toBeGreaterThan(COUNT / 50);
  expect(solved).toBeLessThan(readable);
}, 180_000);
