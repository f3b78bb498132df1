import { describe, expect, test } from "vitest";
import { toMillimetres } from "../../../src/units/length.ts";
import { cutLists, partsOf, sound } from "./opened.ts";

/** A box for the hand planes of the tool library, of boards that are really 1/2 in thick. */
const crate = (says: string, width = "16", height = "5"): string => `plan: 1
title: Box for hand planes
units: inch
outside: { width: ${width}, depth: 10, height: ${height} }
stock:
  board: { wood: yellow poplar, sold as: 4/4, planed to: 1/2, widths: 4 to 8 }
  thin: { sold as: 1/4 hardboard }
piece:
  crate: { kind: box, made of: board, ${says} }
`;
const floor = "bottom panel: { made of: thin, in: laid on }";

describe("a box", () => {
  test("butted, with the bottom laid on", () => {
    // 10 - 2 × 1/2 = 9 deep; 5 - 1/4 = 4 3/4 high.
    expect(partsOf(crate(floor))).toMatchObject({
      "crate.front-panel": "1/2 × 4 3/4 × 16",
      "crate.left-side": "1/2 × 4 3/4 × 9",
      "crate.bottom-panel": "1/4 × 10 × 16",
    });
  });
  test("with the sides over front and back, nailed", () => {
    const parts = partsOf(crate(`join: nails, corners: sides over front and back, ${floor}`));
    expect(parts).toMatchObject({
      "crate.front-panel": "1/2 × 4 3/4 × 15",
      "crate.left-side": "1/2 × 4 3/4 × 10",
    });
  });
  test("rabbeted, with the bottom in a rabbet", () => {
    const parts = partsOf(crate("join: { with: rabbet, deep: 1/4 }, bottom panel: { made of: thin, in: rabbet }"));
    // The sides reach 1/4 into front and back: 9 + 2 × 1/4.
    expect(parts).toMatchObject({
      "crate.front-panel": "1/2 × 5 × 16",
      "crate.left-side": "1/2 × 5 × 9 1/2",
    });
  });
  test("of boards that are glued up, on a base that its bottom is screwed to", () => {
    const plinth = "kind: base, made of: thick, high: 2, in at the front: 1, in at the sides: 1, in at the back: 1";
    const says = "join: box joint, boards: 2, bottom panel: { made of: thin, in: rabbet }, on: plinth";
    const text = crate(says, "16", "13")
      .replace("  thin:", "  thick: { wood: yellow poplar, sold as: 4/4, planed to: 3/4, widths: 4 to 8 }\n  thin:")
      .concat(`  plinth: { ${plinth} }\n`);
    const build = sound(text);
    // 13 − 2.
    expect(partsOf(text)["crate.front-panel"]).toBe("1/2 × 11 × 16");
    expect(build.blanks.filter(({ part }) => part === "crate.front-panel")).toHaveLength(2);
    const screwed = build.joints.filter(({ method, parts: [a] }) => method === "screws" && a === "crate.bottom-panel");
    expect(screwed).toHaveLength(4);
  });
  test("stands on a base that it is joined to and stays clear of, where only their stocks are said", () => {
    const text = crate("join: box joint, boards: 2, bottom panel: thin, on: plinth", "16", "13")
      .replace("  thin:", "  thick: { wood: yellow poplar, sold as: 4/4, planed to: 3/4, widths: 4 to 8 }\n  thin:")
      .concat("  plinth: { kind: base, made of: thick, high: 2 }\n");
    const build = sound(text);
    // 13 − 2 − 1/4; the base 3/4 in at each side and in front, 1 at the back.
    expect(partsOf(text)).toMatchObject({
      "crate.front-panel": "1/2 × 10 3/4 × 16",
      "crate.bottom-panel": "1/4 × 10 × 16",
      "plinth.front-board": "3/4 × 2 × 14 1/2",
      // 10 − 3/4 − 1 − 2 × 3/4.
      "plinth.left-board": "3/4 × 2 × 6 3/4",
    });
    const screwed = build.joints.filter(({ method, parts: [a] }) => method === "screws" && a === "crate.bottom-panel");
    expect(screwed).toHaveLength(4);
  });
  test.each(["box joint", "dovetail", "keyed mitre"])("crossing in the corners: %s", (method) => {
    const text = crate(`join: ${method}, bottom panel: { made of: thin, in: groove 1/4 deep, play: 1/16 }`);
    expect(partsOf(text)).toMatchObject({
      "crate.front-panel": "1/2 × 5 × 16",
      "crate.left-side": "1/2 × 5 × 10",
      // Inside 9 × 15, with 1/4 in each groove, less 1/16 at each edge.
      "crate.bottom-panel": "1/4 × 9 3/8 × 15 3/8",
    });
    expect(sound(text).joints.filter((joint) => joint.method === method)).toHaveLength(4);
  });
  test.each([
    [floor, "11 3/8", "4"],
    [`join: nails, ${floor}`, "23", "7 1/2"],
    ["join: dovetail, bottom panel: thin", "20 1/2", "6"],
    ["join: box joint, bottom panel: thin", "12", "3 3/4"],
  ])("keeps its promises at other sizes, and opened: %s", (says, width, height) => {
    const [own, opened] = cutLists(crate(says, width, height));
    expect(opened).toEqual(own);
  });
  test("in millimetres, its bottom in grooves", () => {
    const text = `plan: 1
title: Box for hand planes
units: mm
outside: { width: 400, depth: 300, height: 150 }
stock:
  sheet: { sold as: 12 mm mdf }
  thin: { sold as: 6 mm mdf }
piece:
  crate: { kind: box, made of: sheet, bottom panel: { made of: thin, in: groove 5 deep } }
`;
    // 300 - 2 × 12 = 276
    expect(partsOf(text)).toMatchObject({ "crate.left-side": "12 × 150 × 276" });
    const { body } = sound(text).design.parts.find(({ id }) => id === "crate.bottom-panel") ?? {};
    // 6 mm above the lower edges.
    expect(body && toMillimetres(body.low[2])).toBe(6);
  });
});
