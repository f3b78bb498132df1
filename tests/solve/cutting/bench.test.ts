import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";

const bench = (...args: readonly string[]) =>
  spawnSync(process.execPath, ["scripts/bench-cutting.mjs", ...args], { encoding: "utf8" });

test("the benchmark tells bins, bound, proof and seconds of any file of instances", () => {
  const folder = mkdtempSync(join(tmpdir(), "cutting-"));
  const file = join(folder, "two.json");
  const instances = [
    // Two of 6 × 9 do not fit a bin of 10 × 10 beside each other, nor do 6 × 9 and 5 × 9; turned, neither.
    {
      W: 10,
      H: 10,
      items: [
        [6, 9],
        [5, 9],
        [4, 1],
      ],
    },
    {
      W: 10,
      H: 10,
      items: [
        [10, 4],
        [4, 10],
      ],
    },
  ];
  writeFileSync(file, JSON.stringify({ instances }));
  const straight = bench(file, "--json", "--effort", "quick");
  const turned = bench(file, "--json", "--effort", "quick", "--turn");
  rmSync(folder, { recursive: true });
  expect(JSON.parse(straight.stdout)).toMatchObject({
    ...{ effort: "quick", turn: false, bins: 4, bound: 4, proven: 2, seconds: expect.any(Number) },
    instances: [
      { bins: 2, bound: 2, proven: true, seconds: expect.any(Number) },
      { bins: 2, bound: 2, proven: true },
    ],
  });
  expect(JSON.parse(turned.stdout)).toMatchObject({ turn: true, bins: 3, instances: [{ bins: 2 }, { bins: 1 }] });
}, 60_000);

test("a file that is not there is told", () => {
  const { status, stderr } = bench("nowhere.json");
  expect([status, stderr.trim()]).toEqual([1, "nowhere.json: there is no such file"]);
});
