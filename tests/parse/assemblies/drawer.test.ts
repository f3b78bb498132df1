import { describe, expect, test } from "vitest";
import type { Build } from "../../../src/solve/build.ts";
import { inches, type Length, millimetres, toInches, toMillimetres } from "../../../src/units/length.ts";
import { subtract } from "../../../src/units/rational.ts";
import { said, solveText } from "../../examples/compiled.ts";
import { sound } from "./opened.ts";

/** A bench of two panels with an opening of this width between them, and a drawer in it. */
const drawer = (width: string, settings: string, walls = "1/2", deep = "20"): string => `plan: 1
title: Drawer for planes
units: inch
precision: 1/32
outside: { width: ${width} + 2, depth: ${deep}, height: 9 }
stock:
  panel: { wood: maple, sold as: 5/4, planed to: 1, widths: 8 to 30 }
  walls: { wood: maple, sold as: 4/4, planed to: ${walls}, widths: 3 to 10 }
  floor: { sold as: 1/4 hardboard, measures: 1/4 }
hardware:
  pull: { kind: knob, screw: 1 3/4, most into the knob: 1 1/4 }
piece:
  left-panel: { made of: panel, as: on edge, grain: deep, facing: left, left: 0, front: 0, back: outside.back, bottom: 0, top: outside.top }
  right-panel: { mirror of: left-panel, about: across }
  rail: { made of: panel, as: on edge, between: [left-panel, right-panel], back: outside.back, bottom: 0, up: 2 }
  bay: { kind: space, left: left-panel.right, right: right-panel.left, bottom: 2, top: outside.top, front: 0, back: outside.back }
  box:
    kind: drawer
    in: bay
    walls: { left: left-panel, right: right-panel }
    made of: walls
    bottom: floor
    carries: 2 lb
    pull: pull
    ${settings}
joints:
  - { join: rail, to: [left-panel, right-panel], with: dowels }
`;
const part = (build: Build, id: string) => build.design.parts.find((each) => each.id === id) ?? build.design.parts[0];
const outer = (build: Build): Length =>
  subtract(part(build, "box.right-side")?.body.high[0] as Length, part(build, "box.left-side")?.body.low[0] as Length);
const inner = (build: Build): Length =>
  subtract(part(build, "box.right-side")?.body.low[0] as Length, part(build, "box.left-side")?.body.high[0] as Length);
const solved = (text: string): Build => {
  const { build, findings } = solveText(text);
  expect(said(findings.filter(({ severity }) => severity === "error"))).toEqual([]);
  if (!build) throw new Error("nothing was built");
  return build;
};

describe("the width of the box", () => {
  // Side space 12.9 to 13.2 mm on each side: a slide maker's technical note. The middle of it in all is 1 1/32 in; what is left to the mark is rounded down.
  test.each([
    ["16 1/4", 15 + 7 / 32],
    ["18", 16 + 31 / 32],
    ["20 1/2", 19 + 15 / 32],
  ])("on side slides, in an opening of %s", (width, wide) => {
    expect(toInches(outer(solved(drawer(width, "front: no"))))).toBe(wide);
  });
  test("is rounded down to a coarser mark, never up: 16 1/4 - 1 1/32 = 15 7/32, and 15 3/16 on sixteenths", () => {
    const text = drawer("16 1/4", "front: no").replace("precision: 1/32", "precision: 1/16");
    expect(toInches(outer(solved(text)))).toBe(15 + 3 / 16);
  });
  // A slide maker's leaflet: inside width = opening - 42 mm; that is opening - 5/8 in outside with sides of 1/2 in, - 3/8 in with 5/8 in.
  test.each([
    ["1/2", 5 / 8],
    ["5/8", 3 / 8],
  ])("over undermount slides, with sides of %s", (walls, less) => {
    const build = solved(drawer("18", "front: no\n    slides: undermount slide", walls));
    const within = 18 * 25.4 - 42 - toMillimetres(inner(build));
    expect(within).toBeGreaterThanOrEqual(0);
    expect(within).toBeLessThan(25.4 / 32);
    // The leaflet's inch figures are rounded to 1/8 in.
    expect(Math.abs(18 - toInches(outer(build)) - less)).toBeLessThan(1 / 16);
  });
  test("on wooden runners it has 1/16 in at each side and 1/8 in above (common practice, no source)", () => {
    const build = solved(drawer("18", "front: no\n    runners: panel"));
    expect(toInches(outer(build))).toBe(17 + 7 / 8);
    expect(subtract(inches(9), part(build, "box.left-side")?.body.high[2] as Length)).toEqual(inches(1, 8));
  });
});

