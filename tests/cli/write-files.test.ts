import {
  chmodSync,
  linkSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeEach, expect, test } from "vitest";
import { Misuse } from "../../src/cli/exit.ts";
import { writeFiles } from "../../src/cli/write-files.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "write-files-"));
});

const at = (name: string) => join(folder, name);
const text = (name: string) => readFileSync(at(name), "utf8");
const write = (names: readonly string[], sources: readonly string[] = [], replace = true) =>
  writeFiles(
    names.map((name) => ({ path: at(name), bytes: Buffer.from(`new ${name}`) })),
    { sources: sources.map(at), replace },
  );

test("writes all files and leaves nothing beside them", () => {
  write(["plan.pdf", "plan.json"]);
  expect(text("plan.pdf")).toBe("new plan.pdf");
  expect(readdirSync(folder).sort()).toEqual(["plan.json", "plan.pdf"]);
});

test("replaces a file and keeps its permissions", () => {
  writeFileSync(at("plan.pdf"), "old");
  chmodSync(at("plan.pdf"), 0o640);
  write(["plan.pdf"]);
  expect(text("plan.pdf")).toBe("new plan.pdf");
  expect(statSync(at("plan.pdf")).mode & 0o777).toBe(0o640);
});

test("replaces a link, and leaves what it points at alone", () => {
  writeFileSync(at("precious"), "old");
  symlinkSync(at("precious"), at("plan.pdf"));
  write(["plan.pdf"]);
  expect(text("precious")).toBe("old");
  expect(lstatSync(at("plan.pdf")).isFile()).toBe(true);
});

test("one output that cannot be written keeps every old file as it was", () => {
  writeFileSync(at("plan.pdf"), "old");
  mkdirSync(at("plan.json"));
  expect(() => write(["plan.pdf", "plan.json"])).toThrow(/plan\.json is a folder/);
  expect(() => write(["plan.pdf", "missing/plan.json"])).toThrow(/there is no such file or folder/);
  expect(text("plan.pdf")).toBe("old");
  expect(readdirSync(folder).sort()).toEqual(["plan.json", "plan.pdf"]);
});

test("never writes over the plan, whatever name it is reached by", () => {
  writeFileSync(at("plan.yaml"), "plan: 1");
  symlinkSync(at("plan.yaml"), at("soft"));
  linkSync(at("plan.yaml"), at("hard"));
  for (const name of ["plan.yaml", "soft", "hard"])
    expect(() => write([name], ["plan.yaml"]), name).toThrow(/is the plan itself/);
  expect(() => write(["plan.pdf"], ["soft"])).not.toThrow();
  expect(text("plan.yaml")).toBe("plan: 1");
});

test("a new plan never replaces what is there, not even a link to nothing", () => {
  writeFileSync(at("plan.yaml"), "old");
  symlinkSync(at("nothing"), at("link"));
  expect(() => write(["plan.yaml"], [], false)).toThrow(/already there/);
  expect(() => write(["link"], [], false)).toThrow(/already there/);
  expect(text("plan.yaml")).toBe("old");
});

test("refuses devices, the folders of devices, two equal names and no name", () => {
  const to =
    (...paths: string[]) =>
    () =>
      writeFiles(
        paths.map((path) => ({ path, bytes: new Uint8Array() })),
        { sources: [], replace: true },
      );
  expect(to("/dev/null")).toThrow(Misuse);
  expect(to("/dev/new-file")).toThrow(/standard output/);
  expect(to("/proc/self/fd/1")).toThrow(Misuse);
  expect(to(at("a"), at("./a"))).toThrow(/same name/);
  expect(to("")).toThrow(/needs a name/);
  expect(to(at("new/"))).toThrow(/is a folder/);
  expect(readdirSync(folder)).toEqual([]);
});

test("a name that the disk cannot hold is told in words", () => {
  expect(() => write(["x".repeat(300)])).toThrow(/the name is too long/);
});
