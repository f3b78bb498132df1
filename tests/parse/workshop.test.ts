import { readFileSync } from "node:fs";
import { Ajv } from "ajv";
import { expect, test } from "vitest";
import { parse as parseYaml } from "yaml";
import { solve } from "../../src/compile.ts";
import { workshopSchema } from "../../src/parse/schema/workshop.ts";
import { readWorkshop } from "../../src/parse/workshop/index.ts";
import { inches, millimetres } from "../../src/units/index.ts";
import { mutate, numbers } from "../hostile/mutate.ts";

const EXAMPLE = readFileSync("examples/workshops/tool-library.yaml", "utf8");
const bytes = (text: string) => new TextEncoder().encode(text);
const read = (text: string) => readWorkshop({ name: "shed.yaml", bytes: bytes(text) });

test("the example of a workshop is read, and its JSON Schema has nothing against it", () => {
  const { value, findings } = read(EXAMPLE);
  expect(findings).toEqual([]);
  expect(value).toMatchObject({
    file: "shed.yaml",
    kerf: inches(3, 32),
    squaring: inches(1, 4),
    carries: { width: inches(48), length: inches(60) },
    paper: "letter",
    longestClamp: inches(50),
    wood: [
      { of: "3/4 birch plywood", wide: inches(24), long: inches(48), count: 1 },
      { of: "1/4 birch plywood" },
      { of: "2x4 spruce", long: inches(44), count: 3 },
    ],
    supplies: [{ count: 200 }, { of: "wood-glue", count: 1 }],
  });
  expect(value?.wood[2]?.wide).toBeUndefined();
  const validate = new Ajv({ strict: false, allErrors: true }).compile(workshopSchema());
  validate(parseYaml(EXAMPLE));
  expect(validate.errors).toBeNull();
});

test("bare numbers are in the workshop's units, whatever the plan's are", () => {
  const { value } = read("workshop: 1\nunits: mm\nkerf: 3.2\nwood on hand:\n  - { of: ply, wide: 600, long: 4 ft }\n");
  expect(value?.kerf).toEqual(millimetres(32, 10));
  expect(value?.wood[0]).toMatchObject({ wide: millimetres(600), long: inches(48) });
});

const findings = (lines: string) =>
  read(`workshop: 1\n${lines}\n`).findings.map(({ rule, at }) => [rule, at.file, at.line]);

test("mistakes are told with their place in the workshop's file", () => {
  expect(findings("kref: 1/8")).toEqual([["unknown-key", "shed.yaml", 2]]);
  expect(findings("kerf: width / 2")).toEqual([["wrong-value", "shed.yaml", 2]]);
  expect(findings("fits the car: 48")).toEqual([["wrong-value", "shed.yaml", 2]]);
  expect(findings("wood on hand:\n  - { of: ply, long: 0 }")).toEqual([["wrong-value", "shed.yaml", 3]]);
  expect(findings("wood on hand:\n  - { of: ply, long: 4, count: 2.5 }")).toEqual([["wrong-value", "shed.yaml", 3]]);
  expect(findings("wood on hand:\n  - { of: ply }")).toEqual([["missing-key", "shed.yaml", 3]]);
  expect(read("kerf: 1/8\n").findings.map(({ rule }) => rule)).toEqual(["missing-key"]);
  expect(read("workshop: 2\n").findings.map(({ rule }) => rule)).toEqual(["plan-version"]);
});

const BENCH = readFileSync("examples/boot-bench.yaml", "utf8");
const inShed = (plan: string, shed: string) =>
  solve(
    { name: "plan.yaml", bytes: bytes(plan) },
    { sizes: new Map(), workshop: { name: "shed.yaml", bytes: bytes(shed) } },
  );

test("a mistake in the workshop stops the plan, and the plan's own are told as well", () => {
  const { value, findings: told } = inShed(BENCH.replace("as: on edge", "as: on edgy"), "workshop: 1\nkerf: -1\n");
  expect(value).toBeUndefined();
  expect(told.map(({ at }) => at.file ?? "plan")).toEqual(expect.arrayContaining(["shed.yaml", "plan"]));
});

test("the workshop's kerf and prices count, under whatever name the stock is known", () => {
  for (const name of ["lumber", "2x4", "2x4 spruce", "Spruce 2 x 4", "2×4 spruce"]) {
    const { value } = inShed(
      BENCH,
      `workshop: 1\nkerf: 3/32\nprices:\n  ${name}: { sold in: [{ long: 8 ft, price: 4.4 }] }\n`,
    );
    expect(value?.design.kerf, name).toEqual(inches(3, 32));
    expect(value?.design.stock[0]?.sold, name).toMatchObject([{ length: inches(96), price: 4.4 }]);
    const lumber = value?.purchases.filter(({ section }) => section === "lumber") ?? [];
    expect(lumber.length).toBeGreaterThan(0);
    for (const { quantity, price } of lumber) expect(price).toBeCloseTo(4.4 * quantity, 6);
  }
  const other = inShed(BENCH, "workshop: 1\nprices:\n  2x6 spruce: 9\n").value;
  expect(other?.purchases.every(({ price }) => price === null)).toBe(true);
});

test("a damaged file gives findings with a place in it, and never an exception", () => {
  const random = numbers(7);
  let good = 0;
  for (let run = 0; run < 1500; run += 1) {
    const text = mutate(EXAMPLE, random);
    const { value, findings: told } = read(text);
    expect(value === undefined, `run ${run}`).toBe(told.some(({ severity }) => severity === "error"));
    good += value === undefined ? 0 : 1;
    for (const { at, rule } of told) {
      expect(at.file, `run ${run}: ${rule}`).toBe("shed.yaml");
      expect(at.start <= at.end && at.end <= text.length + 2, `run ${run}: ${rule}`).toBe(true);
    }
  }
  expect(good).toBeGreaterThan(15);
  expect(good).toBeLessThan(1400);
});
