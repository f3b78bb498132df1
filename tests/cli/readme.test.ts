import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { EXIT } from "../../src/cli/exit.ts";
import { main } from "../../src/cli/main.ts";
import { STARTER } from "../../src/cli/starter.ts";
import { fakeWorld } from "./fake-world.ts";

const README = readFileSync("README.md", "utf8");
const manifest = JSON.parse(readFileSync("package.json", "utf8"));

/** The indented blocks of a Markdown text, without their indentation. */
const blocks = README.split(/\n(?! {4}|\n)/)
  .flatMap((part) => /\n( {4}[\s\S]+)/.exec(part)?.[1] ?? [])
  .map((block) => block.replace(/^ {4}/gm, "").trimEnd());

test("the message in the README is what the program prints", async () => {
  const world = fakeWorld({ files: { "bench.yaml": STARTER.replace("as: lying flat", "sa: lying flat") } });
  await main(["check", "bench.yaml"], world);
  expect(blocks).toContain(world.printed().trimEnd());
});

test("the plan in the README is complete, short, and the one that new begins with", async () => {
  const plan = /```yaml\n([\s\S]*?)```/.exec(README)?.[1] ?? "";
  expect(plan.split("\n").length).toBeLessThanOrEqual(25);
  const records = [];
  for (const text of [plan, STARTER]) {
    const world = fakeWorld({ files: { "a.yaml": text } });
    expect([await main(["check", "a.yaml"], world), world.printed()]).toEqual([0, "Nothing was found.\n"]);
    await main(["build", "a.yaml", "--record", "a.json"], world);
    records.push(JSON.parse(new TextDecoder().decode(world.files.get("a.json"))).parts);
  }
  expect(records[0].length).toBeGreaterThan(3);
  expect(records[0]).toEqual(records[1]);
});

test("every npm command in the README and DEVELOPERS.md exists", () => {
  const texts = [README, readFileSync("DEVELOPERS.md", "utf8")];
  const named = texts.flatMap((text) =>
    [...text.matchAll(/npm (?:run ([a-z]+)|(test))/g)].map((m) => m[1] ?? m[2] ?? ""),
  );
  expect(named.length).toBeGreaterThan(5);
  expect(named.filter((name) => !(name in manifest.scripts))).toEqual([]);
});

test("every command of the program in the README exists, and the exit status is told", async () => {
  const commands = [...README.matchAll(/`boardwright ([a-z]+)/g)].map((m) => m[1] ?? "");
  expect(commands.length).toBeGreaterThan(4);
  for (const command of commands) expect(await main(["help", command], fakeWorld()), command).toBe(0);
  for (const status of Object.values(EXIT)) expect(README).toMatch(new RegExp(`exit status[\\s\\S]*\\b${status}\\b`));
});
