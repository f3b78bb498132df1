import { expect, test } from "vitest";
import { type Exception, impurities } from "./purity.ts";
import { filesBelow } from "./source.ts";

const EXCEPTIONS: readonly Exception[] = [];

const pure = filesBelow("src", ".ts").filter((file) => !file.path.startsWith("src/cli/"));

test("outside src/cli nothing depends on clock, chance, locale or the outside world", () => {
  expect(pure.length).toBeGreaterThan(10);
  expect(pure.flatMap((file) => impurities(file, EXCEPTIONS))).toEqual([]);
});

test("every exception is needed", () => {
  for (const exception of EXCEPTIONS) {
    const others = EXCEPTIONS.filter((e) => e !== exception);
    expect(pure.flatMap((file) => impurities(file, others)).length, exception.file).toBeGreaterThan(0);
  }
});

test.each([
  ["const now = new Date();", "Date"],
  ["const x = Math.random();", "Math.random"],
  ['const x = Math["sin"](1);', "Math.sin"],
  ["const x = 2 ** 0.5;", "**"],
  ["process.exit(1);", "process"],
  ["const f = { console };", "console"],
  ["names.sort((a, b) => a.localeCompare(b));", "localeCompare"],
  ["type F = Intl.NumberFormat;", "Intl"],
])("%s is reported", (text, name) => {
  const file = { path: "src/solve/x.ts", text };
  const exceptions = [{ file: "src/solve/x.ts", names: [name], because: "" }];
  expect(impurities(file, [])).toEqual([expect.stringContaining(`src/solve/x.ts:1 uses ${name}: `)]);
  expect(impurities(file, exceptions)).toEqual([]);
  expect(impurities({ ...file, path: "src/solve/y.ts" }, exceptions)).toHaveLength(1);
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
  expect(impurities({ path: "src/solve/x.ts", text }, [])).toEqual([]);
});
