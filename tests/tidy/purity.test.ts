import { expect, test } from "vitest";
import { impurities } from "./purity.ts";
import { filesBelow } from "./source.ts";

const pure = filesBelow("src", ".ts").filter((file) => !file.path.startsWith("src/cli/"));

test("outside src/cli nothing depends on clock, chance, locale or the outside world", () => {
  expect(pure.length).toBeGreaterThan(10);
  expect(pure.flatMap(impurities)).toEqual([]);
});

test.each([
  ["const now = new Date();", "Date"],
  ["const x = Math.random();", "Math.random"],
  ['const x = Math["sin"](1);', "Math.sin"],
  ["const { sin } = Math;", "Math as a whole"],
  ["const x = 2 ** 0.5;", "**"],
  ["process.exit(1);", "process"],
  ["const f = { console };", "console"],
  ["names.sort((a, b) => a.localeCompare(b));", "localeCompare"],
  ["type F = Intl.NumberFormat;", "Intl"],
])("%s is reported", (text, name) => {
  const file = { path: "src/solve/x.ts", text };
  expect(impurities(file)).toEqual([expect.stringContaining(`src/solve/x.ts:1 uses ${name}: `)]);
});

test.each([
  "// new Date()",
  'const s = "process";',
  "x.process = 1;",
  "interface A { readonly Date: string }",
  "Math.sqrt(2)",
  "10n ** 3n",
  "2 ** -49",
])("%s is not", (text) => {
  expect(impurities({ path: "src/solve/x.ts", text })).toEqual([]);
});
