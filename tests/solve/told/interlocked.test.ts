/** Fingers are marked from each other, and glue is asked for that stays open as long as they take (common practice, no source). */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

test("of two parts with fingers the second is marked from the first, tried corner by corner and lettered", () => {
  const build = built("rope-chest");
  expect(textOfStep(stepWith(build, /^Cut the joints in the front panel/u))).toContain(
    "write one letter on each corner",
  );
  const second = textOfStep(stepWith(build, /^Cut the joints in the left side/u));
  expect(second).toMatch(/mark these from the front panel \(\w+\) and the back panel \(\w+\)\./u);
  expect(second).toContain("Try each corner by itself");
  expect(JSON.stringify(build.advice)).toContain("Fingers or dovetails do not go together");
  expect(JSON.stringify(built("boot-bench").advice)).not.toContain("Fingers or dovetails");
});

// Four corners of 23 fingers and sockets, 46 faces each: at 6 s a face alone 18 minutes, and PVA glue is open for some 8.
test("what takes longer than usual glue stays open asks for glue that sets slowly, in the step and in the shopping list", () => {
  const { steps, purchases } = built("rope-chest");
  const chest = stepWith(built("rope-chest"), /^Build the chest/u);
  expect(textOfStep(chest)).toContain("take glue that sets slowly");
  expect(purchases.find(({ item }) => item === "wood glue")?.note).toContain("sets slowly");
  const lid = steps.find(({ kind, number }) => kind === "glue-up" && number !== chest.number);
  expect(lid && textOfStep(lid)).not.toContain("sets slowly");
  expect(built("boot-bench").purchases.find(({ item }) => item === "wood glue")?.note).not.toContain("slowly");
});