describe("the length of its slides", () => {
  // Sold from 10 to 28 in by 2; 1/8 in stays free behind, and the front stands before it.
  test.each([
    ["20", "front: no", 18],
    ["20 1/4", "front: no", 20],
    ["20 1/4", "front: walls", 18],
    ["14 5/8", "front: walls", 14],
    ["14 1/2", "front: walls", 12],
    ["33", "front: no", 28],
  ])("in a case %s deep, %s: %d in", (deep, front, long) => {
    const build = solved(drawer("18", front, "1/2", deep));
    const slides = build.hardware.filter(({ joint }) => joint !== null);
    expect(slides.map(({ item }) => toInches(item.measures.get("length") as Length))).toEqual([long, long, long, long]);
    expect(toInches(part(build, "box.left-side")?.length as Length)).toBe(long);
    expect(build.motions.map(({ range }) => range / 406_400)).toEqual([long]);
  });
  test("is a neighbour in millimetres", () => {
    const text = drawer("450 mm", "front: no", "12 mm", "480 mm")
      .replace("units: inch", "units: mm")
      .replace("1/32", "1");
    const metric = text
      .replace("+ 2,", "+ 2 in,")
      .replace("height: 9", "height: 9 in")
      .replace("5/4, planed to: 1,", "5/4, planed to: 1 in,")
      .replace("8 to 30", "200 to 700")
      .replace("3 to 10", "75 to 250")
      .replace("measures: 1/4", "measures: 6")
      .replace("up: 2 }", "up: 2 in }")
      .replace("screw: 1 3/4, most into the knob: 1 1/4", "screw: 40, most into the knob: 35");
    const build = solved(metric);
    expect(build.hardware[0]?.item.measures.get("length")).toEqual(millimetres(450));
  });
  test("two slides are one pair to buy", () => {
    const bought = solved(drawer("18", "front: no")).purchases.filter(({ section }) => section === "hardware");
    expect(bought.map(({ quantity, unit }) => `${quantity} ${unit}`)).toContain("1 pair");
  });
});

describe("the front", () => {
  test("in its opening leaves its gap all round", () => {
    const front = part(solved(drawer("18", "front: { made of: walls, gap: 1/8 }")), "box.false-front");
    expect([front?.length, front?.width].map((size) => toInches(size as Length))).toEqual([17.75, 6.75]);
  });
  test("over the edges covers them, each by what is said", () => {
    const overlay = "front: { made of: walls, lies: overlay, overlay: { each side: 1/2, top: 1/4 } }";
    const front = part(solved(drawer("18", overlay)), "box.false-front");
    expect([front?.length, front?.width].map((size) => toInches(size as Length))).toEqual([19, 7.75]);
    expect(front?.body.high[1]).toEqual(inches(0));
  });
  test("that is the front of the box has a lip over the edges, rabbeted to half its thickness", () => {
    const lipped =
      "front: { made of: walls, lies: lipped, overlay: 3/8, is the box front: yes }\n    join: { with: screws }";
    const front = part(solved(drawer("18", lipped)), "box.box-front");
    expect(front?.body.low[1]).toEqual(inches(-1, 4));
    expect(front?.features.filter(({ kind }) => kind === "rabbet")).toHaveLength(4);
  });
  test("is screwed on when the drawer runs, from inside, with the longest screws that stay 1/8 in under its face", () => {
    const build = solved(drawer("18", "front: { made of: panel, set with: tape }"));
    const screws = build.fasteners.filter(({ into }) => into === "box.false-front");
    // 1/2 + 1 - 1/8 = 1 3/8 in: 1 1/4 in is the longest that is sold.
    expect(screws.map(({ length }) => toInches(length))).toEqual([1.25, 1.25]);
    const adds = build.steps.flatMap(({ actions }) => actions).filter((action) => action.do === "add");
    // What comes off before a finish goes on again after it.
    const order = [...new Set(adds.flatMap(({ parts }) => parts))];
    expect(order.indexOf("box.false-front")).toBe(order.length - 1);
    const step = build.steps.find(({ shows }) => shows.fresh.includes("box.false-front") && shows.present.length > 0);
    expect(step?.text.join(" ")).toMatch(/double-sided tape.*shims.*screw from inside/i);
  });
});

test("a bottom in grooves is 1/16 in short in all", () => {
  const build = sound(drawer("18", "front: no"));
  const bottom = part(build, "box.bottom-panel");
  // Inside plus two grooves 1/4 in deep, less 1/16 in (a magazine's table).
  expect(toInches(bottom?.width as Length)).toBe(toInches(inner(build)) + 0.5 - 1 / 16);
});

