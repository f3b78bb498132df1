import { describe, expect, test } from "vitest";
import { volume } from "../../../src/geometry/solid.ts";
import { outsideOf } from "../../../src/render/drawing/outside.ts";
import { clearHeights } from "../../../src/render/drawing/sections/clear-heights.ts";
import { cutOpen } from "../../../src/render/drawing/sections/cut-open.ts";
import { sections } from "../../../src/render/drawing/sections/sections.ts";
import type { Build } from "../../../src/solve/build.ts";
import { toNumber } from "../../../src/units/index.ts";
import { part } from "./fixture/making.ts";
import { bench, pen } from "./fixture.ts";
import { circlesThatMeet, clashes, outside, struck, words } from "./look.ts";
import { thinLines } from "./thin-lines.ts";

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
  test("tell what the outside hides once: the clear heights under and over the shelf, and not its place besides", () => {
    const drawing = sections(build([shelf]), { frame, pen });
    expect(drawing).not.toBeNull();
    const said = words(drawing?.items ?? []);
    // From 3/4 to 15 1/4 and from 16 to 29 1/4 above the floor.
    expect(said.map((word) => word.replaceAll(/\s/gu, " "))).toEqual(expect.arrayContaining(["14 1⁄2", "13 1⁄4"]));
    expect(said).not.toContain("14");
    expect(said).not.toContain("16");
    expect(clashes(drawing?.items ?? [])).toEqual([]);
    expect(outside(drawing?.items ?? [], frame)).toEqual([]);
    expect(drawing?.alt).toContain("Front section");
  });

  test("give what is cut its mark, each once in a section, off every text, line of a dimension and other mark", () => {
    const drawing = sections(build([shelf]), { frame, pen });
    const said = words(drawing?.items ?? []);
    const count = (mark: string) => said.filter((word) => word === mark).length;
    // Sides are cut in the front section alone, the door and the back in the side section; shelf, top and bottom in both.
    expect(["A", "B", "C", "D", "E"].map(count)).toEqual([1, 2, 1, 2, 1]);
    expect(circlesThatMeet(drawing?.items ?? [], 12)).toBe(0);
    expect(struck(drawing?.items ?? []).filter((word) => !/^[A-E]$/.test(word))).toEqual([]);
  });

  test("measure a side as thick as it is where the door, cut off, stands past it: 3/4 in, not 3/4 + 1/8", () => {
    const closed = [
      ...[0, 23.25].map((x) => part(`side ${x}`, "A", "Side", "board", { body: [x, 0.75, 0.75, x + 0.75, 12, 29.25] })),
      ...[0, 29.25].map((z) => part(`over ${z}`, "B", "Top", "board", { body: [0, 0.75, z, 24, 12, z + 0.75] })),
      part("door", "C", "Door", "board", { body: [-0.125, 0, 0, 24.125, 0.75, 30] }),
    ];
    const drawing = sections({ ...bench(), parts: [...closed, shelf] }, { frame, pen });
    const said = words(drawing?.items ?? []).map((word) => word.replaceAll(/\s/gu, " "));
    expect(said.filter((word) => word === "3⁄4")).toHaveLength(2);
    expect(said).toContain("22 1⁄2");
    expect(said).not.toContain("7⁄8");
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

test("tell the clear heights between shelves: 14 1/2 under a shelf at 15 1/4 in, 13 1/4 over it; none where wood stands between", () => {
  // From the bottom, 3/4, to 15 1/4; from the top of the shelf, 16, to 29 1/4.
  const inInches = (cut: typeof parts) =>
    clearHeights(cut).map(({ from, to }) => (toNumber(to) - toNumber(from)) / 406_400);
  const cut = [...parts.filter(({ id }) => id !== "door" && id !== "back"), shelf];
  expect(inInches(cut).sort()).toEqual([13.25, 14.5]);
  const divider = part("divider", "F", "Divider", "board", { body: [11.625, 0.75, 0.75, 12.375, 11.75, 15.25] });
  expect(inInches([...cut, divider])).toEqual([13.25]);
  // Cleats under the top, 1 × 3/4, are neither in the way nor a ceiling to the ends of the shelf, and nothing stands on them.
  const cleats = [0.75, 22.25].map((x) =>
    part(`cleat ${x}`, "H", "Cleat", "board", { body: [x, 0.75, 28.5, x + 1, 11.75, 29.25] }),
  );
  expect(inInches([...cut, ...cleats]).sort()).toEqual([13.25, 14.5]);
  // A drawer takes up its place, and nothing is measured from it.
  const drawer = part("drawer", "G", "Drawer bottom", "board", { body: [2, 0.75, 20, 22, 11.75, 20.5] });
  expect(clearHeights([...cut, drawer], new Set(["drawer"])).length).toBe(1);
  const said = words(sections(build([shelf]), { frame, pen })?.items ?? []).map((word) => word.replaceAll(/\s/gu, " "));
  expect(said).toEqual(expect.arrayContaining(["13 1⁄4", "14 1⁄2"]));
});

test("the line of a clear height is broken where it runs across what lies behind", () => {
  const rail = part("rail", "F", "Rail", "board", { body: [0.75, 11, 20, 23.25, 11.75, 24] });
  const drawing = sections(build([shelf, rail]), { frame, pen });
  const { across } = thinLines(drawing?.items ?? []);
  expect(words(drawing?.items ?? []).map((word) => word.replaceAll(/\s/gu, " "))).toContain("13 1⁄4");
  expect(across.filter(([x1, , x2]) => x1 === x2)).toEqual([]);
});

test("what ends deep inside has no number beside the section, where it would be read as of what stands at the side", () => {
  // A post 4 wide stands on the bottom, 3/4 in above the floor, and is 17 long: its end is 17 3/4 above the floor.
  const post = part("post", "F", "Post", "board", { body: [8, 3, 0.75, 12, 9, 17.75] });
  const low = part("low shelf", "D", "Shelf", "board", { body: [0.75, 0.75, 24, 23.25, 11.75, 24.75] });
  const drawing = sections(build([low, post]), { frame, pen });
  const said = words(drawing?.items ?? []).map((word) => word.replaceAll(/\s/gu, " "));
  // The shelf, which reaches the sides, is measured from the floor; of the post where it stands and how wide it is.
  expect(said).toEqual(expect.arrayContaining(["24", "7 1⁄4", "4", "11 1⁄4"]));
  expect(said.filter((word) => ["17", "17 3⁄4", "12 1⁄4", "7"].includes(word))).toEqual([]);
});
