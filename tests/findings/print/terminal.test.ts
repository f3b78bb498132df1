import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Finding } from "../../../src/findings/finding.ts";
import { PLAIN, printedSource, printTerminal, summary } from "../../../src/findings/print/index.ts";
import { columns } from "../../../src/findings/print/width.ts";
import { parse } from "../../../src/parse/index.ts";

const printed = (text: string, width = 80): string => {
  const { findings } = parse({ name: "bench.yaml", bytes: new TextEncoder().encode(text) });
  return printTerminal(findings, printedSource("bench.yaml", text), { width });
};
const HEAD = "plan: 1\ntitle: Bench\nstock: { pine: { sold as: 1x8 } }\npiece:\n";

test("a finding in full", () => {
  expect(printed(`${HEAD}  apron:\n    made of: pine\n    grian: across\n`)).toBe(
    `error: a part has no setting called \`grian\`
 ┌─ bench.yaml:7:5
 │
7│     grian: across
 │     ^^^^^ not known here

  help: write \`grain\`.
  more: boardwright explain unknown-key
`,
  );
});

test("two places, far from each other", () => {
  const rails = "  rail: { made of: pine }\n";
  expect(printed(`${HEAD}${rails}  a: { made of: pine }\n\n\n\n${rails}`)).toBe(
    `error: \`rail\` is said twice
  ┌─ bench.yaml:10:3
  │
 5│   rail: { made of: pine }
  │   ---- said here first
  ·
10│   rail: { made of: pine }
  │   ^^^^ said again

  help: keep one of them, or give one another name.
  more: boardwright explain duplicate-key
`,
  );
});

test("two places in one line", () => {
  expect(printed("plan: 1\nsizes: { a: 3, a: 4 }\n")).toContain(
    "2│ sizes: { a: 3, a: 4 }\n │          - said here first\n │                ^ said again\n",
  );
});

test("a tab is shown as two blanks, and the pointer stands where it should", () => {
  expect(printed(`${HEAD}  a: { made of: pine, left:\t3 inchs }\n`)).toContain(
    "5│   a: { made of: pine, left:  3 inchs }\n │                                ^^^^^ not a unit\n",
  );
});

test("wide letters take two columns, marks on letters none", () => {
  expect(printed(`${HEAD}  a: { called: "棚e\u0301", made of: pine, left: 3 inchs }\n`)).toContain(
    `5│   a: { called: "棚e\u0301", made of: pine, left: 3 inchs }\n │${" ".repeat(46)}^^^^^ not a unit\n`,
  );
  expect(columns("棚e\u0301")).toBe(3);
});

test("errors come first, then warnings, then advice, each in the order of the source", () => {
  const text =
    "plan: 1\ntitle: B\nbuilt: oil\nsizes: { a: 3-1/2, b: 3 inchs, c: 4 inchs }\nstock: { p: {} }\npiece: { a: { made of: p } }\n";
  const order = printed(text).match(/^(?:error|warning|advice): .*$/gm);
  expect(order?.map((line) => line.slice(0, 12))).toEqual([
    "error: no un",
    "error: no un",
    "warning: `bu",
    "advice: 3-1/",
  ]);
});

test("after twenty the others are counted by rule", () => {
  const text = `plan: 1\ntitle: B\nstock: { p: {} }\nsizes:\n${Array.from({ length: 23 }, (_, i) => `  s${i}: 3 inchs`).join("\n")}\npiece: { a: { made of: p, az: 3 } }\n`;
  expect(printed(text).match(/^error/gm)).toHaveLength(20);
  expect(printed(text)).toMatch(/\nand 4 more: 3 unknown-unit, 1 unknown-key\n$/);
});

describe("whatever is found, nothing is wider than the page", () => {
  const span = (start: number, end: number, line: number, column: number) => ({ start, end, line, column });
  test("for any line, place and words", () => {
    const words = fc.string({
      unit: fc.constantFrom("a", "b ", "日", "e\u0301", "\t", "\u001b", "🪵", "-"),
      maxLength: 150,
    });
    fc.assert(
      fc.property(
        words,
        fc.nat(150),
        fc.nat(150),
        words,
        fc.integer({ min: 40, max: 100 }),
        (line, from, length, text, width) => {
          const column = Math.min(from, line.length) + 1;
          const finding: Finding = {
            ...{
              rule: "some-rule",
              severity: "error",
              message: `m ${text}`,
              label: text.slice(0, 30),
              help: text,
              also: [],
            },
            at: span(column - 1, Math.min(column - 1 + length, line.length), 1, column),
          };
          const longestWord = Math.max(...[...text.split(" "), "boardwright"].map((word) => columns(word) * 6));
          for (const each of printTerminal([finding], printedSource("p.yaml", line), { width }).split("\n")) {
            // biome-ignore lint/suspicious/noControlCharactersInRegex: this must not be there
            expect(each).not.toMatch(/[\u0000-\u001f]/);
            if (each.includes("│") && each.includes("^"))
              expect(columns(each)).toBeLessThanOrEqual(Math.max(width, 45));
            else expect(columns(each)).toBeLessThanOrEqual(Math.max(width, longestWord + 10));
          }
        },
      ),
      { numRuns: 300 },
    );
  });
  test("a long line is cut around the pointer", () => {
    const text = `${HEAD}  a: { called: "${"long ".repeat(11)}", made of: pine, left: 3 inchs, note: "${"more ".repeat(30)}" }\n`;
    const [, , , line = "", pointer = ""] = printed(text).split("\n");
    expect(line).toMatch(/^5│ ….*…$/);
    expect(line.slice(pointer.indexOf("^"), pointer.lastIndexOf("^") + 1)).toBe("inchs");
  });
});

test("colour marks level, pointer and file, and without it the text is the same", () => {
  const text = `${HEAD}  a: { made of: pine, left: 3 inchs }\n`;
  const { findings } = parse({ name: "b.yaml", bytes: new TextEncoder().encode(text) });
  const mark = (sign: string) => (part: string) => `<${sign}${part}>`;
  const palette = { level: mark("L"), pointer: mark("P"), file: mark("F") };
  const coloured = printTerminal(findings, printedSource("b.yaml", text), { palette });
  expect(coloured).toContain("<Lerror:> no unit");
  expect(coloured).toContain("<Fb.yaml:5:31>");
  expect(coloured.replace(/<[LPF]([^>]*)>/g, "$1")).toBe(
    printTerminal(findings, printedSource("b.yaml", text), { palette: PLAIN }),
  );
});

test("the last line counts, says what came of it, and shows the way on", () => {
  const { findings } = parse({
    name: "b",
    bytes: new TextEncoder().encode(`${HEAD}  a: { made of: pine, left: 3 inchs, az: 3 }\nbuilt: x\n`),
  });
  expect(summary(findings, "No plan was written.")).toBe(
    "2 errors, 1 warning. No plan was written. `boardwright explain unknown-unit` tells more.\n",
  );
  expect(summary([])).toBe("");
  expect(summary([], "Written to b.pdf.")).toBe("Written to b.pdf.\n");
});
