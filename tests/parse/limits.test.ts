import { describe, expect, test } from "vitest";
import { parse } from "../../src/parse/index.ts";
import { LIMITS, type LimitName } from "../../src/parse/limits.ts";
import { placesOf } from "../../src/parse/text/lines.ts";
import { readYaml } from "../../src/parse/yaml/read-yaml.ts";
import { parseText, planWith, rulesOf } from "./helpers.ts";

const HEAD = "plan: 1\ntitle: x\nstock: { pine: { sold as: 1x8 } }\n";
const PIECE = "piece: { a: { made of: pine } }\n";
const sized = (count: number): string => `${HEAD}${PIECE}#`.padEnd(count - 1, "x").concat("\n");
const deep = (levels: number): string => `${HEAD}${PIECE}deep: ${"[".repeat(levels)}1${"]".repeat(levels)}\n`;
const settings = (count: number): string => `${HEAD}${PIECE}sizes:\n${lines(count, (i) => `  s${i}: 1`)}`;
const parts = (count: number): string =>
  `${HEAD}piece:\n${[0, 1].map((half) => `  g${half}:\n${lines(count / 2, (i) => `    p${i}: *a`)}`).join("\n")}`.replace(
    "p0: *a",
    "p0: &a { made of: pine }",
  );
/** Eleven nodes by an anchor of ten, used until there are `count` nodes. */
const expanded = (count: number): string => {
  const fixed = `built: { a: &ten [${lines(9, () => "x", ", ")}] }\n`;
  return `${HEAD}${PIECE}${fixed}photos: [${lines(count, () => "*ten", ", ")}]\n`;
};
function lines(count: number, line: (i: number) => string, between = "\n"): string {
  return Array.from({ length: count }, (_, i) => line(i)).join(between);
}

/** A source at the limit, one beyond it, and the finding there. */
const SOURCES: readonly (readonly [name: LimitName, source: (count: number) => string, rule: string, step?: number])[] =
  [
    ["sourceBytes", sized, "too-much"],
    ["mapKeys", settings, "too-much"],
    ["textLength", (count) => `${HEAD}${PIECE}built: "${"x".repeat(count)}"\n`, "text-too-long"],
    ["formulaLength", (count) => `${HEAD}${PIECE}sizes: { a: "${"1".padEnd(count - 4)} + 1" }\n`, "text-too-long"],
    ["nameLength", (count) => `${HEAD}piece: { ${"x".repeat(count)}: { made of: pine } }\n`, "text-too-long"],
    ["parts", parts, "too-much", 2],
  ];

describe("at a limit nothing is said, beyond it the limit is told with its number", () => {
  test.each(SOURCES.map(([name, ...more]) => [name, ...more] as const))("%s", (name, source, rule, step = 1) => {
    const { limit } = LIMITS[name];
    expect(rulesOf(source(limit)).filter((each) => each !== "not-in-this-version")).toEqual([]);
    const { findings, value } = parseText(source(limit + step));
    const told = findings.filter((each) => each.rule !== "not-in-this-version");
    expect(told.map((each) => each.rule)).toEqual([rule]);
    expect(told[0]?.message).toContain(String(limit));
    expect(value).toBeUndefined();
  });

  test("nesting", () => {
    const { limit } = LIMITS.nesting;
    // The document, the map and the list it is in take a level each.
    const depths = [1, 10, limit - 4, limit, limit + 1, 5000].map((levels) => [levels, rulesOf(deep(levels))]);
    expect(depths.slice(0, 3).every(([, rules]) => !(rules as string[]).includes("nested-too-deep"))).toBe(true);
    expect(depths.slice(3).map(([, rules]) => rules)).toEqual(Array(3).fill(["nested-too-deep"]));
  });

  test("nesting through anchors counts too", () => {
    const level = (i: number): string =>
      `n${i}: &n${i} { in: { in: { in: { in: ${i === 0 ? "1" : `*n${i - 1}`} } } } }`;
    expect(rulesOf(`${HEAD}${PIECE}built:\n${lines(10, (i) => `  ${level(i)}`)}`)).toEqual(["not-in-this-version"]);
    expect(rulesOf(`${HEAD}${PIECE}built:\n${lines(20, (i) => `  ${level(i)}`)}`)).toContain("nested-too-deep");
  });

  test("nodes, each use of an anchor counted", () => {
    const { limit } = LIMITS.nodes;
    const uses = Math.floor(limit / 11);
    expect(rulesOf(expanded(uses - 10))).toEqual(["not-in-this-version", "not-in-this-version"]);
    expect(rulesOf(expanded(uses + 10))).toContain("too-much");
  });

  test("words and signs", () => {
    const text = `[${"a,".repeat(LIMITS.tokens.limit / 2)}]`;
    expect(readYaml(text, placesOf(text)).findings.map(({ rule }) => rule)).toEqual(["too-much"]);
    const half = `[${"a,".repeat(LIMITS.tokens.limit / 4)}]`;
    expect(readYaml(half, placesOf(half)).findings).toEqual([]);
  });
});

test("after a mistake of writing the rest is read in short sources only, and so many times at most", () => {
  const { limit } = LIMITS.recoveries;
  const wrong = (count: number): string => lines(count, (i) => `w${i}: a: b`);
  expect(rulesOf(wrong(limit - 1)).filter((rule) => rule === "text-with-colon")).toHaveLength(limit - 1);
  expect(rulesOf(wrong(limit + 5)).filter((rule) => rule === "text-with-colon")).toHaveLength(limit);
  const long = `${wrong(3)}\n#${"x".repeat(LIMITS.recoverable.limit)}`;
  expect(rulesOf(long)).toEqual(["text-with-colon"]);
});

test("bytes that are no text are pointed at", () => {
  const bytes = new Uint8Array([...Buffer.from("plan: 1\ntitle: St"), 0xff, 0x65]);
  const [finding, ...others] = parse({ name: "plan.yaml", bytes }).findings;
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ rule: "not-utf-8", at: { line: 2, column: 10 } });
});

test("invisible characters are told one by one, with their numbers", () => {
  const { findings } = parseText(planWith({ top: "by: a\u0007b\u202ec\u0000" }));
  expect(findings.map(({ message }) => message.slice(-6))).toEqual(["U+0007", "U+202E", "U+0000"]);
});
