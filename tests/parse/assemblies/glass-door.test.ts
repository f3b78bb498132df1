import { describe, expect, test } from "vitest";
import { millimetres, toMillimetres } from "../../../src/units/length.ts";
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
    expect(put?.text.join(" ")).toMatch(
      /Lay the frame on its face, wipe the rabbets clean, clean the glass on both faces/,
    );
    expect(put?.text.join(" ")).toMatch(/A broken pane comes out when its beads are off/);
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

describe("beside the beads and the rabbet of a pane", () => {
  const found = (gap: string): readonly string[] =>
    said(solveText(cupboard().replace("frame: {", `gap: ${gap}\n    frame: {`)).findings).filter((line) =>
      line.includes("closing-edge-rubs"),
    );

  test("the closing edge is as thick as the frame: the beads lie farther in", () => {
    // From the pin some 335 to that edge, and 20 with half a knuckle to the inner face: 24² / (2 × 335) is 0.9, with 8 of beads 1.5.
    expect(found("6/5")).toEqual([]);
    expect(found("1/2")).toHaveLength(1);
  });

  test("a tenon is narrower by a rabbet that reaches its cheek, and does not stand in that of the stile", () => {
    const wide = (rabbet: string): number => {
      const { build } = solveText(
        cupboard("pane", "", `stiles: 50, rabbet: { ${rabbet} }`).replace("    panel: pane\n", ""),
      );
      const rail = build?.design.parts.find(({ id }) => id === "door.bottom-rail");
      const [tenon] = rail?.features.filter(({ kind }) => kind === "tenon") ?? [];
      return tenon && "size" in tenon ? Math.round(toMillimetres(tenon.size[0])) : 0;
    };
    // Of a rail 50 wide: 12 off towards the end of the stile, 5 off at the other edge, or the rabbet; the cheek lies 7 in.
    expect(wide("wide: 10, deep: 4")).toBe(50 - 12 - 5);
    expect(wide("wide: 10, deep: 10")).toBe(50 - 12 - 10);
  });
});

describe("a pane in the end of a cabinet", () => {
  /** Two framed ends with rails between them: the left one with a pane that beads hold on its outside, or on its inside. */
  const ends = (outside: boolean): string => {
    const [face, free] = outside ? ["left", "left"] : ["right", "right"];
    const start = outside ? 8 : 0;
    const beads = "{ called: glass bead, made of: board, across: 8,";
    const at = outside ? "left of: left-end.lower" : "right of: left-end.lower";
    return `plan: 1
title: Cabinet with a glass end
units: mm
outside: { width: 500, depth: 400, height: 600 }
stock:
  board: { wood: European oak, sold as: 27 mm rough, planed to: 20, widths: 60 to 250 }
  pane: { material: glass, measures: 4 }
piece:
  left-end:
    front-post: { made of: board, as: upright, facing: left, left: ${start}, front: 0, deep: 60, bottom: 0, top: 600,
      rabbet: { along: ${face} back, wide: 10, deep: 4, from: 50, to: 550 } }
    back-post: { like: left-end.front-post, front: 340, rabbet: { along: ${face} front, wide: 10, deep: 4, from: 50, to: 550 } }
    lower: { made of: board, as: on edge, grain: deep, facing: left, between: [left-end.front-post, left-end.back-post], left: ${start}, bottom: 0, up: 60,
      rabbet: { along: ${face} top, wide: 10, deep: 4 } }
    upper: { like: left-end.lower, bottom: 540, rabbet: { along: ${face} bottom, wide: 10, deep: 4 } }
    pane: { made of: pane, as: upright, facing: left, ${free}: left-end.lower.${free}, front: 52, back: 348, bottom: 52, top: 548 }
    front-bead: ${beads} as: upright, facing: back, ${at}, back: 60, bottom: 60, top: 540 }
    back-bead: ${beads} as: upright, facing: back, ${at}, front: 340, bottom: 60, top: 540 }
    lower-bead: ${beads} as: lying flat, grain: deep, ${at}, front: left-end.front-bead.front, back: left-end.back-bead.back, top: 60 }
    upper-bead: ${beads} as: lying flat, grain: deep, ${at}, front: left-end.front-bead.front, back: left-end.back-bead.back, bottom: 540 }
  right-end: { made of: board, as: upright, facing: right, right: 500, front: 0, back: 200, bottom: 0, top: 600 }
  rail: { made of: board, as: on edge, facing: front, between: [left-end.front-post, right-end], front: 20, bottom: 100, up: 60 }
  upper-rail: { like: rail, bottom: 440 }
joints:
  - { join: [left-end.lower, left-end.upper], to: [left-end.front-post, left-end.back-post], with: mortise and tenon }
  - { join: [rail, upper-rail], to: [left-end.front-post, right-end], with: dowels }
  - { join: left-end.pane, to: [left-end.front-post, left-end.back-post, left-end.lower, left-end.upper], with: glazed }
  - { join: left-end.front-bead, to: left-end.front-post, with: brads }
  - { join: left-end.back-bead, to: left-end.back-post, with: brads }
  - { join: left-end.lower-bead, to: left-end.lower, with: brads }
  - { join: left-end.upper-bead, to: left-end.upper, with: brads }
  - { join: [left-end.front-bead, left-end.back-bead, left-end.lower-bead, left-end.upper-bead], to: left-end.pane, with: glazed }
finish: { with: oil, coats: 2 }
`;
  };
  const stepOf = (text: string, wanted: RegExp) => sound(text).steps.find(({ title }) => wanted.test(title));

  test("goes in from outside when the cabinet stands, though the end is built by itself, and the cabinet is laid down for it", () => {
    const put = stepOf(ends(true), /^Put in the pane/);
    const rails = stepOf(ends(true), /^(Glue|Add).*right end/);
    expect(put?.number).toBeGreaterThan(rails?.number ?? Number.POSITIVE_INFINITY);
    expect(put?.text.join(" ")).toMatch(/Lay the piece on a blanket with its left side up/);
  });

  test("goes into the end before that is joined to what would be in its way", () => {
    const put = stepOf(ends(false), /^Put in the pane/);
    const closed = stepOf(ends(false), /^(Glue|Add).*right end/);
    expect(put?.number).toBeLessThan(closed?.number ?? 0);
    expect(put?.text.join(" ")).toMatch(/Lay the frame on its face/);
  });
});
