/** What the shopping list says of the screws that hardware is held by. */
import { expect, test } from "vitest";
import { solidOf } from "../../../src/geometry/index.ts";
import { around } from "../../../src/solve/build/checks/standing/weight-and-feet.ts";
import { UNITS_PER_MM } from "../../../src/units/length.ts";
import { toNumber } from "../../../src/units/rational.ts";
import { said, solveText } from "../../examples/compiled.ts";

const CASE = (hardware: string): string => `plan: 1
title: Case by a wall
units: inch
stock:
  wood: { wood: cherry, sold as: 4/4, planed to: 3/4, widths: 4 to 12 }
hardware:
  strap: { kind: wall strap${hardware} }
piece:
  panel: { made of: wood, as: upright, facing: front, left: 0, right: 10, front: 0, bottom: 0, up: 10 }
fittings:
  - { fit: strap, to: panel, face: back }
`;

const noteOf = (text: string): string => {
  const { build, findings } = solveText(text);
  if (!build) throw new Error(said(findings).join("\n"));
  const note = build.purchases.find(({ section }) => section === "hardware")?.note ?? "";
  return note.replaceAll("\u202f", " ").replaceAll("\u2044", "/");
};

test("screws that end in the wood are told by gauge, length and number", () => {
  // 9/64 in across: #6 is 0.138 in (ASME B18.6.1, from memory).
  expect(noteOf(CASE(", screw: 1/2"))).toBe(
    "with its screws, 2 to a piece, #6 × 1/2 in; buy them where they are not in the box; for a wall of masonry buy plugs and screws that bear as much, and the masonry bit that these plugs name",
  );
});

test("where they would come out, the longest that does not is told: 3/4 in less 1.5 mm is 0.69 in", () => {
  expect(noteOf(CASE(", screw: 1"))).toContain("#6, no longer than 5/8 in, or they come out on the other side");
});

test("a hook is a screw itself, and is drawn bent up at its end", () => {
  const text = CASE("")
    .replace("strap: { kind: wall strap }", "strap: { kind: hook }")
    .replace("face: back", "face: front");
  const { build } = solveText(text);
  expect(noteOf(text)).not.toContain("with its screws");
  const hook = build?.hardware.find(({ item }) => item.kind === "hook");
  if (!hook) throw new Error("no hook");
  const [, shank, tip] = hook.solid.pieces.map((piece) => around([solidOf([piece])]));
  const top = (piece: typeof tip): number => (piece?.high[2] ?? Number.NaN) - toNumber(hook.at[2]) / UNITS_PER_MM;
  // The usual one: wire a quarter of 1/2 in thick, its tip half of 1/2 in above the middle of the shank and 3/4 in before the wood.
  expect(top(shank)).toBeCloseTo(25.4 / 16, 6);
  expect(top(tip)).toBeCloseTo(25.4 / 4, 6);
  expect(tip?.low[1]).toBeCloseTo(-0.75 * 25.4, 6);
});
