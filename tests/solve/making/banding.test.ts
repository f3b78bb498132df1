import { describe, expect, test } from "vitest";
import { makingOf } from "../../../src/solve/design/making/plain.ts";
import { toInches } from "../../../src/units/index.ts";
import { blanksOf, built, lineOf, plain, shelfCase, stepWith } from "./plans.ts";

const bandsOf = (build: ReturnType<typeof built>, part: string) =>
  makingOf(build.parts.find(({ id }) => id === part) as (typeof build.parts)[number]).banding.map(
    ({ edge, deducted }) => `${edge} ${deducted}`,
  );

describe("whether a band is deducted", () => {
  // Common practice, no source: where the edge bounds a fit, or the band is thicker than 1/32 in.
  test.each([
    ["a thin band on a free edge is not", "front", ["front false"]],
    ["nor one of 1/32 in", "{ edges: front, thick: 1/32 }", ["front false"]],
    ["a thicker one is", "{ edges: front, thick: 3/64 }", ["front true"]],
    ["and one at an end that fits against a side", "[front, left]", ["left true", "front false"]],
    ["and where the maker says so", "{ edges: front, deducted: yes }", ["front true"]],
  ])("%s", (_, bands, expected) => {
    expect(bandsOf(built(shelfCase(`, bands: ${bands}`)), "shelf")).toEqual(expected);
  });
  test("everything is where the part is cut to the opening", () => {
    expect(bandsOf(built(shelfCase(", bands: front, cut: to the opening")), "shelf")).toEqual(["front true"]);
  });
  test("an edge 1/4 in from another part bounds a fit, one further away does not", () => {
    const at = (back: string) => {
      const parts = `  back-panel: { made of: ply, as: upright, facing: front, between: [left-side, right-side], front: ${back}, bottom: 23/32, top: 20 - 23/32 }`;
      const joints = "  - { join: [left-side, right-side], to: back-panel, with: screws }";
      return bandsOf(built(shelfCase(", bands: back", { parts, joints })), "shelf");
    };
    expect(at("11 1/4")).toEqual(["back true"]);
    expect(at("11 9/32")).toEqual(["back false"]);
  });
});

describe("a shelf with a strip of 1/8 in at its front, and tape at an end", () => {
  const build = built(shelfCase(", edge banding: { edges: [front, left], with: maple strip, thick: 1/8 }"));
  test("the blank is smaller by the bands, the finished size is not: 10 − 1/8, 28 9/16 − 1/8", () => {
    expect(blanksOf(build, "shelf")).toEqual(["23/32 × 9 7/8 × 28 7/16 as finished"]);
    expect(["width", "length"].map((size) => toInches(lineOf(build, "shelf")[size as "width" | "length"]))).toEqual([
      10, 28.5625,
    ]);
    expect(lineOf(build, "shelf").notes).toEqual([
      "left and front banded with maple strip, 1/8 in thick, included in the size",
    ]);
  });
  // The end: 9 7/8 + 2; the front, over the band of the end: 28 7/16 + 1/8 + 2; 42 7/16 in all, + 5 % = 44.56 in: 4 feet.
  test("as much is bought as the strips take, an inch over at each end, and 5 %", () => {
    const bought = build.purchases.filter(({ item }) => item === "maple strip, 1/8 in thick");
    expect(bought.map(({ quantity, unit, section }) => [quantity, unit, section])).toEqual([[4, "feet", "supplies"]]);
  });
  test("the end is banded before the front, in a step after the saw and before the screws", () => {
    const step = stepWith(build, "Band the edges");
    expect(step.actions).toEqual([{ do: "band", part: "shelf", edges: ["left", "front"] }]);
    expect(step.number).toBeGreaterThan(stepWith(build, "Cut the parts").number);
    expect(plain(step.text[0] ?? "")).toContain("the left (9 7/8 in) and the front (28 9/16 in)");
  });
});

test("a mirror image is banded at the mirrored edge", () => {
  const wing =
    "  left-wing: { made of: ply, as: lying flat, grain: deep, left: 1, right: 6, front: 1, back: 11, top: 10, bands: right }";
  const parts = `${wing}\n  right-wing: { mirror of: left-wing, about: across }`;
  const joints = "  - { join: [left-wing, right-wing], to: shelf, with: glue }";
  const text = shelfCase("", { parts, joints }).replace(
    "stock:",
    "outside: { width: 30, depth: 12, height: 20 }\nstock:",
  );
  const build = built(text);
  expect(bandsOf(build, "left-wing")).toEqual(["right false"]);
  expect(bandsOf(build, "right-wing")).toEqual(["left false"]);
  // Turned by half they are one part: the band lies at a long edge of both.
  expect(lineOf(build, "right-wing").mark).toBe(lineOf(build, "left-wing").mark);
});

test("parts that differ in their bands stand on lines of their own", () => {
  const build = built(
    shelfCase("").replace("lid-panel: { like: floor-panel,", "lid-panel: { like: floor-panel, bands: front,"),
  );
  expect(lineOf(build, "lid-panel").mark).not.toBe(lineOf(build, "floor-panel").mark);
});

// Common practice, no source: what comes in rolls has glue on it, a strip of wood 1/8 in thick has none.
test("edging is ironed on where it comes in rolls, and glued on where it is a strip of wood; a strip stands over at either end", () => {
  const told = (bands: string) => {
    const build = built(shelfCase(`, edge banding: ${bands}`));
    const bought = build.purchases
      .filter(({ section }) => section === "supplies")
      .map(({ item, note = "" }) => `${item}: ${note}`);
    return {
      text: plain(stepWith(build, "Band the edges").text.join(" ")),
      tools: build.tools.map(({ tool }) => tool),
      bought: plain(bought.join(" ")),
    };
  };
  const tape = told("front");
  expect(tape.text).toContain("stands 1 in over at either end");
  expect(tape.text).toMatch(/household iron/u);
  expect(tape.tools).toContain("Household iron, and a block of wood");
  expect(tape.bought).toContain("with glue on its back that an iron melts");
  const strip = told("{ edges: front, with: maple strip, thick: 1/8 }");
  expect(strip.text).toMatch(/Spread glue on the edge.*masking tape drawn tight/u);
  expect(strip.text).not.toContain("iron");
  expect(strip.bought).toMatch(/wood glue.*to be glued on|to be glued on.*wood glue/u);
});
