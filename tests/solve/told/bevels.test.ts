import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { textOfStep } from "./examples.ts";

test("a bevel over the whole edge is marked on one face, and runs to the far one", () => {
  const texts = built("key-cabinet").steps.map(textOfStep);
  const bevels = texts.filter((text) => text.includes("Bevel the"));
  expect(bevels.length).toBeGreaterThan(0);
  // A cleat 3/4 in thick, bevelled at 45 degrees: the line is 3/4 in from the edge, and nothing of the edge is left to mark.
  expect(bevels.join(" ")).toContain(
    "Bevel the upper cleat along its whole bottom: mark a line on the front, 3/4 in from the bottom, and saw or plane from this line to the edge where the back meets the bottom.",
  );
  expect(bevels.join(" ")).not.toContain("down on the");
});