test("tails are cut on the sides: the box comes apart to the sides, not when it is pulled", () => {
  const build = sound(drawer("18", "front: no\n    join: { with: dovetail }"));
  const corners = build.joints.filter(({ method }) => method === "dovetail");
  expect(corners.map(({ parts: [joined] }) => joined).sort()).toEqual([
    ...["box.left-side", "box.left-side", "box.right-side", "box.right-side"],
  ]);
});

// As a drawer of 1912 is made (H. H. Windsor, "Mission Furniture: How to Make It", part three, page 7): sides past the front, which hangs
// 2 in down below them, and a bottom between the sides that goes on under the back.
describe("a front between the sides", () => {
  const old = (front: string): string =>
    drawer(
      "12",
      `runners: { made of: walls }
    join: { with: brads, brad: { length: 1 1/4 }, glue: yes }
    bottom: { made of: floor, in: between the sides, under the back: yes, fasten: { with: brads, brad: { length: 3/4 } } }
    front: { made of: walls, is the box front: yes, between the sides: yes${front} }
    stop: drawer stop`,
    )
      .replace("    bottom: floor\n", "")
      .replace("    pull: pull\n", "");
  const texts = [old(""), old(", hangs down: 1 1/4")];
  const [plain, hanging] = texts.map((text) => solved(text)) as [Build, Build];
  const up = (build: Build, id: string, end: "low" | "high"): number =>
    toInches(part(build, id)?.body[end][2] as Length);

  test("is as wide as the box inside, and the sides begin where it does", () => {
    const front = part(plain, "box.box-front")?.body;
    expect(toInches(subtract(front?.high[0] as Length, front?.low[0] as Length))).toBe(toInches(inner(plain)));
    expect(part(plain, "box.left-side")?.body.low[1]).toEqual(front?.low[1]);
  });
  test("that hangs down is as wide as the whole box below it, notched for the sides above", () => {
    const front = part(hanging, "box.box-front");
    expect(toInches(subtract(front?.body.high[0] as Length, front?.body.low[0] as Length))).toBe(
      toInches(outer(hanging)),
    );
    expect(up(hanging, "box.left-side", "low") - up(hanging, "box.box-front", "low")).toBe(1.25);
    const notches = front?.features.filter(({ kind }) => kind === "notch") ?? [];
    expect(notches).toHaveLength(2);
  });
  test("is pulled by its lower edge where that hangs free, and not by notches that are full", () => {
    const [without, by] = texts.map((text) =>
      said(solveText(text).findings).filter((line) => line.includes("to pull")),
    );
    expect(without?.join()).toMatch(/nothing to pull box/);
    expect(by).toEqual([]);
  });
  test("the bottom is level with the sides below, and the back stands on it", () => {
    expect(up(plain, "box.bottom-panel", "low")).toBe(up(plain, "box.left-side", "low"));
    expect(up(plain, "box.box-back", "low")).toBe(up(plain, "box.bottom-panel", "high"));
    expect(part(plain, "box.bottom-panel")?.body.high[1]).toEqual(part(plain, "box.left-side")?.body.high[1]);
  });
});

test("a drawer that is a mirror image has the joints of the other, and opens to the back", () => {
  const text = drawer("12", "front: no\n    stop: drawer stop\n    runs on: shelf", "1/2", "30")
    .replace(
      "  box:",
      "  shelf: { made of: panel, boards: 3, as: lying flat, grain: deep, between: [left-panel, right-panel], front: 0, back: 28, bottom: 1 }\n  box:",
    )
    .replace("back: outside.back }\n  shelf", "back: outside.back / 2 - 1 }\n  shelf")
    .replace(
      "joints:",
      "  other: { mirror of: box, about: deep }\njoints:\n  - { join: shelf, to: [left-panel, right-panel], with: glue }",
    );
  const { design, motions } = solved(text);
  const of = (name: string) =>
    design.joints.filter(({ parts }) => parts[0].startsWith(`${name}.`)).map(({ method, parts }) => [method, ...parts]);
  expect(of("box").length).toBeGreaterThan(8);
  expect(of("other")).toEqual(of("box").map((row) => row.map((word) => word.replace(/^box\./, "other."))));
  const ways = motions.map(({ name, poses }) => [name, Math.sign(poses.at(-1)?.shift[1] ?? 0)]);
  expect(ways).toEqual(
    expect.arrayContaining([
      ["box", -1],
      ["other", 1],
    ]),
  );
  expect(design.fittings.map(({ hardware }) => hardware.map(({ carriedBy }) => carriedBy))).toEqual([
    ["box.box-front"],
    ["box.box-back"],
    ["other.box-front"],
    ["other.box-back"],
  ]);
});
