import { expect, test } from "vitest";
import { solve } from "../../src/compile.ts";
import { parse } from "../../src/parse/index.ts";
import { EXAMPLES } from "./examples.ts";
import { exchangeWords, numbers } from "./mutate.ts";

/** EXCHANGES and SEED in the environment ask for another run. */
const COUNT = Number(process.env.EXCHANGES ?? 5);
const SEED = Number(process.env.SEED ?? 2);
/** Most exchanges give what cannot be read, which is soon found: of so many one is read. */
const DRAWS = 60;

test(`${COUNT} examples with words exchanged (seed ${SEED}) that can be read are solved or give findings, and never an exception`, () => {
  const random = numbers(SEED);
  let [readable, solved] = [0, 0];
  for (let run = 0; readable < COUNT && run < COUNT * DRAWS; run += 1) {
    const [name = "", text = ""] = EXAMPLES[random(EXAMPLES.length)] ?? [];
    const source = { name, bytes: new TextEncoder().encode(exchangeWords(text, random)) };
    if (parse(source).value === undefined) continue;
    readable += 1;
    const { value, findings } = solve(source, { sizes: new Map() });
    expect(value !== undefined || findings.some(({ severity }) => severity === "error"), `run ${run}`).toBe(true);
    solved += value === undefined ? 0 : 1;
  }
  expect(readable).toBe(COUNT);
  expect(solved, "some exchanges are harmless").toBeGreaterThan(0);
  expect(solved).toBeLessThan(readable);
}, 180_000);
