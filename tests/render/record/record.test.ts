import { expect, test } from "vitest";
import { writeRecord } from "../../../src/render/write/record.ts";
import type { Build, Step } from "../../../src/solve/build.ts";
import { audit } from "../../audit/index.ts";
import type { BuildRecord } from "../../audit/record.ts";
import { weigh } from "../../audit/sample/weigh.ts";
import { at, stand } from "./stand.ts";

const meta = { sourceName: "stand.yaml", sourceSha256: "ab".repeat(32) };
const record = (build: Build = stand()): BuildRecord => JSON.parse(writeRecord(build, meta));

test("the record of a sound build keeps every promise", () => {
  const made = record();
  // The parts of the stand have round weights, for the sake of the next tests.
  weigh(made);
  expect(audit(made)).toEqual([]);
});

test("a build with a fault is not mended on the way", () => {
  const build = stand();
  const [rail, cleat] = [build.parts[1], build.parts[2]];
  if (!rail || !cleat) throw new RangeError("the stand has three parts");
  const swapped = {
    ...build,
    parts: build.parts.map((part) => (part === cleat ? { ...cleat, solid: rail.solid } : part)),
  };
  expect(audit(record(swapped)).map((violation) => violation.check)).toContain("parts do not overlap");
});

test("the origin is the front left bottom corner, whatever thirds the plan begins with", () => {
  const { bounds, parts, fasteners, holes } = record();
  expect(bounds).toEqual({ min: [0, 0, 0], max: [340, 50, 300] });
  expect(fasteners[0]?.head.at).toEqual([100, 50, 120]);
  expect(holes[1]?.at).toEqual([100, 30, 120]);
  expect(parts[1]?.features[0]).toMatchObject({ origin: [40, 16, 110], size: [8, 40, 20], into: [-1, 0, 0] });
});

test("a corner that lies on no grid is printed to a millionth, and exactly so", () => {
  const text = writeRecord(stand(), meta);
  // The taper 9 to 1 from 100 up meets the floor 100/9 in.
  expect(text).toContain("[11.111111, 0, 0]");
  expect(text).toContain('"third": 333.333333');
  expect(record().parts[0]?.features[1]).toEqual({
    kind: "taper",
    for: null,
    origin: [0, 0, 100],
    normal: [-0.993884, 0, -0.110432], // 9 and 1 over √82
  });
});

test("mass and its centre are those of the parts", () => {
  const { mass, centreOfMass } = record();
  expect(mass).toBe(0.4);
  // Post by hand: 40 × 40 × 300, less mortise 22 × 8 × 40 at (29, 20, 130), less wedge of the taper.
  const wedge = ((100 / 9) * 100 * 40) / 2;
  const volume = 480_000 - 7040 - wedge;
  const x = (480_000 * 20 - 7040 * 29 - wedge * (100 / 27)) / volume;
  // Rail: 300 × 20 × 60 about 190, and tenon 20 × 8 × 40 about 30. Cleat about 190.
  const rail = (360_000 * 190 + 6400 * 30) / 366_400;
  expect(centreOfMass[0]).toBeCloseTo((0.1 * x + 0.2 * rail + 0.1 * 190) / 0.4, 5);
  expect(centreOfMass[1]).toBeCloseTo((0.1 * 20 + 0.2 * 20 + 0.1 * 40) / 0.4, 5);
});

test("what belongs to the plan is there", () => {
  const made = record();
  expect(made).toMatchObject({
    compiler: null,
    title: 'Stand "one"',
    units: "mm",
    precision: 1,
    source: { file: "stand.yaml", sha256: "ab".repeat(32), choices: {}, measured: {} },
    timeline: {
      bench: 55,
      elapsed: 90,
      lowerBound: 90,
      hoursADay: 8,
      days: [{ first: 1, last: 1, steps: [1, 3], bench: 55, dries: [] }],
    },
    tools: [{ tool: "drill", instead: "" }],
    checks: [{ value: 0.333333, holdsFrom: null }],
    findings: [{ rule: "a-rule", help: "", line: at.line, column: at.column, when: {} }],
    pages: [],
  });
  expect(made.parts.map(({ assembly, species, grain, goodFace }) => [assembly, species, grain, goodFace])).toEqual([
    ["frame", "beech", [0, 0, 1], null],
    ["", "beech", [1, 0, 0], "front"],
    ["", "beech", [1, 0, 0], null],
  ]);
  expect(made.cutList[1]).toMatchObject({ shown: "20 × 60 × 320", quantity: 1, cut: "list" });
  expect(Object.keys(made.source.sizes as object)).toEqual(["third", "__proto__"]);
});

test("wood without grain has none in the record", () => {
  const build = stand();
  const blanks = build.blanks.map((blank) => ({ ...blank, grain: "free" as const }));
  expect(record({ ...build, blanks }).parts.map((part) => part.grain)).toEqual([null, null, null]);
});

test("the same build gives the same text, in whatever order its objects were filled", () => {
  const text = writeRecord(stand(), meta);
  const turned = (value: unknown): unknown => {
    if (value instanceof Map || typeof value !== "object" || value === null) return value;
    if (Array.isArray(value)) return value.map(turned);
    return Object.fromEntries(
      Object.entries(value)
        .reverse()
        .map(([key, item]) => [key, turned(item)]),
    );
  };
  const { steps, layouts, purchases, ...rest } = stand();
  const mixed = {
    ...rest,
    ...(turned({ steps, layouts, purchases }) as Pick<Build, "steps" | "layouts" | "purchases">),
  };
  expect(writeRecord(mixed, meta)).toBe(text);
  expect(text.endsWith("}\n")).toBe(true);
});

test("the pages and the version are told where they are given", () => {
  const pages = [{ number: 1, kind: "cover", of: ["the piece"] }];
  const made: BuildRecord = JSON.parse(writeRecord(stand(), { ...meta, version: "1.2.3", pages }));
  expect(made.pages).toEqual(pages);
  expect(made.compiler).toBe("1.2.3");
});

test("a build without parts has a record too", () => {
  const empty = { ...stand(), parts: [], steps: [] as readonly Step[] };
  expect(record(empty)).toMatchObject({ bounds: { min: [0, 0, 0], max: [0, 0, 0] }, centreOfMass: [0, 0, 0], mass: 0 });
});
