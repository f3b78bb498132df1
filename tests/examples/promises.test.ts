import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { recordSchema } from "../../src/render/write/record-schema.ts";
import { auditOf, EXAMPLES, recordOf, said, solveText, textOf } from "./compiled.ts";

/** The promises of the build record, proved by an auditor that shares no code with the program. */
describe.each(EXAMPLES)("%s", (name) => {
  const text = textOf(name);

  it("compiles without a finding", () => {
    expect(said(solveText(text).findings)).toEqual([]);
  });

  it("keeps the promises of its record", () => {
    const { build } = solveText(text);
    expect(build && auditOf(text, build)).toEqual([]);
  });

  it("fits the published schema of the record", () => {
    const { build } = solveText(text);
    const valid = new Ajv2020({ strict: false }).compile(recordSchema);
    expect(build && valid(JSON.parse(recordOf(text, build))), JSON.stringify(valid.errors)).toBe(true);
  });
});

it("gives the same record twice, whatever was compiled between", () => {
  const records = (names: readonly string[]) =>
    new Map(
      names
        .map((name) => [name, solveText(textOf(name)).build] as const)
        .map(([name, build]) => [name, build && recordOf(textOf(name), build)]),
    );
  expect(records(EXAMPLES.toReversed())).toEqual(records(EXAMPLES));
}, 60_000);

describe("choices", () => {
  it.each(["plywood", "slab"])("workbench cart with a top of %s", (top) => {
    const text = textOf("workbench-cart");
    const { build, findings } = solveText(text, {}, { top });
    expect(said(findings)).toEqual([]);
    expect(build && auditOf(text, build)).toEqual([]);
    // Three layers of 18 mm, or five boards of 50 mm.
    expect(build?.blanks.filter(({ part }) => part === `${top}-top`)).toHaveLength(top === "slab" ? 5 : 3);
  });
});

/** Sixteenths of an inch between two measures. */
const sixteenths = (low: number, high: number) => fc.integer({ min: low * 16, max: high * 16 }).map((n) => `${n}/16`);

/** Over its stated range a plan rebuilds without a finding, or with a true one: what compiles keeps its promises. */
describe("other sizes", () => {
  const holds = (name: string, sizes: fc.Arbitrary<Record<string, string>>, runs: number) =>
    fc.assert(
      fc.property(sizes, (set) => {
        const text = textOf(name);
        const { build, findings } = solveText(text, set);
        if (!build) expect(findings.some((f) => f.severity === "error")).toBe(true);
        else expect(auditOf(text, build)).toEqual([]);
      }),
      { numRuns: runs, seed: 20261125 },
    );

  it("boot bench: width, height, overhang", () => {
    holds(
      "boot-bench",
      fc.record({ width: sixteenths(30, 60), height: sixteenths(15, 20), overhang: sixteenths(2, 6) }),
      25,
    );
  });
  it("plant stand: distance between the posts", () => {
    holds("old-plans/plant-stand", fc.record({ clear: sixteenths(8, 16) }), 12);
  });
  it("wall cabinet: width, depth, height", () => {
    holds(
      "old-plans/medicine-cabinet",
      fc.record({ width: sixteenths(14, 36), depth: sixteenths(7, 16), height: sixteenths(16, 48) }),
      15,
    );
  });
  it("bookcase: width, height", () => {
    holds("manuals-bookcase", fc.record({ width: sixteenths(30, 44), height: sixteenths(48, 72) }), 5);
  });
  it("loan desk: width, height", () => {
    holds("loan-desk", fc.record({ width: sixteenths(48, 60), height: sixteenths(28, 32) }), 5);
  });
  it("workbench cart: width, height", () => {
    const mm = (low: number, high: number) => fc.integer({ min: low, max: high }).map(String);
    holds("workbench-cart", fc.record({ width: mm(900, 1400), height: mm(820, 950) }), 4);
  });
});

describe("a wide range of widths", () => {
  it("the boot bench from a stool to a pew says what is wrong, or is right", () => {
    for (const width of ["8", "12", "20", "30", "42", "60", "84", "120", "190", "200", "3000"]) {
      const text = textOf("boot-bench");
      const { build, findings } = solveText(text, { width });
      if (build) expect(auditOf(text, build)).toEqual([]);
      else expect(findings.filter((f) => f.severity === "error").length).toBeGreaterThan(0);
    }
  });
});
