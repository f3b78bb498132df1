import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Composer, isScalar, Parser } from "yaml";
import { placesOf } from "../../src/parse/text/lines.ts";
import { scalarOffsets } from "../../src/parse/yaml/scalar-places.ts";
import { parseText, planWith, point } from "./helpers.ts";

describe("a mistake inside a text is pointed at, however the text is written", () => {
  test.each([
    ["plain", "left: 20 + 3 inchs", "unknown-unit", "inchs"],
    ["after blanks, before a comment", "left:   20 + 3 inchs   # so", "unknown-unit", "inchs"],
    ["in double quotes", 'left: "20 + 3 inchs"', "unknown-unit", "inchs"],
    ["behind an escaped character", 'left: "20 \\x2b 3 inchs"', "unknown-unit", "inchs"],
    ["in single quotes", "left: '20 + 3 inchs'", "unknown-unit", "inchs"],
    ["behind a doubled quote", "left: '2'' + 3 inchs'", "unknown-unit", "inchs"],
    ["in braces", "taper: { faces: left, at: top, to: 2, over: 3 inchs }", "unknown-unit", "inchs"],
    ["on the second line of a plain text", "left: 20\n  + 3 inchs", "unknown-unit", "inchs"],
    ["on the second line in quotes", 'left: "20\n  + 3 inchs"', "unknown-unit", "inchs"],
    ["behind an escaped line end", 'left: "20 \\\n  + 3 inchs"', "unknown-unit", "inchs"],
    ["in a folded block", "left: >\n  20\n  + 3 inchs", "unknown-unit", "inchs"],
    ["in a literal block", "left: |-\n  20\n  + 3 inchs", "unknown-unit", "inchs"],
    ["in a phrase", "set back: 1/8 inchs from leg.front", "unknown-unit", "inchs"],
    ["in a list of phrases", "set back: [1 from a.left, 1/8 from b.fornt]", "wrong-value", "b.fornt"],
    ["in a list", "between: [a, b+c]", "wrong-value", "b+c"],
  ])("%s", (_, line, rule, part) => {
    const source = planWith({ piece: `shelf:\n  made of: pine\n${line.replace(/^/gm, "  ")}` });
    const at = source.indexOf(part);
    const lines = source.slice(0, at).split("\n");
    const place = `${lines.length}:${(lines.at(-1)?.length ?? 0) + 1}`;
    const found = parseText(source).findings.map((finding) => point(finding, source));
    expect(found).toEqual([`${place} ${rule} ${JSON.stringify(part)}`]);
  });
});

test("both places of a name that is there twice are told", () => {
  const source = planWith({ top: "sizes: { side panel: 3, side-panel: 4 }" });
  const [finding] = parseText(source).findings;
  expect(finding?.rule).toBe("duplicate-key");
  expect(finding?.at).toMatchObject({ line: 3, column: 25 });
  expect(finding?.also.map(({ at }) => source.slice(at.start, at.end))).toEqual(["side panel"]);
});

test("where a value is right in one place and wrong in another, the use that is wrong is told", () => {
  const source = planWith({ stock: "a: { sold as: 1x8, measures: &m { thick: 3 } }\nb: { sold as: 1x8, widths: *m }" });
  const [finding, ...others] = parseText(source).findings;
  expect(others).toEqual([]);
  expect(finding?.rule).toBe("wrong-value");
  expect(finding?.also.map(({ at, label }) => [source.slice(at.start, at.end), label])).toEqual([["*m", "used here"]]);
});

/** Any scalar as the YAML library writes it, read back by the library: every character must be found in the source again. */
test("each character of a text is found where it stands in the source", () => {
  const text = fc
    .array(fc.constantFrom("a", "b", "ä", " ", "'", '"', "\\", "\n", "1/2", "word", "🪵"), {
      minLength: 1,
      maxLength: 30,
    })
    .map((pieces) => pieces.join("").trim());
  const style = fc.constantFrom("double", "single", "folded", "literal");
  fc.assert(
    fc.property(text, style, (value, how) => {
      fc.pre(value !== "");
      const source = written(value, how);
      const [document] = [...new Composer({ schema: "failsafe" }).compose(new Parser().parse(source))];
      const scalar = document?.getIn(["key"], true);
      if (!isScalar(scalar) || !scalar.range || document?.errors.length !== 0) return fc.pre(false);
      const [start, end] = scalar.range;
      const read = String(scalar.value);
      const offsets = scalarOffsets(source.slice(start, end), read, start);
      expect(offsets).toHaveLength(read.length + 1);
      for (let i = 0; i < read.length; i += 1) {
        const at = offsets[i] ?? -1;
        const there = source.charAt(at);
        const escaped = how === "double" && there === "\\";
        const folded = /\s/.test(read.charAt(i)) && (/\s/.test(there) || at >= end - 1);
        expect(there === read.charAt(i) || escaped || folded, `${JSON.stringify(source)} ${i}`).toBe(true);
        expect(at).toBeGreaterThanOrEqual(offsets[i - 1] ?? start);
      }
    }),
    { numRuns: 500 },
  );
});

function written(value: string, how: string): string {
  if (how === "double") return `key: ${JSON.stringify(value)}\n`;
  if (how === "single") return `key: '${value.replaceAll("'", "''").replaceAll("\n", "\n\n  ")}'\n`;
  return `key: ${how === "folded" ? ">" : "|"}\n${value.replace(/^/gm, "  ")}\n`;
}

test("lines and columns count from one, and never leave the text", () => {
  const places = placesOf("ab\n\ncd");
  expect(places(0, 2)).toEqual({ start: 0, end: 2, line: 1, column: 1 });
  expect(places(2, 3)).toEqual({ start: 2, end: 3, line: 1, column: 3 });
  expect(places(3, 4)).toEqual({ start: 3, end: 4, line: 2, column: 1 });
  expect(places(5, 6)).toEqual({ start: 5, end: 6, line: 3, column: 2 });
  expect(places(-5, 99)).toEqual({ start: 0, end: 6, line: 1, column: 1 });
});
