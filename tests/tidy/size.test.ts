import { expect, test } from "vitest";
import { lines, overBudget } from "./size.ts";
import { filesBelow } from "./source.ts";

/** Files that hold data or only types, not thought. */
const TABLES: readonly string[] = ["src/parse/draft.ts", "src/findings/catalogue.ts"];

const files = [...filesBelow("src", ".ts"), ...filesBelow("tests", ".ts"), ...filesBelow("scripts", ".mjs")];

test("files are short", () => {
  expect(overBudget(files, TABLES)).toEqual([]);
});

test("every table in the list exists and is long enough to need its place there", () => {
  const long = files.filter((file) => lines(file) > 250).map((file) => file.path);
  expect(TABLES.filter((path) => !long.includes(path))).toEqual([]);
});

test("a long file and a long median are reported", () => {
  const file = (path: string, n: number) => ({ path, text: "x\n".repeat(n) });
  expect(overBudget([file("a", 251)], [])).toHaveLength(3);
  expect(overBudget([file("a", 251)], ["a"])).toEqual([]);
  expect(overBudget([file("a", 91), file("b", 91), file("c", 10)], [])).toEqual([
    "the median file has 91 lines; the budget is 90",
  ]);
  expect(overBudget([file("a", 250), file("b", 10), file("c", 10)], [])).toEqual([]);
});
