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
  expect(textOfStep(stepWith(build, /^Glue up the leg/u))).toContain("the short apron (D) stands square");
});
