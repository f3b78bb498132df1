/** How heavy work is turned, and what is tried, screwed and fixed in work that stands on its head: common practice, no source. */
import { expect, test } from "vitest";
import type { Step } from "../../../src/solve/build.ts";
import { built, solveText } from "../../examples/compiled.ts";
import { plain } from "../told/examples.ts";

const stepsOf = (name: string): readonly Step[] => built(name).steps;

// The table with its top clamped on is 74 lb, and 97 lb when it is turned over again.
test("whoever turns heavy work over is told so, with what is clamped to it", () => {
  const steps = stepsOf("old-plans/library-table");
  const cautions = (title: string): string =>
    (steps.find((step) => step.title.startsWith(title))?.cautions ?? []).map(plain).join(" ");
  expect(cautions("Add the top board (B)")).toContain("This weighs about 74 lb");
  expect(cautions("Screw on the lower brace (E)")).toContain("This weighs about 98 lb");
});

// White oak beside white pine.
test("each size of pilot is told of what it is bored into", () => {
  const { build } = solveText(`plan: 1
title: Step
units: inch
stock:
  hard: { wood: white oak, sold as: 5/4, planed to: 1, widths: 4 to 8 }
  soft: { wood: eastern white pine, sold as: 5/4, planed to: 1, widths: 4 to 8 }
piece:
  tread: { made of: hard, as: lying flat, grain: across, left: 0, right: 16, front: 0, back: 6, top: 12 }
  left-leg: { made of: hard, as: upright, facing: left, left: 0, front: 0, back: 6, bottom: 0, under: tread }
  right-leg: { made of: soft, as: upright, facing: left, right: 16, front: 0, back: 6, bottom: 0, under: tread }
joints:
  - { join: tread, to: [left-leg, right-leg], with: screws }
`);
  const lines = (build?.steps ?? []).flatMap(({ text }) => text).map(plain);
  const pilots = lines.filter((text) => text.includes("pilot holes"));
  expect(pilots.map((text) => text.replace(/:.*/u, ""))).toEqual([
    "Through the holes that are there, drill 7/64 in pilot holes 2 in deep into the left leg (B)",
    "Through the holes that are there, drill 3/32 in pilot holes 2 in deep into the right leg (C)",
  ]);
});

// The table stands on its head until then; all clamps of the shelves are on the legs, not on the rails that dowels stand in.
test("a table on its head: stops inside both drawers, supports cut one by one, no blocks where nothing presses", () => {
  const steps = stepsOf("old-plans/library-table");
  const told = (title: string): string =>
    (steps.find((step) => plain(step.title).startsWith(title))?.text ?? []).map(plain).join(" ");
  expect(told("Fit the drawer stops")).toContain("to the front face of the box back of the front drawer (O)");
  expect(told("Fit the drawer stops")).toContain("to the back face of the box back of the back drawer (O)");
  const [left, right] = ["left", "right"].map(
    (side) => steps.find(({ title }) => plain(title) === `Cut the drawer runner (M) to fit, at the ${side}`)?.number,
  );
  expect(told("Plane the parts from eastern white pine, 4/4 planed to 3/4")).toContain(
    `M in steps ${left} and ${right}`,
  );
  expect(told("Glue in four shelves (H)")).not.toContain("press on a dowel");
});

// The shelf lies on two rails, and would drop from work that stands on its head.
test("what is cut to fit is tried in work that lies as it is put there", () => {
  const [cut] = stepsOf("workbench-cart").filter(({ title }) => title.startsWith("Cut the shelf (J) to fit"));
  expect([cut?.up, plain(cut?.text[0] ?? "")]).toEqual([[0, 0, 1], "Turn the work the right way up."]);
});

// Two sides, two panels, four shelves, four lips, a back.
test("a case that is laid down is not told by the names of all its parts", () => {
  const [frame] = stepsOf("spice-cabinet").filter(({ title }) => title === "Add the face frame");
  expect(frame?.text.map(plain)).toContain("Lay the work flat on battens, inside up.");
});

// Boards 7/8 in thick, 14 1/4 in high as they stand there; the walls of the rope chest hold each other by their fingers.
test("boards that stand on their narrow sides under what is nailed on them are held", () => {
  const told = (name: string, title: RegExp): string =>
    plain((stepsOf(name).find((step) => title.test(plain(step.title)))?.text ?? []).join(" "));
  expect(told("old-plans/cedar-chest", /^Nail the side \(A\), the left end/u)).toContain(
    "The left end (D) and the right end (E) would fall over: clamp a block to the foot of each, or let a second person hold them, until they are nailed.",
  );
  expect(told("old-plans/cedar-chest", /^Nail on the side \(A\)/u)).not.toContain("fall over");
  const chest = stepsOf("rope-chest")
    .flatMap(({ text }) => text.map(plain))
    .filter((text) => text.includes("fall over"));
  expect(chest).toEqual([expect.stringContaining("The two short plinth boards (J) would fall over")]);
});
