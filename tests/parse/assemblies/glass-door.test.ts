import { describe, expect, test } from "vitest";
import { millimetres } from "../../../src/units/length.ts";
import { equal } from "../../../src/units/rational.ts";
import { said, solveText } from "../../examples/compiled.ts";
import { sizeOf } from "../../solve/design/plan.ts";
import { sound } from "./opened.ts";

/** A cupboard of the tool library with one glass door in its opening. */
const cupboard = (panel = "pane", more = "", frame = "stiles: 50"): string => `plan: 1
title: Cupboard with a glass door
units: mm
outside: { width: 380, depth: 220, height: 520 }
stock:
  board: { wood: European oak, sold as: 27 mm rough, planed to: 20, widths: 100 to 250 }
  pane: { material: glass, measures: 4, price: 20 }
  back: { sold as: 6 mm birch plywood }
hardware:
  butt: { kind: butt hinge, leaf: 14 }
  knob: { kind: knob }
  catch: { kind: catch, high: 15, screw: 12 }
piece:
  case: { kind: case, made of: board, join: dowels, back: { made of: back, in: rabbet } }
  door:
    kind: door
    in: case.inside
    walls: { left: case.left-side, right: case.right-side }
    frame: { made of: board, ${frame} }
    panel: ${panel}
    hinges: butt
    pull: knob
${more}fittings:
  - { fit: catch, to: case.top-panel, face: bottom, across: 330, against: door.right-stile }
finish: { with: oil, coats: 2 }
`;

const errors = (text: string): readonly string[] =>
  said(solveText(text).findings.filter(({ severity }) => severity === "error"));

describe("a door whose panel is glass", () => {
  const build = sound(cupboard());
  const steps = (wanted: (what: string) => boolean): readonly number[] =>
    build.steps
      .filter(({ actions }) => actions.some((action) => wanted(JSON.stringify(action, plain))))
      .map(({ number }) => number);
  const plain = (_: string, value: unknown) => (typeof value === "bigint" ? Number(value) : value);

  test("has a rabbet as deep as the pane, and the pane in it with play", () => {
    // The leaf is 380 - 2 × 20 - 2 × 3 = 334 wide and 520 - 2 × 20 - 2 × 3 = 474 high; between stiles and rails 234 × 374 is open, the
    // rabbet reaches 10 farther on each side, and 1.5 of that stays open: 234 + 20 - 3 = 251, 374 + 20 - 3 = 391.
    const sizes = Object.fromEntries(build.design.parts.map((part) => [part.id, sizeOf(part, "mm")]));
    expect(sizes).toMatchObject({
      "door.panel": "4 × 251 × 391",
      "door.left-bead": "20 × 8 × 374",
      // Over the stiles as far as the beads on those are wide: 234 + 2 × 20.
      "door.top-bead": "20 × 8 × 274",
    });
    const stile = build.design.parts.find(({ id }) => id === "door.left-stile");
    const rabbet = stile?.features.find(({ kind }) => kind === "rabbet");
    const cut = rabbet && "size" in rabbet ? rabbet.size : [];
    // 374 + 2 × 10 long.
    for (const size of [4, 10, 394]) expect(cut.some((own) => equal(own, millimetres(size)))).toBe(true);
  });

  test("weighs what soda-lime glass weighs: 2500 kg/m³, EN 572-1, from memory", () => {
    const pane = build.parts.find(({ id }) => id === "door.panel");
    expect(pane?.mass).toBeCloseTo(0.004 * 0.251 * 0.391 * 2500, 6);
    const swing = build.motions.find(({ kind }) => kind === "swing");
    expect(swing?.moves).toContain("door.panel");
  });

  test("is bought in its size, and neither sawn, laid out nor finished", () => {
    const bought = build.purchases.filter(({ section }) => section === "panes");
    expect(bought).toMatchObject([
      { item: "4 mm glass, 251\u202fmm × 391\u202fmm", quantity: 1, unit: "pane", price: 20 },
    ]);
    expect(build.blanks.filter(({ stock }) => stock === "pane")).toEqual([]);
    expect(build.layouts.filter(({ stock }) => stock === "pane")).toEqual([]);
    expect(build.finishing?.flatMap(({ parts }) => parts)).not.toContain("door.panel");
    expect(build.cutList.find(({ stock }) => stock === "pane")?.notes.join()).toMatch(/have it cut/);
  });

  test("gets its pane when the frame is finished, and its beads in the same step, fixed to the frame alone", () => {
    const [glued] = steps((what) => /"do":"add"/.test(what) && /door\.(left|right)-stile/.test(what));
    const coats = steps((what) => /"do":"finish"/.test(what) && /door\.left-stile/.test(what));
    const [pane] = steps((what) => /"do":"add","parts":\["door\.panel"\]/.test(what));
    const [beads] = steps((what) => /"do":"add","parts":\["door\.left-bead"\]/.test(what));
    const order = [glued, ...coats, pane];
    expect(beads).toBe(pane);
    expect(coats).toHaveLength(1);
    expect(order).toEqual(order.toSorted((a = 0, b = 0) => a - b));
    expect(new Set(order).size).toBe(order.length);
    const brads = build.fasteners.filter(
      ({ kind, through }) => kind === "brad" && through.some((id) => id.includes("bead")),
    );
    expect(brads.length).toBeGreaterThan(7);
    expect(new Set(brads.map(({ into }) => into))).toEqual(
      new Set(["door.left-stile", "door.right-stile", "door.bottom-rail", "door.top-rail"]),
    );
  });

  test("says what glass asks for", () => {
    expect(build.advice?.cautions.some(({ head }) => head === "Glass.")).toBe(true);
    const put = build.steps.find(({ title }) => /^Put in the pane/.test(title));
    expect(put?.cautions.join()).toMatch(/gloves/);
  });
});

test("a pane and its beads do not fit a rabbet of another depth", () => {
  // A pane 4 thick stands out of a rabbet 3 deep by 1; in one 6 deep it does not reach its beads.
  expect(errors(cupboard("pane", "", "stiles: 50, rabbet: { wide: 10, deep: 3 }")).join()).toMatch(/parts-overlap/);
  expect(errors(cupboard("pane", "", "stiles: 50, rabbet: { wide: 10, deep: 6 }")).join()).toMatch(
    /joint-does-not-touch|stands-open|apart/,
  );
  expect(errors(cupboard("{ made of: pane, play: 2 }", "", "stiles: 50, rabbet: { wide: 12, deep: 4 }"))).toEqual([]);
});

test("nothing is fixed to a pane", () => {
  const glued = "joints:\n  - { join: door.panel, to: door.left-stile, with: glue }\n";
  expect(errors(cupboard("pane", glued))).toEqual([
    expect.stringMatching(/glass-holds-nothing: door.panel is glass, and is joined with glue/),
  ]);
});

test("shelves behind an inset glass door stay clear of the beads that stand behind it", () => {
  const text = cupboard()
    .replace(
      "back: { made of: back, in: rabbet } }",
      "back: { made of: back, in: rabbet }, openings: { down: [{ name: bay, shelves: 1, door: { frame: { made of: board, stiles: 50 }, panel: pane, hinges: butt, pull: knob } }] } }",
    )
    .replace(/ {2}door:\n[\s\S]*?pull: knob\n/, "")
    .replace("against: door.right-stile", "against: case.bay-door.right-stile");
  const shelf = sound(text).design.parts.find(({ id }) => id === "case.bay-shelf-1");
  // The door 20, its beads 8, and 6 clear.
  expect(shelf && equal(shelf.body.low[1], millimetres(34))).toBe(true);
});
