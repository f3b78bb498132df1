import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Formula, FunctionName } from "../../src/parse/draft.ts";
import { readFormula } from "../../src/parse/formulas/read-formula.ts";
import { LIMITS } from "../../src/parse/limits.ts";
import { inches, millimetres } from "../../src/units/length.ts";
import { rational } from "../../src/units/rational.ts";

const place = (start: number, end: number) => ({ start, end, line: 1, column: start + 1 });
const read = (text: string) => readFormula({ text, place });

/** The formula with brackets round everything that has parts, so that its structure can be compared as text. */
function shown(formula: Formula | undefined): string {
  switch (formula?.kind) {
    case "number":
      return formula.value.d === 1n ? `${formula.value.n}` : `${formula.value.n}:${formula.value.d}`;
    case "measure":
      return `[${formula.value.n}/${formula.value.d}]`;
    case "angle":
      return `${formula.degrees.n}°`;
    case "name":
      return formula.path.join(".");
    case "negate":
      return `(-${shown(formula.of)})`;
    case "operation":
      return `(${shown(formula.left)} ${formula.operator} ${shown(formula.right)})`;
    case "call":
      return `${formula.name}(${formula.of.map(shown).join(", ")})`;
    case undefined:
      return "nothing";
  }
}

const name = fc
  .array(fc.stringMatching(/^[a-z_][a-z0-9_]{0,5}(-[a-z][a-z0-9]{0,3}){0,2}$/), { minLength: 1, maxLength: 3 })
  .map((path) => path.join("."));
const FUNCTIONS: readonly FunctionName[] = ["min", "max", "round", "round-down", "round-up"];

/** A text and what it should be read as, built together. `tight` says that it needs no brackets as a part of anything. */
const { formula: written } = fc.letrec<{ formula: { text: string; tree: string } }>((tie) => ({
  formula: fc.oneof(
    { maxDepth: 4, depthIdentifier: "formula" },
    fc.nat(9999).map((n) => ({ text: `${n}`, tree: `${n}` })),
    fc.tuple(fc.nat(99), fc.integer({ min: 1, max: 15 })).map(([whole, top]) => {
      const sum = rational(whole * 16 + top, 16);
      return { text: `(${whole} ${top}/16)`, tree: `${sum.n}:${sum.d}` };
    }),
    name.map((text) => ({ text, tree: text })),
    tie("formula").map(({ text, tree }) => ({ text: `-(${text})`, tree: `(-${tree})` })),
    fc.tuple(tie("formula"), fc.constantFrom("+", "-", "*", "/"), tie("formula")).map(([left, sign, right]) => ({
      text: `((${left.text}) ${sign} (${right.text}))`,
      tree: `(${left.tree} ${sign} ${right.tree})`,
    })),
    fc.tuple(fc.constantFrom(...FUNCTIONS), tie("formula"), tie("formula")).map(([call, a, b]) => ({
      text: `${call}(${a.text}, ${b.text})`,
      tree: `${call}(${a.tree}, ${b.tree})`,
    })),
  ),
}));

test("what is written with brackets everywhere is read as it was built", () => {
  fc.assert(
    fc.property(written, ({ text, tree }) => {
      fc.pre(text.length <= LIMITS.formulaLength.limit);
      const { value, findings } = read(text);
      expect(findings).toEqual([]);
      expect(shown(value)).toBe(tree);
    }),
  );
});

test("without brackets products bind before sums, and both go from left to right, as in arithmetic", () => {
  const signs = fc.array(fc.constantFrom("+", "-", "*", "/"), { minLength: 1, maxLength: 9 });
  fc.assert(
    fc.property(
      signs,
      fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 10, maxLength: 10 }),
      (between, numbers) => {
        const text = between
          .map((sign, i) => `${sign} ${numbers[i + 1]}`)
          .reduce((a, b) => `${a} ${b}`, `${numbers[0]}`);
        const { value } = read(text);
        // JavaScript's own parser is the judge of the order.
        expect(evaluate(value)).toBeCloseTo(Number(new Function(`return ${text}`)()), 9);
      },
    ),
  );
});

function evaluate(formula: Formula | undefined): number {
  if (formula?.kind === "number") return Number(formula.value.n) / Number(formula.value.d);
  if (formula?.kind !== "operation") throw new Error("only numbers here");
  const [a, b] = [evaluate(formula.left), evaluate(formula.right)];
  return { "+": a + b, "-": a - b, "*": a * b, "/": a / b }[formula.operator];
}

