import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { main } from "../../src/cli/main.ts";
import { type FakeOptions, fakeWorld } from "./fake-world.ts";

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the signs that colour a terminal
const COLOURS = /\u001b\[[\d;]*m/g;
const BENCH = readFileSync("examples/boot-bench.yaml", "utf8");
const DESK = readFileSync("examples/loan-desk.yaml", "utf8");
const SHED = readFileSync("examples/workshops/tool-library.yaml", "utf8");

async function run(args: readonly string[], options: FakeOptions = {}) {
  const world = fakeWorld({ files: { "a/bench.yaml": BENCH, "a/desk.yaml": DESK, "shed.yaml": SHED }, ...options });
  const exit = await main(args, world);
  return { exit, out: world.printed(), err: world.told(), files: world.files };
}

test("layouts, proof and purchases in 80 columns; colour changes no letter", async () => {
  for (const plan of ["a/bench.yaml", "a/desk.yaml"]) {
    const plain = await run(["layout", plan, "--workshop", "shed.yaml"]);
    expect([plain.exit, plain.err]).toEqual([0, ""]);
    const lines = plain.out.split("\n");
    expect(Math.max(...lines.map((line) => [...line].length))).toBeLessThanOrEqual(80);
    expect(plain.out).toMatch(/ends in parts\n/);
    expect(plain.out).toMatch(/kerf 3\/32 in/);
    expect(plain.out).toMatch(/\nTo buy\n/);
    const coloured = (await run(["layout", plan, "--workshop", "shed.yaml"], { terminal: { columns: 80 } })).out;
    expect(coloured).toContain("\u001b[1;36m");
    expect(coloured.replace(COLOURS, "")).toBe(plain.out);
  }
});

test("a workshop.yaml beside the plan is found, another can be named, and none can be asked for", async () => {
  const files = { "a/bench.yaml": BENCH, "a/workshop.yaml": "workshop: 1\nkerf: 1/16\n", "shed.yaml": SHED };
  const kerf = async (...more: string[]) =>
    /kerf (\S+) in/.exec((await run(["layout", "a/bench.yaml", ...more], { files })).out)?.[1];
  expect(await kerf()).toBe("1/16");
  expect(await kerf("--workshop", "shed.yaml")).toBe("3/32");
  expect(await kerf("--no-workshop")).toBe("1/8");
  const missing = await run(["layout", "a/bench.yaml", "--workshop", "no.yaml"], { files });
  expect([missing.exit, missing.out]).toEqual([2, ""]);
  expect(missing.err).toContain("no.yaml");
});

test("a finding in the workshop shows the line of its own file, in every form", async () => {
  const files = { "a/bench.yaml": BENCH, "a/workshop.yaml": "workshop: 1\nkref: 1/16\n" };
  const { exit, out, err } = await run(["layout", "a/bench.yaml"], { files });
  expect([exit, out]).toEqual([1, ""]);
  expect(err).toContain("┌─ a/workshop.yaml:2:1");
  expect(err).toContain("2│ kref: 1/16");
  const short = await run(["check", "a/bench.yaml", "--format", "short"], { files });
  expect(short.out).toMatch(/^a\/workshop\.yaml:2:1: error/);
});

test("as JSON it is data; with other sizes it is another layout", async () => {
  const json = JSON.parse((await run(["layout", "a/bench.yaml", "--format", "json"])).out);
  expect(Object.keys(json)).toEqual(["layouts", "layoutProof", "purchases"]);
  const wide = (await run(["layout", "a/bench.yaml", "--set", "width=58"])).out;
  expect(wide).not.toBe((await run(["layout", "a/bench.yaml"])).out);
});

test("the record tells which workshop was used, the plan is never written over it", async () => {
  const { exit, files } = await run([
    "build",
    "a/bench.yaml",
    "--workshop",
    "shed.yaml",
    "-o",
    "x.pdf",
    "--record",
    "x.json",
  ]);
  expect(exit).toBe(0);
  const record = JSON.parse(Buffer.from(files.get("x.json") ?? []).toString("utf8"));
  expect(record.source.workshop).toMatchObject({ file: "shed.yaml", sha256: expect.stringMatching(/^[0-9a-f]{64}$/) });
  const over = await run(["build", "a/bench.yaml", "--workshop", "shed.yaml", "-o", "shed.yaml"]);
  expect(over.exit).toBe(2);
});
