import { describe, expect, test } from "vitest";
import { toInches } from "../../../src/units/length.ts";
import { solveText } from "../../examples/compiled.ts";

/** 36 in outside, sides and divider of 23/32: two openings of (34 9/16 − 23/32) / 2 = 16 59/64, which is no mark: 16 15/16 and 16 29/32. */
const twoDrawers = (front: string): string => `plan: 1
title: Cabinet with two drawers
units: inch
outside: { width: 36, depth: 12, height: 20 }
stock:
  ply: { sold as: 3/4 birch plywood, measures: 23/32 }
  thin: { sold as: 1/4 birch plywood, measures: 7/32 }
hardware:
  slide: { kind: side slide }
piece:
  cabinet:
    kind: case
    made of: ply
    back: { made of: thin, in: rabbet 3/8 deep }
    openings:
      down:
        - high: 6
          across:
            - { wide: equal, drawer: &drawer { made of: ply, front: { made of: ply${front} }, bottom: thin, slides: slide, pull: knob } }
            - { wide: equal, drawer: *drawer }
        - high: the rest
          across:
            - { wide: equal, door: &door { made of: ply${front}, pull: knob } }
            - { wide: equal, door: *door }
`;

// Trade: what is equal is equal; what is left over widens a gap. Common practice, no source.
describe("equal openings", () => {
  test.each([
    ["inset", "", 16 + 29 / 32 - 1 / 4, 1 / 16],
    ["overlay", ", lies: overlay, overlay: 1/4", 16 + 29 / 32 + 1 / 2, 1 / 16],
  ])("have %s fronts and doors of one size: the narrower's, down to a mark", (_, front, exact, mark) => {
    const { build } = solveText(twoDrawers(front));
    const lines = build?.cutList ?? [];
    for (const name of ["false front", "door"]) {
      const ids = lines.filter((line) => line.name.toLowerCase().endsWith(name)).flatMap(({ parts }) => parts);
      const bodies = ids.map((id) => build?.parts.find((part) => part.id === id)?.body);
      const wide = bodies.map((body) => toInches(body?.high[0] as never) - toInches(body?.low[0] as never));
      expect(wide).toHaveLength(2);
      expect(wide[0]).toBeCloseTo(wide[1] ?? 0, 9);
      const across = wide[0] ?? 0;
      expect(across).toBeLessThanOrEqual(exact + 1e-6);
      expect(across).toBeGreaterThan(exact - mark);
    }
  });
  test("and the case stands back by itself for fronts that lie before it, so that the outside is kept", () => {
    const { build, findings } = solveText(twoDrawers(", lies: overlay, overlay: 1/4"));
    const side = build?.parts.find(({ id }) => id === "cabinet.left-side")?.body;
    expect(toInches(side?.low[1] as never)).toBe(23 / 32);
    expect(findings.map(({ rule }) => rule)).not.toContain("outside-missed");
    const inset = solveText(twoDrawers("")).build?.parts.find(({ id }) => id === "cabinet.left-side")?.body;
    expect(toInches(inset?.low[1] as never)).toBe(0);
  });
  test("their drawers have names, their bottoms and what lies under them as well", () => {
    const { build } = solveText(twoDrawers(""));
    const names = build?.cutList.map(({ name }) => name) ?? [];
    expect(names).toContain("Drawer bottom");
    expect(names).toContain("Level divider");
    expect(names).not.toContain("Fixed shelf");
    const words = build?.steps.flatMap(({ title, text }) => [title, ...text]).join("\n") ?? "";
    expect(words).toContain("drawer 1-2");
    expect(words).not.toMatch(/opening 1|differ in height/u);
  });
});
