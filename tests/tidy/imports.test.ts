import { expect, test } from "vitest";
import { cycles, type Direction, wrongDirections } from "./imports.ts";
import { filesBelow } from "./source.ts";

const row = (parts: readonly string[], packages: readonly string[] = []): Direction => ({ parts, packages });
const base = ["units", "findings"];

/** The direction of the pipeline. The longer name stands before the shorter. */
const TABLE: ReadonlyMap<string, Direction> = new Map([
  ["units", row([])],
  ["findings", row(["units"])],
  ["geometry", row(["units"])],
  ["parse", row(base, ["yaml"])],
  ["solve/design", row([...base, "geometry", "parse"])],
  ["solve/build", row([...base, "geometry", "parse", "solve/design"])],
  ["solve", row([...base, "geometry", "parse", "solve/design", "solve/build"])],
  ["render", row([...base, "geometry", "solve", "solve/design", "solve/build"], ["pdfkit"])],
  ["compile", row([...base, "parse", "solve", "solve/design", "solve/build", "render"])],
  [
    "cli",
    row(
      [...base, "parse", "solve", "solve/design", "solve/build", "render", "compile"],
      ["commander", "package.json", "node:"],
    ),
  ],
]);

const files = filesBelow("src", ".ts");

test("each part of src imports only the parts before it", () => {
  expect(files.length).toBeGreaterThan(10);
  expect(wrongDirections(files, TABLE)).toEqual([]);
});

test("no imports go in a circle", () => {
  expect(cycles(files)).toEqual([]);
});

test("an import against the direction is reported, also of a type, a re-export and a lazy one", () => {
  const bad = (text: string) => wrongDirections([{ path: "src/solve/design/x.ts", text }], TABLE);
  expect(bad('import type { Page } from "../../render/document.ts";')).toEqual([
    "src/solve/design/x.ts may not import src/render/document.ts",
  ]);
  expect(bad('export type * from "../build.ts";')).toHaveLength(1);
  expect(bad('const late = await import("../../cli/main.ts");')).toHaveLength(1);
  expect(bad('type Late = import("../../cli/main.ts").Late;')).toHaveLength(1);
  expect(bad('import { readFileSync } from "node:fs";')).toEqual([
    "src/solve/design/x.ts may not import the package node:",
  ]);
  expect(bad('import { add } from "../../units/rational.ts";')).toEqual([]);
});

test("a circle of imports is reported", () => {
  const circle = [
    { path: "src/units/a.ts", text: 'import "./b.ts";' },
    { path: "src/units/b.ts", text: 'export type * from "./a.ts";' },
  ];
  expect(cycles(circle)).toEqual(["src/units/a.ts -> src/units/b.ts -> src/units/a.ts"]);
});
