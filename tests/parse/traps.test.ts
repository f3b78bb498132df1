import { describe, expect, test } from "vitest";
import { parseText, point } from "./helpers.ts";

/**
 * What YAML does silently or tells in its own words, and what a maker is told instead. `«»` mark what is pointed at.
 * The first part of the list is what `yaml` 2.9.1 was seen to do with sources of makers.
 */
const TRAPS: readonly (readonly [source: string, rule: string, help?: string])[] = [
  ["stock: «w:12»", "space-after-colon", "write `w: 12`"],
  ["sizes:\n  «w:12»\n  h: 3", "space-after-colon", "write `w: 12`"],
  ["sizes: { «w:12» }", "space-after-colon"],
  ["title: «Step: for»", "text-with-colon", 'put quotes around the text: `title: "Step: for"`'],
  ['title: "3/4" «thick»', "quotes-close-early", 'put quotes around the whole text, or around nothing: `"3/4 thick"`'],
  ["title: 'it'«s'»", "quotes-close-early", 'put quotes around the whole text, or around nothing: `"it\'s"`'],
  ["sizes:\n«\t»a: 3", "tab-indent"],
  ["title: red «#1»", "hash-starts-comment"],
  ["«title»: #8", "empty-value", 'put quotes around it: `title: "#8"`'],
  ["«%YAML 1.1»\n---\nplan: 1", "yaml-version"],
  ["title: «*nope»", "unknown-anchor"],
  ["sizes: { w: «3,5 mm» }", "decimal-comma", "write `3.5 mm`"],
  ["sizes: { w: { value: 3, ask: «Which side, as you face it?» } }", "comma-in-braces"],
  ["sizes: { «knob», height: 80 }", "bare-word-in-braces", "write `knob: …`"],
  ["sizes:\n  a: «-» 1/2", "dash-before-measure", "write `-1/2` for a negative measure"],
  ["sizes: { a: «-» 1/2 }", "dash-before-measure"],
  ["piece: { a: { between: [«-» 1/2, 3] } }", "dash-before-measure"],
  ['title: «"»Step\nunits: inch', "quotes-not-closed"],
  ["title: «'»Step\nunits: inch", "quotes-not-closed"],
  [
    "sizes: «{» a: 3\nunits: inch",
    "bracket-not-closed",
    "write } where it ends, and keep lines between further in than the first",
  ],
  ["piece:\n  a: { between: «[»a, b }\n", "bracket-not-closed"],
  ["title: «@»home", "needs-quotes"],
  ["title: x\n  «by: me»", "indentation"],
  ["sizes:\n   a: 3\n  «b: 4»", "indentation"],
  ["units: inch\n«foo»\ntitle: x", "line-without-colon"],
  ["«a bench»", "line-without-colon"],
  ["units: inch\n«units»: mm", "duplicate-key"],
  ["«?» [a]\n: 3", "key-not-text"],
  ["title: x\n«-»--\ntitle: y", "more-than-one-document"],
  ["title: «!!str» x", "yaml-tag"],
  ["sizes: { <<: «3» }", "merge-not-settings"],
  ["sizes: &all\n  a: «*all»", "anchor-circle"],
];

describe("traps of YAML are told in words of ours, at their place", () => {
  test.each(TRAPS.map(([marked, ...told]) => [marked, ...told] as const))("%j: %s", (marked, rule, help) => {
    const source = marked.replace(/[«»]/g, "");
    const start = marked.indexOf("«");
    const part = /«([^»]*)»/s.exec(marked)?.[1] ?? "";
    const found = parseText(source).findings.filter((each) => each.rule === rule);
    const where = source.slice(0, start).split("\n");
    // The word before a key that is no text is all there is to point at.
    const places = found.map((each) => point(each, source));
    if (rule === "key-not-text") expect(places).toHaveLength(1);
    else expect(places).toEqual([`${where.length}:${(where.at(-1) ?? "").length + 1} ${rule} ${JSON.stringify(part)}`]);
    if (help !== undefined) expect(found[0]?.help).toBe(help);
  });
});

test("a mistake of writing hides nothing in the other settings of the plan", () => {
  const source = [
    "plan: 1",
    "title: Step: for",
    "untis: inch",
    "stock: { pine: { sold as: 1x8 }",
    "piece:",
    "  shelf: { made of: pine, grian: up }",
    'subtitle: "open',
    "joints:",
    "  - { join: a, to: b, with: scrws }",
  ].join("\n");
  expect(parseText(source).findings.map((each) => point(each, source))).toEqual([
    '2:8 text-with-colon "Step: for"',
    '3:1 unknown-key "untis"',
    '4:8 bracket-not-closed "{"',
    '6:27 unknown-key "grian"',
    '7:11 quotes-not-closed "\\""',
    '9:29 unknown-word "scrws"',
  ]);
});

test("merged settings count as said, and what is said beside them goes first", () => {
  const source =
    "plan: 1\ntitle: x\nstock: { pine: { sold as: 1x8 } }\npiece:\n  a: &a { made of: pine, as: upright, left: 1 }\n  b: { <<: *a, left: 2 }\n  c: { <<: [{ left: 3 }, *a] }";
  const { value, findings } = parseText(source);
  expect(findings).toEqual([]);
  expect(value?.piece.map((node) => (node.kind === "part" ? [node.attitude?.value, node.placing.length] : []))).toEqual(
    [
      ["upright", 1],
      ["upright", 1],
      ["upright", 1],
    ],
  );
  const lefts = value?.piece.flatMap((node) => (node.kind === "part" ? node.placing : []));
  expect(lefts?.map((place) => ("value" in place && place.value.kind === "number" ? place.value.value.n : 0n))).toEqual(
    [1n, 2n, 3n],
  );
});

test("an anchor may be given again further down, and may be used a thousand times", () => {
  const uses = Array.from({ length: 1000 }, (_, i) => `  p${i}: *one`).join("\n");
  const source = `plan: 1\ntitle: x\nsizes: { a: &m 3, b: *m, c: &m 4, d: *m }\nstock: { pine: { sold as: 1x8 } }\npiece:\n  p: &one { made of: pine }\n${uses}`;
  const { value, findings } = parseText(source);
  expect(findings).toEqual([]);
  expect(value?.piece).toHaveLength(1001);
  const sizes = [...(value?.sizes.values() ?? [])].map((size) =>
    size.value.kind === "number" ? Number(size.value.value.n) : 0,
  );
  expect(sizes).toEqual([3, 3, 4, 4]);
});
