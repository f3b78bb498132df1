/** Sources that want to break something, each with the finding that answers it (undefined: nothing is wrong with it). */
export interface Hostile {
  readonly what: string;
  readonly source: string | Uint8Array;
  readonly rule: string | undefined;
}

const HEAD = "plan: 1\ntitle: Hostile\nstock: { pine: { sold as: 1x8 } }\n";
const PART = "{ made of: pine, as: lying flat, across: 24, left: 0, front: 0, bottom: 0 }";
const PIECE = `piece: { shelf: ${PART} }\n`;
const times = (count: number, line: (i: number) => string, between = "\n"): string =>
  Array.from({ length: count }, (_, i) => line(i)).join(between);
const levels = (count: number, open: string, close: string): string => open.repeat(count) + close.repeat(count);

/** Anchors of ten uses each of the one before: 10 to the power of nine texts if they were written out. */
const BOMB = times(9, (i) => `  a${i}: &a${i} [${times(10, () => (i === 0 ? "lol" : `*a${i - 1}`), ", ")}]`);
const MERGES = times(1000, (i) => `  m${i}: &m${i} { k${i}: 1${i === 0 ? "" : `, <<: *m${i - 1}`} }`);

const raw = (hex: string): Uint8Array => new Uint8Array(Buffer.from(hex.replaceAll(" ", ""), "hex"));

