import fc from "fast-check";
import { expect, test } from "vitest";
import { TYPE } from "../../../src/render/style.ts";
import { breakLines, fit, type Rich, widestPiece } from "../../../src/render/typeset/lines.ts";
import { measure } from "../../../src/render/typeset/measure.ts";

const set = (rich: Rich, width: number): string[] =>
  breakLines(rich, TYPE.body, width).map((line) => line.runs.map((run) => run.text).join(""));

test("lines are as full as they can be and never wider than the column", () => {
  const words = fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1, maxLength: 60 });
  fc.assert(
    fc.property(words, fc.integer({ min: 90, max: 400 }), (list, width) => {
      const lines = set(list.join(" "), width);
      const wide = (text: string): number => measure(text, "regular", TYPE.body.size);
      expect(lines.join(" ")).toBe(list.join(" "));
      lines.forEach((line, i) => {
        expect(wide(line)).toBeLessThanOrEqual(width + 1e-6);
        const [next, ...others] = lines[i + 1]?.split(" ") ?? [];
        // The last line has a word of the line before where it would be a stub else.
        const stub = i === lines.length - 2 && others.length === 1 && wide(others.join(" ")) < 0.16 * width;
        if (next !== undefined && !stub) expect(wide(`${line} ${next}`)).toBeGreaterThan(width);
      });
    }),
    { seed: 1 },
  );
});

test.each([
  ["a number and its unit", "Cut the rail to a length of 15 in and mark it", ["15 in"]],
  ["a mixed number", "Cut the rail to a length of 15\u202f1⁄2 in and mark it", ["15\u202f1⁄2 in"]],
  ["factors", "Cut the panel to the size of 3⁄4 × 12 × 24 and mark it", ["3⁄4 × 12 × 24"]],
  ["factors with their units", "Cut it out, rough 1 in × 2 in, of what is left", ["1 in × 2 in"]],
  ["a name and its mark", "Glue the lower rail D to the front leg B and wipe", ["rail D", "leg B"]],
  ["a reference", "This is drawn larger on page 12 and in step 4 again", ["page 12", "step 4"]],
  ["a dash and what is before", "Things high up – heavy loads – and small children", ["up –", "loads –"]],
])("%s: they stay together", (_, text, tied) => {
  for (let width = 70; width < 300; width += 3)
    for (const words of tied)
      expect(
        set(text, width).some((line) => line.includes(words)),
        `${width}`,
      ).toBe(true);
});

test("a list of marks breaks after its commas, and keeps its last word with its mark", () => {
  const text =
    "They are planed to 3⁄4 in (E, F, G, H, I, J, K, L, M, N, O, P, Q, R, S and T) and 1⁄2 in (U, V and W) later.";
  let broken = 0;
  for (let width = 90; width < 400; width += 3) {
    const lines = set(text, width);
    broken += lines.filter((line) => /[A-S],$/.test(line)).length;
    for (const line of lines) expect(line).not.toMatch(/^[TW]\)|^\(|^in /);
    // As full as words of one letter let it be: a mark and its comma are no wider than 20 points.
    if (width > 150) expect(measure(lines[0] ?? "", "regular", TYPE.body.size), `${width}`).toBeGreaterThan(width - 90);
  }
  expect(broken).toBeGreaterThan(50);
});

test.each(["730 ml", "2 qt", "12 oz", "40 sq"])("a cell is as wide as %s, which is not parted", (text) => {
  expect(widestPiece(text, TYPE.body)).toBeCloseTo(measure(text, "regular", TYPE.body.size), 6);
  expect(widestPiece(`${text} or so`, TYPE.body)).toBeCloseTo(measure(text, "regular", TYPE.body.size), 6);
});

test("a short word does not stand alone in the last line", () => {
  const text = "Plane the boards until both of their faces lie flat upon the top of the saw and stay as they are.";
  for (let width = 120; width < 400; width += 3) {
    const lines = set(text, width);
    if (lines.length > 1 && width > 200) expect(lines.at(-1)).not.toMatch(/^\S{1,4}$/);
  }
});

test("an article is not taken for a mark", () => {
  const text = "Lay it down flat. A rail comes next";
  const split = Array.from({ length: 80 }, (_, i) => set(text, 60 + i));
  expect(split.some((lines) => lines.some((line) => line.startsWith("A rail")))).toBe(true);
});

test("a word wider than the column is broken inside it, and no letter is lost", () => {
  const word = "w".repeat(500);
  const lines = set(`See ${word} there`, 150);
  expect(lines.join("").replaceAll(" ", "")).toBe(`See${word}there`);
  for (const line of lines) expect(measure(line, "regular", TYPE.body.size)).toBeLessThanOrEqual(150.001);
});

test("long unbroken texts are set in reasonable time", () => {
  const start = performance.now();
  set("x".repeat(64_000), 300);
  expect(performance.now() - start).toBeLessThan(3000);
});

test("several faces run on in one line, and a run boundary is not a place to break", () => {
  const lines = breakLines(
    [
      { text: "Bold", font: "bold" },
      { text: "ly, and more words", font: "regular" },
    ],
    TYPE.body,
    70,
  );
  expect(lines[0]?.runs.map(({ text, font }) => [text, font])).toEqual([
    ["Bold", "bold"],
    ["ly, and", "regular"],
  ]);
  expect(lines[0]?.runs[1]?.x).toBeCloseTo(measure("Bold", "bold", TYPE.body.size), 6);
});

test("an empty text is one empty line, line ends and tabs are blanks", () => {
  expect(set("", 100)).toEqual([""]);
  expect(set("a\nb\tc", 100)).toEqual(["a b c"]);
});

test("a label that does not fit ends in an ellipsis", () => {
  const cut = fit("A very long name of a very small part", TYPE.body, 80);
  expect(cut).toMatch(/^A very .*…$/);
  expect(measure(cut, "regular", TYPE.body.size)).toBeLessThanOrEqual(80);
  expect(fit("short", TYPE.body, 80)).toBe("short");
});
