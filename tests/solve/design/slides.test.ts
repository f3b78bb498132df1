import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { drawerExample } from "../../../src/findings/drawer-example.ts";
import type { Build, Check } from "../../../src/solve/build.ts";
import { screwPlaces } from "../../../src/solve/design/slides/run.ts";
import { inches, millimetres, toMillimetres } from "../../../src/units/length.ts";
import { subtract, ZERO } from "../../../src/units/rational.ts";
import { solveText } from "../../examples/compiled.ts";

const checksOf = (text: string, rule: string): readonly Check[] =>
  (solveText(text).build?.checks ?? []).filter((check) => check.rule === rule);

describe("a slide's screws", () => {
  // 37 mm to the first, 32 mm between holes: the 32 mm system.
  test.each([10, 14, 18, 22, 28])("stand on its holes, none beyond its ends: %d in", (long) => {
    for (const shifted of [0, 1, 2] as const) {
      const places = screwPlaces(inches(long), shifted).map(toMillimetres);
      expect(places.length).toBe(long <= 18 ? 3 : long <= 22 ? 4 : 5);
      for (const place of places) {
        expect((place - 37) % 32).toBeCloseTo(0, 9);
        expect(place).toBeGreaterThanOrEqual(37);
        expect(place).toBeLessThanOrEqual(long * 25.4 - 30);
      }
      expect(new Set(places).size).toBe(places.length);
    }
  });
  test("other holes are offered, so that two slides may hang on one partition", () => {
    const places = (shifted: 0 | 1 | 2) => screwPlaces(millimetres(400), shifted).map(toMillimetres);
    expect(places(0).filter((place) => places(1).includes(place))).toEqual([]);
    expect(places(1).filter((place) => places(2).includes(place))).toEqual([]);
  });
});

describe("how far a drawer comes out", () => {
  test.each([
    ["full", 18],
    ["three quarters", 13.5],
    ["over", 19],
  ])("%s", (extension, range) => {
    const { build } = solveText(drawerExample(["load: 100 lb", `load: 100 lb, extension: ${extension}`]));
    expect(build?.motions.map((motion) => motion.range / 406_400)).toEqual([range]);
  });
  test("with everything in it, and half of each slide", () => {
    const { build } = solveText(drawerExample());
    const [motion] = build?.motions ?? [];
    expect(motion?.moves.filter((id) => id.startsWith("planes."))).toHaveLength(7);
    const slides = (build?.hardware ?? []).filter(({ joint }) => joint !== null);
    expect(slides.map(({ id }) => [/drawer$/.test(id), motion?.moves.includes(id)])).toEqual([
      [false, false],
      [true, true],
      [false, false],
      [true, true],
    ]);
    expect(motion?.poses[0]?.shift).toEqual([0, 0, 0]);
    expect(motion?.poses.at(-1)?.shift).toEqual([0, -18 * 406_400, 0]);
  });
});

