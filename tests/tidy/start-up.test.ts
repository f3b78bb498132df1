import { build } from "esbuild";
import { expect, test } from "vitest";
import { loadedWith } from "./start-up.ts";

const { metafile } = await build({
  entryPoints: ["src/cli/start.ts"],
  outdir: "out/start-up",
  bundle: true,
  splitting: true,
  format: "esm",
  platform: "node",
  packages: "external",
  metafile: true,
  write: false,
});

test("help, version and wrong use load no phase and no library but the one for commands", () => {
  const { files, packages } = loadedWith(metafile, "src/cli/start.ts");
  expect(files).toContain("src/cli/commands.ts");
  expect(files.filter((file) => /^src\/(parse|solve|render|geometry|compile)/.test(file))).toEqual([]);
  expect(packages).toEqual(["commander"]);
});

test("check loads nothing that only drawing needs", () => {
  const { files, packages } = loadedWith(metafile, "src/cli/commands/check.ts");
  expect(files).toContain("src/solve/build/index.ts");
  expect(files.filter((file) => file.startsWith("src/render/"))).toEqual([]);
  expect(packages).not.toContain("pdfkit");
});

test("what build draws with is found by the same look", () => {
  expect(loadedWith(metafile, "src/render/write/pdf.ts").packages).toContain("pdfkit");
});
