import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

test("what leans is told where it touches what its dowel holes mark, and its ends are ends", () => {
  const build = built("workbench-cart");
  const brace = textOfStep(stepWith(build, /^Drill the brace/u));
  expect(brace).toContain("For the dowel holes in the bottom end and top end lay");
  expect(brace).toContain("Measure them square to the edges, not along the slope of the ends.");
  // By hand: 70 mm wide, it leans 450 over a height of 466 mm, so it covers 70 × √(450² + 466²) / 466 = 97.3 mm of a rail; the middle of its top end
  // lies 230 mm from the right end of the upper rail, that of its bottom end 80 mm from the left end of the lower one. Rounded to half a millimetre.
  const rail = (title: RegExp) => textOfStep(stepWith(build, title));
  expect(rail(/^Drill the back upper rail/u)).toContain(
    "touches it from 181.5 mm to 278.5 mm from its right end, flush with its back",
  );
  expect(rail(/^Drill the back lower rail/u)).toContain(
    "touches it from 31.5 mm to 128.5 mm from its left end, flush with its back",
  );
});

test("an end that is cut at an angle is proved with a bevel, and what meets squarely with a square", () => {
  const build = built("loan-desk");
  // The legs lean 6° to the left and the right: the long aprons stand 6° from square along them, the short ones square.
  for (const title of [/^Glue in two long aprons/u, /^Add the frame/u]) {
    const text = textOfStep(stepWith(build, title));
    expect(text).toContain("a square across, and with a bevel set as the end was cut, 6° from square along, that");
    expect(text).not.toContain("stand square");
  }
  // Of two that are both mitred, the ends say nothing of how one stands to the other.
  for (const { text } of built("old-plans/cedar-chest").steps) expect(text.join(" ")).not.toContain("with a bevel set");
  expect(textOfStep(stepWith(build, /^Glue up the leg/u))).toContain("the short apron (D) stands square");
});

test("on what leans it is told how the part lies whose dowels mark their holes", () => {
  const text = textOfStep(stepWith(built("loan-desk"), /^Drill the legs \(A\)/u));
  expect(text).not.toContain("held square");
  expect(text).toContain(
    "the front long apron (C) lies flush with the top of the leg (A), 1/2 in from its front face, the outside.",
  );
  // By hand: level across, the leg of 2 1/4 in is 2 1/4 / cos 6° = 2.262 in wide, and the apron covers it from 1/2 to 1 3/4 in at the top; 0.512 in is
  // left, and 4 tan 6° = 0.420 less where the apron ends 4 in below. Square to the face of the leg these are × cos 6° = 0.510 and 0.091 in.
  expect(text).toContain(
    "the left short apron (D) lies flush with the top of the leg (A), 33/64 in from its right face, the inside, at the top",
  );
  expect(text).toContain("and 3/32 in at the bottom: draw that line first.");
});

test("what reaches past all that it is laid on is measured from what a rule can be laid against", () => {
  // The legs are set 7 in from the ends of the top, breadboard ends included; the apron and the joint between panel and end lie inside of both.
  const text = textOfStep(stepWith(built("loan-desk"), /^Add the panel/u));
  expect(text).toContain("midway between the left and the right (7 in past two legs (A) and two legs (B) at each)");
  expect(textOfStep(stepWith(built("workbench-cart"), /^Add the plywood top/u))).toContain(
    "(40 mm past two legs (A) and two legs (B) at each)",
  );
});
