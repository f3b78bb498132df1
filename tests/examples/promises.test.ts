import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { solve } from "../../src/compile.ts";
import { recordSchema } from "../../src/render/write/record-schema.ts";
import { auditOf, EXAMPLES, recordOf, SMALL_EXAMPLES, said, solvedOnce, solveText, textOf } from "./compiled.ts";

/** The promises of the build record, proved by an auditor that shares no code with the program. */
describe.each(EXAMPLES)("%s", (name) => {
  const text = textOf(name);
  const solved = solvedOnce(text);

  it("compiles without a finding", () => {
    expect(said(solved().findings)).toEqual([]);
  });

  it("keeps the promises of its record", () => {
    const { build } = solved();
    expect(build && auditOf(text, build)).toEqual([]);
  });

  it("fits the published schema of the record", () => {
    const { build } = solved();
    const valid = new Ajv2020({ strict: false }).compile(recordSchema);
    expect(build && valid(JSON.parse(recordOf(text, build))), JSON.stringify(valid.errors)).toBe(true);
  });
});

it.each(SMALL_EXAMPLES)("gives the same record of %s again, whatever was compiled between", (name) => {
  const text = textOf(name);
  const source = { name: "plan.yaml", bytes: new TextEncoder().encode(text) };
  const [before, again] = [solveText(text).build, solve(source, { sizes: new Map() }).value];
  expect(again && recordOf(text, again)).toBe(before && recordOf(text, before));
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
