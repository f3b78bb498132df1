import { describe, expect, test } from "vitest";
import { type Document, isMap, isScalar, isSeq, parseDocument, visit } from "yaml";
import { parse } from "../../src/parse/index.ts";
import { EXAMPLES } from "../hostile/examples.ts";
import { meaning, parseText } from "./helpers.ts";

const documentOf = (text: string): Document => parseDocument(text, { schema: "failsafe" });

/** The same source, written in another way. */
const VARIANTS: readonly (readonly [name: string, change: (text: string) => string])[] = [
  ["with the line ends of DOS", (text) => text.replaceAll("\n", "\r\n")],
  ["with the line ends of old computers", (text) => text.replaceAll("\n", "\r")],
  ["with a byte order mark", (text) => `\ufeff${text}`],
  ["with four blanks for two", (text) => documentOf(text).toString({ indent: 4, lineWidth: 0 })],
  [
    "with every text in quotes",
    (text) => documentOf(text).toString({ defaultStringType: "QUOTE_DOUBLE", lineWidth: 0 }),
  ],
  ["in braces throughout", (text) => inFlow(text, true)],
  ["on lines throughout", (text) => inFlow(text, false)],
  ["folded at forty columns", (text) => documentOf(text).toString({ lineWidth: 40, minContentWidth: 20 })],
  ["without comments", (text) => text.replace(/^\s*#.*\n|\s+# .*$/gm, "")],
  [
    "with hyphens in its words",
    (text) =>
      text.replace(
        /\b(made|sold|planed|set|flush|mirror|centred|good|join) (of|as|to|back|with|on|faces|side)(?=:)/g,
        "$1-$2",
      ),
  ],
  ["with its last line end missing", (text) => text.trimEnd()],
];

function inFlow(text: string, flow: boolean): string {
  const document = documentOf(text);
  visit(document, (_, node) => {
    if (isMap(node) || isSeq(node)) node.flow = flow;
    if (isScalar(node) && /^(?:QUOTE|BLOCK)/.test(node.type ?? "")) node.type = "QUOTE_DOUBLE";
  });
  return document.toString({ lineWidth: 0 });
}

describe.each(EXAMPLES)("%s means the same", (_, text) => {
  const expected = meaning(parseText(text).value);
  test("and something", () => {
    expect(expected).toMatchObject({ units: expect.any(String) });
    expect(parseText(text).findings).toEqual([]);
  });
  test.each(VARIANTS)("%s", (__, change) => {
    const changed = change(text);
    const { value, findings } = parseText(changed);
    expect(findings.map(({ message }) => message)).toEqual([]);
    expect(meaning(value)).toEqual(expected);
  });
  test("under another name, after something else was read", () => {
    parseText("plan: 2\n");
    const again = parse({ name: "other.yaml", bytes: new TextEncoder().encode(text) });
    expect(again).toEqual(parseText(text));
  });
});

test("a source in UTF-16 is refused, and nothing is guessed", () => {
  const bytes = new Uint8Array(Buffer.from("\ufeffplan: 1\n", "utf16le"));
  expect(parse({ name: "plan.yaml", bytes }).findings.map(({ rule }) => rule)).toEqual(["not-utf-8"]);
});
