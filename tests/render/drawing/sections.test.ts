import { describe, expect, test } from "vitest";
import { volume } from "../../../src/geometry/solid.ts";
import { outsideOf } from "../../../src/render/drawing/outside.ts";
import { cutOpen } from "../../../src/render/drawing/sections/cut-open.ts";
import { sections } from "../../../src/render/drawing/sections/sections.ts";
import type { Build } from "../../../src/solve/build.ts";
import { toNumber } from "../../../src/units/index.ts";
import { part } from "./fixture/making.ts";
import { bench, pen } from "./fixture.ts";
import { clashes, outside, words } from "./look.ts";

const frame = { x: 60, y: 64, width: 510, height: 600 };

/** A case of 24 × 12 × 30 with a door in front of it, and a shelf whose top is 16 in above the floor. */
const parts = [
  part("left", "A", "Side", "board", { body: [0, 0.75, 0, 0.75, 12, 30] }),
  part("right", "A", "Side", "board", { body: [23.25, 0.75, 0, 24, 12, 30] }),
  part("bottom", "B", "Bottom", "board", { body: [0.75, 0.75, 0, 23.25, 12, 0.75] }),
  part("top", "B", "Top", "board", { body: [0.75, 0.75, 29.25, 23.25, 12, 30] }),
  part("back", "E", "Back", "board", { body: [0.75, 11.75, 0.75, 23.25, 12, 29.25] }),
  part("door", "C", "Door", "board", { body: [0, 0, 0, 24, 0.75, 30] }),
];
const shelf = part("shelf", "D", "Shelf", "board", { body: [0.75, 0.75, 15.25, 23.25, 11.75, 16] });
const build = (more: typeof parts): Build => ({ ...bench(), parts: [...parts, ...more] });

describe("sections", () => {
  test("tell what the outside hides: the shelf, 14 in below the top of the case and 16 in above the floor", () => {
    const drawing = sections(build([shelf]), { frame, pen });
    expect(drawing).not.toBeNull();
    const said = words(drawing?.items ?? []);
    expect(said).toEqual(expect.arrayContaining(["14", "16"]));
    expect(clashes(drawing?.items ?? [])).toEqual([]);
    expect(outside(drawing?.items ?? [], frame)).toEqual([]);
    expect(drawing?.alt).toContain("Front section");
  });

  test("are left out where there is nothing inside to measure", () => {
    const open = [shelf, ...parts.filter(({ id }) => id !== "door" && id !== "back")];
    expect(sections({ ...bench(), parts: open }, { frame, pen })).toBeNull();
  });

  test("never cut a board along its broad side, and leave what lies behind the cut", () => {
    // In the middle of its width the case has a divider, so the cut goes beside it.
    const divider = part("divider", "F", "Divider", "board", { body: [11.625, 0.75, 0.75, 12.375, 11.75, 29.25] });
    const all = [...parts, divider];
    const around = outsideOf(all);
    if (!around) throw new Error("nothing there");
    const opened = cutOpen(all, around, 0, 1);
    expect(toNumber(opened.at) / 406_400).toBe(10);
    const left = new Map(opened.parts.map(({ id, solid }) => [id, toNumber(volume(solid)) / 406_400 ** 3]));
    expect(left.has("right")).toBe(false);
    expect(left.has("divider")).toBe(false);
    expect(left.get("bottom")).toBeCloseTo(9.25 * 11.25 * 0.75, 6);
  });
});
