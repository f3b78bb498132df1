import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";
import { expect, test } from "vitest";
import { render } from "../../../src/render/index.ts";
import { writePdf } from "../../../src/render/write/pdf.ts";
import { bench, manyParts } from "../fixture/bench.ts";
import { fonts } from "../fonts.ts";

const path = (relative: string): string => fileURLToPath(new URL(relative, import.meta.url));
const options = { paper: "letter", date: "2025-03-01", version: "0.0.0" } as const;
const hash = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

async function bytesOf(build: Parameters<typeof render>[0]): Promise<Uint8Array> {
  const { value } = render(build, options);
  if (value === undefined) throw new Error("no document");
  return writePdf(value, fonts);
}

test("the same plan gives the same bytes in every process, time zone and country", async () => {
  // Beside the packages, so that they are found.
  const program = path(`../../../node_modules/.print-bench-${process.pid}.mjs`);
  try {
    buildSync({
      entryPoints: [path("./print-bench.ts")],
      bundle: true,
      platform: "node",
      format: "esm",
      external: ["pdfkit"],
      outfile: program,
    });
    const run = (env: Record<string, string>): string =>
      execFileSync(process.execPath, [program, path("../../../assets/fonts")], { env, encoding: "utf8" });
    const first = run({ TZ: "UTC", LANG: "en_US.UTF-8" });
    expect(first).toMatch(/^[0-9a-f]{64}$/);
    expect(run({ TZ: "Asia/Tokyo", LANG: "tr_TR.UTF-8", LC_ALL: "tr_TR.UTF-8" })).toBe(first);
    expect(hash(await bytesOf(bench()))).toBe(first);
  } finally {
    rmSync(program, { force: true });
  }
});

test("what was printed before does not matter, and another plan gives other bytes", async () => {
  const before = hash(await bytesOf(bench()));
  const other = hash(await bytesOf(manyParts(3)));
  expect(hash(await bytesOf(bench()))).toBe(before);
  expect(other).not.toBe(before);
});
