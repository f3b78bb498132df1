import { expect, test } from "vitest";
import { catalogue } from "../../src/findings/catalogue.ts";
import { catalogueGaps } from "./catalogue.ts";
import { filesBelow } from "./source.ts";

test("every rule is in the catalogue under the name of its file", () => {
  const files = filesBelow("src/findings/rules", ".ts").map((file) => file.path);
  expect(files.length).toBeGreaterThan(10);
  expect(
    catalogueGaps(
      files,
      catalogue.map((rule) => rule.name),
    ),
  ).toEqual([]);
});

test("a missing, a nameless, a repeated and a misplaced rule are reported", () => {
  expect(catalogueGaps(["rules/a.ts", "rules/b.ts"], ["a"])).toEqual(["b is not in the catalogue"]);
  expect(catalogueGaps(["rules/a.ts"], ["a", "b"])).toEqual(["b has no file of its name"]);
  expect(catalogueGaps(["rules/a.ts", "rules/b.ts"], ["b", "a"])).toEqual(["a is out of order"]);
  expect(catalogueGaps(["rules/a.ts"], ["a", "a"])).toEqual(["a is out of order"]);
});
