import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { auditOf, type Solved, said, solvedOnce, solveText } from "../../examples/compiled.ts";

/** Pieces from the rooms of the tool library that use, between them, every joint, shape and word of place. */
const folder = new URL("plans/", import.meta.url);
const PLANS = readdirSync(folder)
  .sort()
  .map((file) => [file.replace(".yaml", ""), readFileSync(new URL(file, folder), "utf8")] as const);

/** Lines that are comments or blank carry nothing, and the order of joints is only the order in which they are told. */
const rewritten = (text: string): string =>
  `# first\n${text.replace(/^(stock|piece|joints):/gm, "\n# so\n$1:")}\n# last\n`;

describe.each(PLANS)("%s", (_, text) => {
  const solved = solvedOnce(text);
  it("compiles without an error or a warning", () => {
    expect(said(solved().findings.filter((finding) => finding.severity !== "advice"))).toEqual([]);
  });
  it("keeps the promises of its record", () => {
    const { build } = solved();
    expect(build && auditOf(text, build)).toEqual([]);
  });
  // A sixth of them, by the length of their text.
  it.runIf(text.length % 6 === 0)("is the same with other comments and blank lines", () => {
    const sizes = ({ build }: Solved) => build?.parts.map(({ id, body, mark }) => ({ id, body, mark }));
    expect(sizes(solveText(rewritten(text)))).toEqual(sizes(solved()));
  });
});

describe("at other sizes, what compiles keeps its promises", () => {
  const ranged = PLANS.filter(([, text]) => text.includes("from:") && /value:/.test(text));
  it.each(ranged)("%s", (_, text) => {
    const range = /([a-z]+): \{ value: [\d /]+, from: (\d+), to: (\d+) \}/.exec(text);
    const [low, high] = [Number(range?.[2]), Number(range?.[3])];
    const metric = text.includes("units: mm");
    const width = fc.integer({ min: low * 16, max: high * 16 }).map((n) => (metric ? `${n >> 4}` : `${n}/16`));
    fc.assert(
      fc.property(width, (value) => {
        const { build, findings } = solveText(text, { [range?.[1] ?? ""]: value });
        if (build) expect(auditOf(text, build)).toEqual([]);
        else expect(said(findings.filter((finding) => finding.severity === "error"))).not.toEqual([]);
      }),
      { numRuns: 1, seed: 1911 },
    );
  });
});
