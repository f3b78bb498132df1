import { expect, test } from "vitest";
import { jumps } from "../../../src/compile.ts";
import { findJumps } from "../../../src/solve/jumps/find.ts";
import { inches } from "../../../src/units/length.ts";
import { toNumber } from "../../../src/units/rational.ts";

const PLAN = `plan: 1
title: Rack for boots
units: inch
outside: { width: { value: 24, from: 20, to: 30 }, depth: 17 1/2, height: 3 }
stock:
  lumber: { sold as: 2x4, wood: spruce }
piece:
  front-rail: { made of: lumber, as: lying flat, grain: across, left: 0, right: outside.right, front: 0, bottom: 0 }
  back-rail: { like: front-rail, front: 14 }
  slat:
    made of: lumber
    as: lying flat
    grain: deep
    front: 0
    back: 17 1/2
    top: 3
    count: "round-up(outside.width / 6 in, 1)"
    spread: across between outside.left and outside.right
    gaps: inside
joints:
  - { join: slat, to: [front-rail, back-rail], with: screws }
`;

// A slat for every 6 in begun: 4 up to 24, 5 from the next sixteenth on. Under 20 in nothing is asked for; at 30 there are still 5. Two rails are cut from the same lumber.
test("a count that follows a size jumps at its mark", () => {
  const { value, findings } = jumps({ name: "plan.yaml", bytes: new TextEncoder().encode(PLAN) }, { sizes: new Map() });
  expect(findings).toEqual([]);
  const [wide] = value ?? [];
  expect(wide?.of).toBe("width");
  expect(wide?.jumps.find(({ what }) => what === "parts of lumber")).toEqual({
    what: "parts of lumber",
    last: inches(24),
    first: inches(385, 16),
    before: "6",
    after: "7",
  });
});

test("every mark between the places looked at is found by halving, and few are solved", () => {
  const asked: number[] = [];
  // Goes up at 12 1/16 and again at 15 5/16.
  const found = findJumps({ low: inches(10), high: inches(20), step: inches(1, 16) }, (mark) => {
    const sixteenths = toNumber(mark) / 25_400;
    asked.push(sixteenths);
    return new Map([["slides", sixteenths > 244 ? "16 in" : sixteenths > 192 ? "14 in" : "12 in"]]);
  });
  expect(found.map(({ last, first, after }) => [last, first, after])).toEqual([
    [inches(12), inches(193, 16), "14 in"],
    [inches(61, 4), inches(245, 16), "16 in"],
  ]);
  // 9 places, and at most 5 halvings of 20 marks for each jump.
  expect(asked.length).toBeLessThanOrEqual(19);
});
