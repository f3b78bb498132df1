/** What is done where the piece will stand or hang, and in which order. Common practice, no source. */
import { describe, expect, it } from "vitest";
import { solveText, textOf } from "../../examples/compiled.ts";
import { plain, stepWith } from "./plans.ts";

const solved = (name: string) => {
  const { build } = solveText(textOf(name));
  if (!build) throw new Error(name);
  return build;
};
const chest = solved("overalls-chest");
const spices = solved("spice-cabinet");
const textIn = (build: typeof chest, title: string): string => plain(stepWith(build, title).text.join("\n"));

describe("a strap to the wall", () => {
  const text = textIn(chest, "Fit the wall straps");
  it("has its stud found before its bracket is fixed, and the bit named for a hole that is bored anew", () => {
    const [stud, fixed] = [text.indexOf("find and mark the studs"), text.indexOf("Fix them to the back face")];
    expect([stud >= 0, stud < fixed]).toEqual([true, true]);
    // As the table of holes has them: 3/32 in, stop at 3/8.
    expect(text).toContain("bore two 3/32 in holes 3/8 in deep for it there");
  });
  it("is told of once", () => {
    expect(chest.advice?.room.map(({ head }) => head)).not.toContain("At the wall.");
  });
  it("speaks of no piece but this", () => {
    expect(stepWith(chest, "Fit the wall straps").cautions.join(" ")).not.toMatch(/chest of drawers/u);
  });
});

describe("a strap on a top that came off for finishing", () => {
  const strap = "fit: strap, to: lid.slab, face: top, deep: lid.slab.back - 1, across: lid.slab";
  const { build } = solveText(
    textOf("overalls-chest").replaceAll(
      /fit: strap, to: chest\.back-panel, across: chest\.back-panel(\.\w+ . 6), up: [^}]*/gu,
      `${strap}$1 `,
    ),
  );
  it("is fixed when the top is on again", () => {
    const titles = (build?.steps ?? []).map(({ title }) => plain(title));
    const at = (words: string): number => titles.findIndex((title) => title.startsWith(words));
    expect(at("Put the slab")).toBeGreaterThan(0);
    expect(at("Fit the wall straps")).toBeGreaterThan(at("Put the slab"));
    expect(at("Put the five overalls drawers")).toBeGreaterThan(at("Fit the wall straps"));
  });
});

describe("what lies loose in a case that is tied to the wall", () => {
  const books = solved("manuals-bookcase");
  it("goes in when that stands level and is tied", () => {
    const strap = stepWith(books, "Fit the wall strap");
    expect(strap.number).toBeLessThan(stepWith(books, "Put four loose shelves").number);
    expect(plain(strap.text[0] ?? "")).toMatch(/without what lies loose in it: .* a level along it and across it/u);
    expect(textIn(books, "Put four loose shelves")).not.toContain("Open and shut");
  });
});

describe("a piece that hangs", () => {
  it("is loaded when its place is found and its doors are set", () => {
    expect(textIn(spices, "Hang the piece on the wall").split("\n").at(-1)).toBe("Load it little by little.");
  });
});

describe("a row of dowels that is tried dry", () => {
  it("is tried with its holes up, which lie down while the glue is closed", () => {
    const side = textIn(chest, "Build the left side");
    expect(side).toContain("turn the holes for the bottom panel (D) uppermost");
    expect(side).toContain("with the right side down");
  });
});

describe("what runs or hangs", () => {
  it("goes in where the piece will stand, which is carried there and set level before; said once", () => {
    const drawers = stepWith(chest, "Put the five overalls drawers on again");
    const straps = stepWith(chest, "Fit the wall straps");
    expect(straps.number).toBeLessThan(drawers.number);
    expect(plain(drawers.text.join(" "))).toContain("shut each before the next");
    expect(drawers.text.join(" ")).not.toContain("a level along");
    expect(textIn(chest, "Fit the wall straps").split("\n")[0]).toMatch(
      /^First: carry the piece to its room .* about 82 lb: two people .* a level along/u,
    );
    expect(chest.advice?.room.map(({ head }) => head)).not.toContain("Level.");
    const way = chest.advice?.room.find(({ head }) => head === "On the way.")?.text ?? "";
    expect(way).not.toContain("Take the drawers out");
  });

  it("comes after the top, which now goes on from above", () => {
    const top = stepWith(chest, "Put the slab (N) on again");
    const add = top.actions.find((each) => each.do === "add");
    expect(add?.do === "add" && "along" in (add.legs[0] ?? {}) && add.legs[0]).toMatchObject({ along: [0, 0, -1] });
    expect(top.text.join(" ")).toContain("in its place from above, and drive the screws from below");
  });

  it("is set when the piece hangs, where it has no feet", () => {
    const doors = textIn(spices, "Put the left door and the right door on again");
    expect(doors).not.toMatch(/feet|floor/u);
    expect(textIn(spices, "Hang the piece on the wall")).toContain("packing behind it until the gap is even");
    expect(textIn(chest, "Fit the wall straps")).not.toContain("packing behind it");
  });
});
