import { existsSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { lostPaths, pathsIn } from "./paths.ts";

test.each(["README.md", "DEVELOPERS.md", "CHANGELOG.md"])("every path in %s exists", (file) => {
  expect(lostPaths(file, readFileSync(file, "utf8"))).toEqual([]);
});

test("DEVELOPERS.md names paths, and fits into 400 lines", () => {
  const text = readFileSync("DEVELOPERS.md", "utf8");
  expect(pathsIn(text).length).toBeGreaterThan(20);
  expect(text.split("\n").length).toBeLessThanOrEqual(400);
});

test("a path that does not exist is reported", () => {
  const text =
    "See `src/nowhere/{a,b}.ts`, `src/compile.ts`, [one](docs/gone.md#part), [two](https://example.org) and `npm test`.";
  expect(lostPaths("README.md", text)).toEqual(["src/nowhere/a.ts", "src/nowhere/b.ts", "docs/gone.md"]);
  expect(lostPaths("README.md", "`src/findings/rules/<name>.ts`")).toEqual([]);
  expect(lostPaths("README.md", "`src/findings/gone/<name>.ts`")).toEqual(["src/findings/gone"]);
  expect(existsSync("src/compile.ts")).toBe(true);
});
