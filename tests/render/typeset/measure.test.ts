import { readFileSync } from "node:fs";
import fc from "fast-check";
import * as fontkit from "fontkit";
import PDFDocument from "pdfkit";
import { describe, expect, test } from "vitest";
import type { Font } from "../../../src/render/document.ts";
import { measure, missingCharacters, printable } from "../../../src/render/typeset/measure.ts";
import { regular } from "../../../src/render/typeset/metrics/regular.ts";
import { type Face, mendFace } from "../../../src/render/write/face.ts";

const fonts: Font[] = ["regular", "bold", "italic"];
const file = (font: Font) => readFileSync(new URL(`../../../assets/fonts/${font}.ttf`, import.meta.url));
const document = new PDFDocument({ font: null as unknown as string });
for (const font of fonts) {
  document.registerFont(font, file(font)).font(font);
  mendFace((document as unknown as { _font: { font: Face } })._font.font);
}
/** Width as pdfkit and fontkit set it from the file itself. */
const drawn = (text: string, font: Font, size: number) => document.font(font).fontSize(size).widthOfString(text);

const texts = [
  "Cut two legs to length",
  "23⁄32",
  "1\u202f23⁄32″ × 15 1⁄2 × 32\u00a01⁄4",
  "(7⁄16)",
  "AV To. Te, Ty Yo. “Wo” LT’s f’ 10 × 100 mm",
  "x⁄2 and 3⁄y and ⁄ and 12⁄34⁄56",
  "Ärger, naïveté, Łódź, Dvořák, Ștefan, Nguyễn",
  "office fluff fjord ½ ¾ ⅝",
  "  two  spaces ",
];

describe("measured widths are the drawn ones", () => {
  for (const font of fonts) {
    test.each(texts)(`${font}: %s`, (text) => {
      expect(Math.abs(measure(text, font, 12) - drawn(text, font, 12))).toBeLessThan(0.01);
    });

    test(`${font}: any text`, () => {
      const characters = [...regular.characters, ..."0123456789⁄⁄⁄⁄       "];
      const text = fc.array(fc.constantFrom(...characters), { maxLength: 30 }).map((list) => list.join(""));
      fc.assert(
        fc.property(text, (t) => Math.abs(measure(t, font, 10) - drawn(t, font, 10)) < 0.01),
        { numRuns: 2000, seed: 1 },
      );
    });
  }
});

// The figures of a fraction are all equally wide in the upright faces: 367 thousandths in the regular one.
test("a 1 stands closer to the figure after it in a fraction, and only there", () => {
  const wide = (text: string) => measure(text, "regular", 1000);
  expect(wide("11⁄64") - wide("22⁄64")).toBeCloseTo(-70);
  expect(wide("3⁄16") - wide("3⁄64")).toBeCloseTo(-55);
  expect(wide("1⁄2") - wide("3⁄2")).toBeCloseTo(0);
  expect(wide("11") - wide("22")).toBeCloseTo(0);
});

test("a fraction is narrower than its digits side by side, and a numerator is a numerator only before the slash", () => {
  expect(measure("23⁄32", "regular", 10)).toBeLessThan(measure("23", "regular", 10) + measure("32", "regular", 10));
  expect(measure("23/32", "regular", 10)).toBeGreaterThan(measure("23⁄32", "regular", 10));
});

test("characters that the faces lack are named, and stand as a box", () => {
  expect(missingCharacters("Tisch 日本, 日 🪑 é\tx")).toEqual(["日", "本", "🪑"]);
  expect(missingCharacters("Café e\u0301")).toEqual([]);
  expect(printable("e\u0301 日\n\u202e\u0007x")).toBe("é □  x");
  // Feet and minutes are none.
  expect(printable("a hand's breadth, 3' and 'so'")).toBe("a hand’s breadth, 3' and 'so'");
});

test("all faces print the same characters, and the files carry our name and the licence", () => {
  for (const font of fonts) {
    const face = fontkit.create(file(font));
    const printed = face.characterSet.filter((c) => c !== 0xffff); // end mark of the table
    expect(printed.map((c) => String.fromCodePoint(c)).sort()).toEqual([...regular.characters].sort());
    // The licence reserves the name "Source" for unmodified copies; its copyright line has to stay.
    const { copyright, license, licenseURL, ...names } = face.name.records;
    expect(JSON.stringify(names)).not.toMatch(/source/i);
    expect(face.familyName).toMatch(/^Boardwright Sans/);
    expect(copyright?.en).toContain("Adobe");
    expect(license?.en).toContain("SIL Open Font License");
    expect(licenseURL?.en).toContain("OFL");
  }
});

test.each([
  ["2 half laps, 3/4 deep", "2 half laps, 3⁄4 deep"],
  ["1 1/2 × 23/32", "1\u202f1⁄2 × 23⁄32"],
  ["white oak, 4/4 planed to 3/4", "white oak, 4/4 planed to 3⁄4"],
  ["#8 × 2 1/2 in", "#8 × 2\u202f1⁄2 in"],
  ["winter 2024/25, 1/3 full, 2/4 time, 3/4/2025, 1/2.5", "winter 2024/25, 1/3 full, 2/4 time, 3/4/2025, 1/2.5"],
  ["and/or A1/2", "and/or A1/2"],
  ["15\u202f1⁄2\u202fin", "15\u202f1⁄2\u00a0in"],
])("inch fractions and nothing else are set as fractions: %s", (typed, set) => {
  expect(printable(typed)).toBe(set);
  expect(printable(set)).toBe(set);
});
