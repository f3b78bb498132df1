import { describe, expect, test } from "vitest";
import { stepPicture } from "../../../src/render/drawing/index.ts";
import { driven } from "../../../src/render/drawing/step/screws.ts";
import { built } from "../../examples/compiled.ts";
import { stepWith } from "../../solve/told/examples.ts";
import { pen } from "./fixture.ts";
import { words } from "./look.ts";

const frame = { x: 0, y: 0, width: 250, height: 180 };

describe("the cabinet on posts", () => {
  const build = built("old-plans/medicine-cabinet");
  const said = (title: RegExp) => words(stepPicture(build, stepWith(build, title), { frame, pen }).items);
  test("a panel within a frame that is worked on has its mark: it is no opening", () => {
    expect(said(/^Key the corners of the door/)).toContain("N");
    expect(said(/^Trim the keys of the door/)).toContain("N");
  });
  test("what stands clear of the wall has packing behind its screw, before the plaster", () => {
    expect(said(/^Screw the upper back long rail/)).toEqual(expect.arrayContaining(["packing", "plaster", "masonry"]));
  });
});

test("what was clamped on before the work is turned over goes nowhere in its picture", () => {
  const build = built("old-plans/library-table");
  const { shows, text } = stepWith(build, /^Add the top board/);
  expect(text[0]).toMatch(/clamp it there, and turn the/);
  expect(shows.travel).toEqual([]);
});

describe("the loan desk", () => {
  const build = built("loan-desk");
  test("pegs have no head and no point, nor does the caution speak of one", () => {
    const step = stepWith(build, /^Glue up the panel .* breadboard/);
    const pegs = build.fasteners.filter(({ id }) => step.shows.fasteners.includes(id));
    expect(pegs).toHaveLength(6);
    for (const peg of pegs)
      expect(
        driven(
          peg,
          () => undefined,
          () => [0, 0, 0],
          0,
        ).isPeg,
      ).toBe(true);
    expect(step.cautions).toEqual(["Wear eye protection while you drive the pegs."]);
  });
  test("its top is put on again with the screws that hold it", () => {
    const [first, again] = [/^Add the panel/, /^Put the panel .* on again/].map((title) => stepWith(build, title));
    expect(again?.shows.fasteners.toSorted()).toEqual(first?.shows.fasteners.toSorted());
    expect(again?.shows.fasteners).not.toEqual([]);
  });
});
