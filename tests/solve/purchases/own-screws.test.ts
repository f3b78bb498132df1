/** What the shopping list says of the screws that hardware is held by. */
import { expect, test } from "vitest";
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
    "with its screws, 2 to a piece, #6 × 1/2 in; buy them where they are not in the box; for a wall of masonry buy plugs and screws that bear as much",
  );
});

test("where they would come out, the longest that does not is told: 3/4 in less 1.5 mm is 0.69 in", () => {
  expect(noteOf(CASE(", screw: 1"))).toContain("#6, no longer than 5/8 in, or they come out on the other side");
});