describe("checks", () => {
  test("the lap of a frame is what packing makes up: 1 15/32 - 23/32 = 3/4 in", () => {
    const text = readFileSync(new URL("plans/framed-drawer.yaml", import.meta.url), "utf8");
    const finding = solveText(text.replace("    packing: packing\n", "")).findings.find(
      ({ rule }) => rule === "slide-needs-packing",
    );
    expect(finding?.help).toMatch(/packing 3\/4 in thick/);
  });
  test("what wants packing is not told to be too wide besides", () => {
    const text = readFileSync(new URL("plans/framed-drawer.yaml", import.meta.url), "utf8");
    const rules = solveText(text.replace("    packing: packing\n", "")).findings.map(({ rule }) => rule);
    expect(rules).toContain("slide-needs-packing");
    expect(rules).not.toContain("slide-side-space");
  });
  // The slide maker's 1/2 in is 12.7 mm, less than 13.2 mm (the usual kind's range).
  test("packing 1/32 in thicker than the lap still leaves the slides what they want", () => {
    const text = readFileSync(new URL("plans/framed-drawer.yaml", import.meta.url), "utf8");
    const thicker = solveText(text.replace("planed to: 3/4, widths: 1 1/2", "planed to: 25/32, widths: 1 1/2"));
    expect(thicker.findings.map(({ rule }) => rule)).not.toContain("slide-side-space");
    const body = (id: string) => thicker.build?.design.parts.find((part) => part.id.endsWith(id))?.body;
    const gap = toMillimetres(
      subtract(body("chisels.left-side")?.low[0] ?? ZERO, body("left-packing")?.high[0] ?? ZERO),
    );
    expect(gap).toBeGreaterThanOrEqual(12.7);
    expect(gap).toBeLessThan(13.7);
  });
  test("a drawer weighs its wood and its contents", () => {
    const [check] = checksOf(drawerExample(), "slide-overloaded");
    const build = solveText(drawerExample()).build as Build;
    const own = build.parts.filter(({ id }) => id.startsWith("planes.")).reduce((so, { mass }) => so + mass, 0);
    // 12 lb
    expect(check?.value).toBeCloseTo(own + 12 * 0.45359237, 6);
    // 100 lb
    expect(check?.limit).toBeCloseTo(45.359237, 6);
  });
  test("contents that are not said are clothes, 8.5 lb in each cubic foot (88 FR 28403)", () => {
    const text = drawerExample(["\n    carries: 12 lb", ""]);
    const [check] = checksOf(text, "slide-overloaded");
    const build = solveText(text).build as Build;
    const own = build.parts.filter(({ id }) => id.startsWith("planes.")).reduce((so, { mass }) => so + mass, 0);
    const body = (id: string) => build.design.parts.find((part) => part.id === id)?.body;
    const bottom = body("planes.bottom-panel");
    const mm = (i: 0 | 1 | 2, end: "low" | "high", of = bottom): number =>
      toMillimetres((of as NonNullable<typeof of>)[end][i]);
    const wide = mm(0, "high") - mm(0, "low");
    const deep = mm(1, "high") - mm(1, "low");
    const high = mm(2, "high", body("planes.left-side")) - mm(2, "high");
    const cubicFeet = (wide * deep * high) / 304.8 ** 3;
    expect(check?.value).toBeCloseTo(own + 8.5 * 0.45359237 * cubicFeet, 4);
  });
  test("room for a slide ends at the back, not at the end of the side", () => {
    const [check] = checksOf(drawerExample(), "slide-longer-than-case");
    // 20 in, less the back of 7/32 in and the front of 23/32 in.
    expect(check?.limit).toBeCloseTo((20 - 7 / 32 - 23 / 32) * 25.4, 2);
  });
});

// By hand: 20 deep; a back of 7/32 in rabbets; the inset front 23/32; 1/8 stays behind the box: 20 − 7/32 − 23/32 − 1/8 = 18 15/16.
// The inside is 9 − 2 × 23/32 = 7 9/16 high; 1/4 under the box and 3/4 above it: 6 9/16.
describe("a box that is said longer or higher than its opening has room for", () => {
  const found = (...changes: readonly (readonly [string, string])[]) =>
    solveText(drawerExample(...changes)).findings.map(({ rule, message, help }) => `${rule}: ${message}; ${help}`);
  const said = (line: string) => found(["    carries: 12 lb", `    ${line}\n    carries: 12 lb`]);
  test("is told, with the room that there is and the longest slide that fits", () => {
    const [long, ...rest] = said("long: 24");
    expect(rest).toEqual([]);
    expect(long).toMatch(/^no-room-for-it: 24 in is more than there is room for: 18 15\/16 in; .*fits is 18 in/u);
    expect(long).toContain("5 1/16 in larger");
    expect(found(["load: 100 lb", "load: 100 lb, length: 20"]).join()).toMatch(
      /no-room-for-it: 20 in .*18 15\/16 in; .*fits is 18 in/u,
    );
    expect(said("high: 8").join()).toMatch(/no-room-for-it: 8 in .*: 6 9\/16 in; make it 6 9\/16 in or less/u);
  });
  test("and what the help names has room", () => {
    expect(found(["load: 100 lb", "load: 100 lb, length: 18"])).toEqual([]);
    expect(said("high: 6 9/16")).toEqual([]);
  });
});
