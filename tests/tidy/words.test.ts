import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { filesBelow } from "./source.ts";
import { privateFolders, unkindWords } from "./words.ts";

const rules = filesBelow("src/findings/rules", ".ts");

test("no finding blames, or speaks as programmers do", () => {
  expect(rules.length).toBeGreaterThan(10);
  expect(rules.flatMap(unkindWords)).toEqual([]);
});

test("a word that blames is reported, but not in an example, a type or a name", () => {
  const words = (text: string) => unkindWords({ path: "r.ts", text });
  expect(words('rule({ message: () => "invalid width" });')).toEqual(['r.ts:1 says "invalid"']);
  expect(words(`rule({ message: (a) => \`\${a.x} is undefined\` });`)).toEqual(['r.ts:1 says "undefined"']);
  expect(words('rule({ help: () => "mend it!" });')).toHaveLength(1);
  expect(words('const invalid: string | undefined = f({ wrong: "a: null", right: g(["null", "b"]) });')).toEqual([]);
});

test("no file names a folder of one machine", () => {
  const names = execFileSync("git", ["ls-files", "-z"], { encoding: "utf8" }).split("\0");
  const texts = names.filter((name) => /\.(ts|mjs|js|md|yaml|json)$|^\.ci\/run$/.test(name));
  expect(texts.length).toBeGreaterThan(50);
  const files = texts.map((path) => ({ path, text: readFileSync(path, "utf8") }));
  expect(files.flatMap(privateFolders)).toEqual([]);
});

test("such a folder is reported", () => {
  const path = ["", "home", "somebody"].join("/");
  expect(privateFolders({ path: "a.md", text: `one\nsee \`${path}/plan\`` })).toEqual([`a.md:2 names \`${path}`]);
  expect(privateFolders({ path: "a.md", text: "src/home/page.ts" })).toEqual([]);
});