test.each([
  ["34 1/2", "69:2"],
  ["3/4", "3:4"],
  ["2' 6\"", `[${inches(30).n}/1]`],
  ["600 mm", `[${millimetres(600).n}/1]`],
  ["15 deg", "15°"],
  ["width - 1/2", "(width - 1:2)"],
  ["top-rail", "top-rail"],
  ["top - rail", "(top - rail)"],
  ["Top-Rail.LENGTH", "top-rail.length"],
  ["cabinet.top-rail.length", "cabinet.top-rail.length"],
  ["slat.1.left + 3", "(slat.1.left + 3)"],
  ["2 * 8 3/4", "(2 * 35:4)"],
  ["width / 2 1/2", "(width / 5:2)"],
  ["3/4/2", "(3:4 / 2)"],
  ["(width)", "width"],
  ["-width", "(-width)"],
  ["a - -b", "(a - (-b))"],
  ["36-2", "(36 - 2)"],
  ["a -b", "(a - b)"],
  ["2 × width ÷ 3", "((2 * width) / 3)"],
  ["a − b", "(a - b)"],
  ["min(a, b, c)", "min(a, b, c)"],
  ["round-down(width / 3, 1/16)", "round-down((width / 3), 1:16)"],
  ["min", "min"],
  ["mm + 3 mm", `(mm + [${millimetres(3).n}/1])`],
  ["__proto__ + constructor", "(__proto__ + constructor)"],
  ["höhe", "höhe"],
])("%s is read as %s", (text, tree) => {
  const { value, findings } = read(text);
  expect(findings).toEqual([]);
  expect(shown(value)).toBe(tree);
});

describe("what cannot be read is told at its place", () => {
  test.each([
    ["20 + 3-1/2", "hyphen-in-formula", "3-1/2"],
    ["width-1/2", "hyphen-in-formula", "width-1/2"],
    ["2'-6 + 1", "hyphen-in-formula", "2'-6"],
    ["12 / 3/4", "fraction-after-division", "3/4"],
    ["3,5", "decimal-comma", "3,5"],
    ["1,000 + 2", "decimal-comma", "1,000"],
    ["20 + 3 inchs", "unknown-unit", "inchs"],
    ["2 x 4", "unknown-unit", "x"],
    ["smallest(3, 4)", "unknown-function", "smallest"],
    ["1/0 + 2", "division-by-zero", "1/0 + 2"],
    ["101 m", "measure-too-large", "101 m"],
    ["9".repeat(60), "measure-too-large", "9".repeat(60)],
    ["", "measure-not-read", ""],
    ["20 +", "measure-not-read", "+"],
    ["20 + + 3", "measure-not-read", "+"],
    ["(20 + 3", "measure-not-read", "("],
    ["20 + 3)", "measure-not-read", ")"],
    ["side panel + 3", "measure-not-read", "panel"],
    ["20 30", "measure-not-read", "30"],
    ["round(width)", "measure-not-read", "round"],
    ["min()", "measure-not-read", ")"],
    ["a = b", "measure-not-read", "="],
    ["3 🪵", "measure-not-read", "🪵"],
    ["a – b", "measure-not-read", "–"],
    ["width, height", "measure-not-read", ","],
    ["`a`", "measure-not-read", "`"],
  ])("%j: %s at %j", (text, rule, part) => {
    const { value, findings } = read(text);
    expect(value).toBeUndefined();
    const [finding] = findings;
    expect(findings).toHaveLength(1);
    expect(finding?.rule).toBe(rule);
    expect(text.slice(finding?.at.start, finding?.at.end)).toBe(part);
  });
});

test("34-1/2 alone is a measure, and how it was read is told", () => {
  const { value, findings } = read("34-1/2");
  expect(shown(value)).toBe("69:2");
  expect(findings.map(({ rule, severity }) => [rule, severity])).toEqual([["hyphen-read-as-measure", "advice"]]);
});

describe("limits", () => {
  const { limit: length } = LIMITS.formulaLength;
  const { limit: depth } = LIMITS.formulaDepth;
  const nested = (levels: number) => `${"(".repeat(levels)}1${")".repeat(levels)}`;
  test.each([
    ["characters", `1${" ".repeat(length - 2)}`.slice(0, length - 1).concat(" "), true],
    ["characters", `1${" + 1".repeat(length / 4)}`, false],
    ["brackets", nested(depth), true],
    ["brackets", nested(depth + 1), false],
    ["minus signs", `${"-".repeat(depth)}1`, true],
    ["minus signs", `${"-".repeat(depth + 1)}1`, false],
    ["metres", "100 m", true],
    ["metres", "100.001 m", false],
  ])("%s: %j", (_, text, fits) => {
    expect(read(text).value !== undefined).toBe(fits);
  });
});
