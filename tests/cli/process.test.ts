import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { program, ROOT } from "./program.ts";

const PLAN = `${ROOT}/examples/old-plans/wall-shelf.yaml`;
let cwd = "";
beforeEach(() => {
  cwd = mkdtempSync(join(tmpdir(), "boardwright-"));
});
afterEach(() => rmSync(cwd, { recursive: true }));

test("build writes the plan's PDF into the current folder, and nothing else", () => {
  const { exit, out, err } = program(["build", PLAN], { cwd });
  expect([exit, out]).toEqual([0, ""]);
  expect(err).toMatch(/Wrote wall-shelf\.pdf \(\d+ pages\)\./);
  expect(readdirSync(cwd)).toEqual(["wall-shelf.pdf"]);
  expect(readFileSync(join(cwd, "wall-shelf.pdf"), "latin1")).toMatch(/^%PDF-1\.\d[\s\S]*%%EOF\s*$/);
});

test("a plan from standard input goes to standard output, the same bytes as through files", () => {
  program(["build", PLAN, "-o", "a.pdf", "--record", "a.json"], { cwd });
  const args = [`${ROOT}/bin/boardwright.js`, "build", "-"];
  const { stdout, status } = spawnSync(process.execPath, args, { input: readFileSync(PLAN), cwd });
  expect(status).toBe(0);
  expect(stdout.equals(readFileSync(join(cwd, "a.pdf")))).toBe(true);
  expect(JSON.parse(readFileSync(join(cwd, "a.json"), "utf8")).source.file).toBe("wall-shelf.yaml");
});

test("place, time zone, language and the clock of the file change no byte", () => {
  const env = { TZ: "Asia/Tokyo", LANG: "tr_TR.UTF-8", LC_ALL: "tr_TR.UTF-8" };
  program(["build", PLAN, "-o", "a.pdf", "--record", "a.json"], { cwd });
  program(["build", PLAN, "-o", "b.pdf", "--record", "b.json"], { cwd, env });
  for (const kind of ["pdf", "json"])
    expect(readFileSync(join(cwd, `a.${kind}`)).equals(readFileSync(join(cwd, `b.${kind}`))), kind).toBe(true);
});

test("a plan with errors leaves the last good PDF alone, exit status 1", () => {
  const broken = readFileSync(PLAN, "utf8").replace("made of: boards", "made of: bords");
  writeFileSync(join(cwd, "shelf.yaml"), broken);
  writeFileSync(join(cwd, "shelf.pdf"), "last good");
  const { exit, err } = program(["build", "shelf.yaml"], { cwd });
  expect(exit).toBe(1);
  expect(err).toContain("bords");
  expect(readFileSync(join(cwd, "shelf.pdf"), "utf8")).toBe("last good");
  expect(readdirSync(cwd).sort()).toEqual(["shelf.pdf", "shelf.yaml"]);
});

test("the plan itself is never written over", () => {
  writeFileSync(join(cwd, "shelf.yaml"), readFileSync(PLAN));
  for (const args of [
    ["-o", "shelf.yaml"],
    ["--record", "shelf.yaml"],
  ]) {
    const { exit, err } = program(["build", "shelf.yaml", ...args], { cwd });
    expect(exit).toBe(2);
    expect(err).toContain("is the plan itself");
  }
  expect(readFileSync(join(cwd, "shelf.yaml"))).toEqual(readFileSync(PLAN));
  expect(readdirSync(cwd)).toEqual(["shelf.yaml"]);
});

test("SOURCE_DATE_EPOCH dates the file, and nonsense in it is wrong use", () => {
  const args = ["build", PLAN, "-o", "-"];
  const at = (SOURCE_DATE_EPOCH: string) => program(args, { cwd, env: { SOURCE_DATE_EPOCH } });
  // 1,000,000,000 seconds after 1970 is 2001-09-09, 01:46:40 UTC.
  expect(at("1000000000").out).toContain("D:20010909");
  expect(at("today").exit).toBe(2);
});

test("a reader who stops reading is no fault", () => {
  const quiet = spawnSync("bash", [
    "-c",
    `"$0" "$1" schema | head -c 1; echo "\${PIPESTATUS[0]}"`,
    process.execPath,
    `${ROOT}/bin/boardwright.js`,
  ]);
  expect(quiet.stdout.toString()).toBe("{0\n");
  expect(quiet.stderr.toString()).toBe("");
});

test("a disk that is full is told in words, exit status 2", () => {
  const full = spawnSync("bash", ["-c", `"$0" "$1" schema >/dev/full`, process.execPath, `${ROOT}/bin/boardwright.js`]);
  expect(full.status).toBe(2);
  expect(full.stderr.toString()).toContain("the disk is full");
});

test("a source without an end is read only as far as a plan may be long", () => {
  const { exit, out } = program(["check", "/dev/zero"], { cwd });
  expect(exit).toBe(1);
  expect(out).toContain("the limit is 1048576 bytes");
});
