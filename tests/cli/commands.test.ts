import { readFileSync } from "node:fs";
import { Ajv } from "ajv";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { main } from "../../src/cli/main.ts";
import { STARTER } from "../../src/cli/starter.ts";
import { catalogue } from "../../src/findings/catalogue.ts";
import { LIMITS } from "../../src/parse/limits.ts";
import { type FakeOptions, fakeWorld } from "./fake-world.ts";

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the signs that colour a terminal
const COLOURS = /\u001b\[[\d;]*m/g;
const BENCH = readFileSync("examples/boot-bench.yaml", "utf8");
const BROKEN = BENCH.replace("as: lying flat", "sa: lying flat").replace("with: screws", "with: scerws");

async function run(args: readonly string[], options: FakeOptions = {}) {
  const world = fakeWorld({ files: { "bench.yaml": BENCH, "broken.yaml": BROKEN }, ...options });
  const exit = await main(args, world);
  return { exit, out: world.printed(), err: world.told(), files: world.files };
}

test("check of a good plan says so, exit status 0", async () => {
  expect(await run(["check", "bench.yaml"])).toMatchObject({ exit: 0, out: "Nothing was found.\n", err: "" });
  expect(await run(["check", "-"], { input: BENCH })).toMatchObject({ exit: 0 });
});

test("check prints the lines, the count and the way on, exit status 1", async () => {
  const { exit, out, err } = await run(["check", "broken.yaml"]);
  expect([exit, err]).toEqual([1, ""]);
  expect(out).toContain("┌─ broken.yaml:");
  expect(out).toContain("sa: lying flat");
  expect(out).toMatch(/\n2 errors\. `boardwright explain [a-z-]+` tells more\.\n$/);
});

test("short is one line a finding, json is data", async () => {
  const { out } = await run(["check", "broken.yaml", "--format", "short"]);
  for (const line of out.trimEnd().split("\n")) expect(line).toMatch(/^broken\.yaml:\d+:\d+: error: .+ \[[a-z-]+\]$/);
  const json = JSON.parse((await run(["check", "broken.yaml", "--format", "json"])).out);
  expect(json.source).toBe("broken.yaml");
  expect(json.findings.length).toBe(out.trimEnd().split("\n").length);
  expect(JSON.parse((await run(["check", "bench.yaml", "--format", "json"])).out).findings).toEqual([]);
});

test("colour only for a terminal that wants it, and it changes no letter", async () => {
  const terminal = { columns: 80 };
  const coloured = (await run(["check", "broken.yaml"], { terminal })).out;
  const plain = (await run(["check", "broken.yaml"])).out;
  expect(coloured).toContain("\u001b[1;31merror:");
  expect(coloured.replace(COLOURS, "")).toBe(plain);
  for (const env of [{ NO_COLOR: "1" }, { TERM: "dumb" }])
    expect((await run(["check", "broken.yaml"], { terminal, env })).out).toBe(plain);
  for (const args of [
    ["--no-color", "check", "broken.yaml"],
    ["check", "broken.yaml", "--no-color"],
  ])
    expect((await run(args, { terminal })).out).toBe(plain);
  // no-color.org: an empty value is no wish.
  expect((await run(["check", "broken.yaml"], { terminal, env: { NO_COLOR: "" } })).out).toBe(coloured);
});

test("what is printed fits the terminal", async () => {
  for (const columns of [50, 80]) {
    const { out } = await run(["check", "broken.yaml"], { terminal: { columns } });
    const widths = out.split("\n").map((line) => line.replace(COLOURS, "").length);
    expect(Math.max(...widths)).toBeLessThanOrEqual(columns);
  }
});

test("build writes the PDF and the record; --set and --paper are obeyed", async () => {
  const args = ["build", "bench.yaml", "--set", "width=48", "--set", "width = 50", "--record", "bench.json"];
  const { exit, out, err, files } = await run([...args, "--paper", "a4"]);
  expect([exit, out]).toEqual([0, ""]);
  expect(err).toMatch(/^Wrote bench\.pdf and bench\.json \(\d+ pages\)\.\n$/);
  const record = JSON.parse(new TextDecoder().decode(files.get("bench.json")));
  // 50 in is 1270 mm, and A4 is 595.28 by 841.89 points.
  expect(record.bounds.max[0]).toBe(1270);
  expect(Buffer.from(files.get("bench.pdf") ?? []).toString("latin1")).toMatch(/\/MediaBox \[0 0 595\.28 841\.89\]/);
});

test("a setting that the plan does not have is an error of the plan", async () => {
  const { exit, out } = await run(["check", "bench.yaml", "--set", "widht=48", "--format", "short"]);
  expect(exit).toBe(1);
  expect(out).toContain("widht");
});

test("build of a plan with errors writes nothing", async () => {
  const { exit, err, files } = await run(["build", "broken.yaml", "--record", "broken.json"]);
  expect(exit).toBe(1);
  expect(err).toContain("No plan was written.");
  expect([...files.keys()]).toEqual(["bench.yaml", "broken.yaml"]);
});

test("every finding and the limits can be explained, within the width of the terminal", async () => {
  for (const { name, explain } of catalogue) {
    const { exit, out } = await run(["explain", name], { terminal: { columns: 70 } });
    expect(exit).toBe(0);
    expect(out).toContain(explain.slice(0, 30));
    expect(out).toContain("This gives it:");
    expect(out).toMatch(/^ {2}> /m);
  }
  const limits = (await run(["explain", "limits"])).out;
  for (const { of } of Object.values(LIMITS)) expect(limits).toContain(of);
  const list = (await run(["explain"])).out;
  for (const { name } of catalogue) expect(list).toContain(`\n  ${name}\n`);
});

test("a finding that does not exist is wrong use, with the nearest name", async () => {
  const { exit, err } = await run(["explain", "unknown-kye"]);
  expect(exit).toBe(2);
  expect(err).toContain("unknown-key");
});

test("the schemas are JSON Schemas, and that of the language takes every example", async () => {
  const ajv = new Ajv({ strict: false });
  const plan = ajv.compile(JSON.parse((await run(["schema"])).out));
  expect(plan(parse(BENCH)), JSON.stringify(plan.errors)).toBe(true);
  expect(plan({ plan: 1, title: "x", pieces: {} })).toBe(false);
  const { files } = await run(["build", "bench.yaml", "--record", "r.json"]);
  const record = new Ajv2020({ strict: false }).compile(JSON.parse((await run(["schema", "--record"])).out));
  expect(record(JSON.parse(new TextDecoder().decode(files.get("r.json")))), JSON.stringify(record.errors)).toBe(true);
});

test("new writes a plan in which nothing is found, and never over a file", async () => {
  const printed = (await run(["new"])).out;
  const { exit, files, err } = await run(["new", "first.yaml"]);
  expect(exit).toBe(0);
  expect(err).toContain("boardwright build first.yaml");
  expect(new TextDecoder().decode(files.get("first.yaml"))).toBe(printed);
  expect(await run(["check", "-"], { input: printed })).toMatchObject({ exit: 0, out: "Nothing was found.\n" });
  expect(await run(["new", "bench.yaml"])).toMatchObject({ exit: 2 });
});

test.each(["width=24", "width=48", "height=14", "height=19", "overhang=2 1/2"])(
  "the first plan also works with %s",
  async (set) => {
    const { exit, out } = await run(["check", "-", "--set", set], { input: STARTER });
    expect([exit, out]).toEqual([0, "Nothing was found.\n"]);
  },
);

test("--for is a name of one line", async () => {
  const options = { files: { "bench.yaml": BENCH } };
  for (const name of ["", "  ", "x".repeat(61)])
    expect(await run(["build", "bench.yaml", "--for", name], options), name).toMatchObject({ exit: 2 });
});
