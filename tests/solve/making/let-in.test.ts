/** What lies in rabbets between faces that are fast, alone or in a row, is cut to them (common practice, no source). */
import { describe, expect, test } from "vitest";
import { built, plain, stepWith } from "./plans.ts";

/** A case 24 × 20 of 3/4 in wood, its back in rabbets 3/8 in from the inside. */
const backed = (more = ""): string => `plan: 1
title: Case with a back
units: inch
outside: { width: 24, depth: 8, height: 20 }
stock:
  wood: { sold as: 3/4 MDF }
  thin: { sold as: 1/4 hardboard }
piece:
  left-side: { made of: wood, as: upright, facing: left, left: 0, front: 0, back: 8, bottom: 0, top: 20 }
  right-side: { mirror of: left-side, about: across }
  floor-panel: { made of: wood, as: lying flat, grain: across, between: [left-side, right-side], front: 0, back: 8, bottom: 0 }
  lid-panel: { like: floor-panel, bottom: 19 1/4 }
  back-panel: { made of: thin, as: upright, facing: back, between: [left-side, right-side], up: between floor-panel and lid-panel, back: 8${more} }
joints:
  - { join: [left-side, right-side], to: [floor-panel, lid-panel], with: screws, glue: yes }
  - { join: back-panel, to: [left-side, right-side, floor-panel, lid-panel], with: rabbet, deep: 3/8, glue: no, nail: { length: 3/4 } }
`;

test("a back in rabbets is measured to their walls: 24 − 2 × 3/4 + 2 × 3/8 wide, 20 − 2 × 3/4 + 2 × 3/8 high", () => {
  const text = plain(stepWith(built(backed()), "Cut the back panel").text.join(" "));
  expect(text).toMatch(
    /Length: expected 19 1\/4 in\. Measure from one panel \(.\) to the other, between the far walls of their rabbets, at the left and at the right/u,
  );
  expect(text).toMatch(
    /Width: expected 23 1\/4 in\. Measure from one side \(.\) to the other, between the far walls of their rabbets, at the bottom and at the top/u,
  );
  expect(built(backed(", cut: from the list")).later ?? []).toEqual([]);
});

/** A case 24 wide and 21 high inside its rabbets; boards 4 wide lie in them from 1 in above the floor on, `last` of another step above them. */
const boarded = (last: boolean): string => `plan: 1
title: Case with a back of boards
units: inch
outside: { width: 24, depth: 8, height: 21 3/4 }
stock:
  wood: { sold as: 3/4 MDF }
  boards: { wood: poplar, sold as: 4/4, planed to: 3/8, widths: 4 to 9 }
piece:
  left-side: { made of: wood, as: upright, facing: left, left: 0, front: 0, back: 8, bottom: 0, top: 21 3/4 }
  right-side: { mirror of: left-side, about: across }
  floor-panel: { made of: wood, as: lying flat, grain: across, between: [left-side, right-side], front: 0, back: 7 5/8, bottom: 0 }
  lid-panel: { made of: wood, as: lying flat, grain: across, between: [left-side, right-side], front: 0, back: 8, bottom: 21 }
  backing: { made of: boards, as: on edge, facing: back, between: [left-side, right-side], back: 8, up: 4,
    count: 4, spread: up between feet and head }
  upper-backing: { made of: boards, as: on edge, facing: back, between: [left-side, right-side], back: 8, bottom: 17, top: 21 }
  feet: { kind: space, bottom: 0, up: 1, left: 0, right: 24, front: 0, back: 8 }
  head: { kind: space, bottom: 17, up: 1, left: 0, right: 24, front: 0, back: 8 }
joints:
  - { join: [left-side, right-side], to: [floor-panel, lid-panel], with: screws, glue: yes }
  - { join: [backing, upper-backing], to: [left-side, right-side], with: rabbet, deep: 1/2, glue: no, nail: { length: 1 } }
${last ? "order:\n  - { in its own step: upper-backing }\n  - { this: backing, before: upper-backing }\n" : ""}`;

// Yellow poplar, tangential: 0.00289 for each % of moisture (Wood Handbook FPL-GTR-190, Table 13-5); 4 in × 4 % × 0.00289 = 0.046 in, up to 1/16.
describe("boards in a row, the last of which is put in later", () => {
  const build = built(boarded(true));
  test("have gaps that are taken off what stays open: 4 − 3 × 1/16", () => {
    const text = plain(stepWith(build, "Add four backings").text.join(" "));
    expect(text).toContain(
      "At the top 4 in of the rabbets stay open. In dry weather leave 1/16 in between one and the next",
    );
    expect(text).toContain("Then 3 13/16 in stay open; the last one is cut to what does.");
  });
  test("and off the last one, with the room that it has itself", () => {
    const text = plain(stepWith(build, "Cut the upper backing").text.join(" "));
    expect(text).toContain("Length: expected 23 1/2 in.");
    expect(text).toContain(
      "Width: expected 4 in; in dry weather, with gaps in the row before it, 3 3/4 in. Measure from",
    );
    expect(text).toContain("and in dry weather 1/16 in less");
  });
});

test("boards that fill their rabbets in one step have no room for gaps", () => {
  const text = plain(stepWith(built(boarded(false)), "Add five backings").text.join(" "));
  expect(text).toContain("each against the one before.");
  expect(text).not.toContain("dry weather");
});

// Only their length is measured: their width needs no fence of its own.
test("boards that are cut to length later are ripped with the rest, all of one width at one setting", () => {
  const text = plain(stepWith(built(boarded(true)), "Plane the parts from poplar").text.join(" "));
  expect(text).toMatch(
    /Rip four backings \(.\) to width now, all at one setting of the fence: 4 in\. Leave them as long as they are, to be cut to length in step \d+\./u,
  );
  expect(text).toMatch(/Leave the upper backing \(.\) as wide and long as it is, with one edge straight/u);
});