export const HOSTILE: readonly Hostile[] = [
  { what: "nothing", source: "", rule: "empty-source" },
  { what: "zero bytes", source: new Uint8Array(1000), rule: "control-character" },
  { what: "bytes that are no text", source: raw("70 6c 61 6e ff fe 80 81"), rule: "not-utf-8" },
  { what: "UTF-16 with its mark", source: raw("ff fe 70 00 6c 00 61 00 6e 00"), rule: "not-utf-8" },
  { what: "an overlong slash", source: raw("70 6c 61 6e 3a c0 af"), rule: "not-utf-8" },
  { what: "a surrogate in UTF-8", source: raw("70 3a 20 ed a0 80"), rule: "not-utf-8" },
  { what: "a PDF", source: "%PDF-1.4\n%âãÏÓ\n1 0 obj\n<< /Type /Catalog >>\nendobj\n", rule: "line-without-colon" },
  { what: "a mebibyte and one", source: `#${"x".repeat(1_048_576)}`, rule: "too-much" },
  { what: "four mebibytes", source: "a: 1\n".repeat(900_000), rule: "too-much" },
  { what: "50,000 brackets", source: `${HEAD}deep: ${levels(50_000, "[", "]")}`, rule: "nested-too-deep" },
  { what: "50,000 open brackets", source: "[".repeat(50_000), rule: "nested-too-deep" },
  { what: "braces in braces", source: `${HEAD}deep: ${levels(5000, "{a: ", "}")}`, rule: "nested-too-deep" },
  { what: "dashes in dashes", source: `${"- ".repeat(5000)}x`, rule: "nested-too-deep" },
  { what: "question marks", source: "? ".repeat(5000), rule: "nested-too-deep" },
  { what: "steps inwards", source: times(1000, (i) => `${" ".repeat(i)}a:`), rule: "nested-too-deep" },
  { what: "40,000 settings", source: `${HEAD}${PIECE}sizes:\n${times(40_000, (i) => `  s${i}: 1`)}`, rule: "too-much" },
  {
    what: "the same setting 40,000 times",
    source: `${HEAD}${PIECE}sizes:\n${times(40_000, () => "  s: 1")}`,
    rule: "too-much",
  },
  { what: "an alias bomb", source: `${HEAD}${PIECE}built:\n${BOMB}\n`, rule: "too-much" },
  { what: "1,000 maps that merge each other", source: `${HEAD}${PIECE}built:\n${MERGES}\n`, rule: "too-much" },
  { what: "a circle of anchors", source: `${HEAD}${PIECE}built: &a { b: &b { c: *a } }`, rule: "anchor-circle" },
  { what: "a circle by merging", source: `${HEAD}${PIECE}built: &a { <<: *a }`, rule: "anchor-circle" },
  { what: "a key that is itself", source: `${HEAD}${PIECE}? &a [*a]\n: 1`, rule: "key-not-text" },
  {
    what: "honest use of one anchor",
    source: `${HEAD}piece:\n  p: &p ${PART}\nbuilt: [${times(1000, () => "*p", ", ")}]`,
    rule: "not-in-this-version",
  },
  { what: "YAML 1.1", source: `%YAML 1.1\n---\n${HEAD}${PIECE}`, rule: "yaml-version" },
  {
    what: "a tag that runs code elsewhere",
    source: `${HEAD}${PIECE}by: !!js/function 'function () { process.exit(3) }'`,
    rule: "yaml-tag",
  },
  { what: "a thousand documents", source: "--- a\n".repeat(1000), rule: "more-than-one-document" },
  {
    what: "__proto__ everywhere",
    source: `${HEAD}piece: { __proto__: ${PART}, constructor: ${PART} }\n__proto__: { polluted: yes }`,
    rule: "unknown-key",
  },
  {
    what: "merging into __proto__",
    source: `${HEAD}${PIECE}__proto__: &p { polluted: yes }\nfinish: { <<: *p }`,
    rule: "unknown-key",
  },
  { what: "an endless number", source: `${HEAD}${PIECE}sizes: { a: ${"9".repeat(400)} }`, rule: "measure-too-large" },
  { what: "a number of many digits", source: `${HEAD}${PIECE}sizes: { a: 0.${"3".repeat(480)} }`, rule: undefined },
  { what: "1e400", source: `${HEAD}${PIECE}sizes: { a: 1e400 }`, rule: "unknown-unit" },
  { what: "one over nothing", source: `${HEAD}${PIECE}sizes: { a: 1/0 }`, rule: "division-by-zero" },
  {
    what: "brackets in a formula",
    source: `${HEAD}${PIECE}sizes: { a: "${levels(240, "(", ")")}" }`,
    rule: "measure-not-read",
  },
  {
    what: "minus signs in a formula",
    source: `${HEAD}${PIECE}sizes: { a: "${"-".repeat(400)}1" }`,
    rule: "measure-not-read",
  },
  { what: "a long formula", source: `${HEAD}${PIECE}sizes: { a: "${"1 + ".repeat(2000)}1" }`, rule: "text-too-long" },
  {
    what: "two to the power of 200 by names",
    source: `${HEAD}${PIECE.replace("24", "a200")}sizes:\n  a0: 2 m\n${times(200, (i) => `  a${i + 1}: 2 * a${i}`)}`,
    rule: "measure-too-large",
  },
  { what: "one long word", source: `${HEAD}${PIECE}by: ${"x".repeat(500_000)}`, rule: "text-too-long" },
  { what: "one long name", source: `${HEAD}piece: { ${"x".repeat(900)}: ${PART} }`, rule: "text-too-long" },
  {
    what: "a name of commands to the terminal",
    source: `${HEAD}piece: { "a\\e[31m\\e]0;x\\a": ${PART} }`,
    rule: "unusable-name",
  },
  { what: "commands to the terminal", source: `${HEAD}${PIECE}by: "\u001b]0;x\u0007"`, rule: "control-character" },
  { what: "text that runs backwards", source: `${HEAD}${PIECE}by: "\u202eabc"`, rule: "control-character" },
  { what: "150 combining marks on one letter", source: `${HEAD}${PIECE}by: e${"\u0301".repeat(150)}`, rule: undefined },
  { what: "a line of 200,000 blanks", source: `${HEAD}${PIECE}by:${" ".repeat(200_000)}x`, rule: undefined },
  { what: "100,000 comment lines", source: `${HEAD}${PIECE}${"#\n".repeat(100_000)}`, rule: undefined },
  { what: "100,000 colons", source: ": ".repeat(100_000), rule: "nested-too-deep" },
  { what: "100,000 quotes", source: `${HEAD}by: ${'"'.repeat(100_000)}`, rule: "quotes-close-early" },
  { what: "open quotes before much text", source: `${HEAD}by: "${"line\n".repeat(20_000)}`, rule: "quotes-not-closed" },
  {
    what: "20,000 lines without a colon",
    source: `${HEAD}${times(20_000, (i) => `w${i}`)}`,
    rule: "line-without-colon",
  },
  {
    what: "20,000 mistakes",
    source: `${HEAD}${PIECE}sizes:\n${times(4900, (i) => `  s${i}: 3 inchs`)}`,
    rule: "unknown-unit",
  },
  {
    what: "groups in groups",
    source: `${HEAD}piece: ${times(55, (i) => `{ g${i}: `, "")}${PART}${" }".repeat(55)}`,
    rule: undefined,
  },
];
