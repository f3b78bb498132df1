/** Where a part goes is told from what a rule can reach. Worked out by hand from the sizes of the plans. */
import { expect, it } from "vitest";
import { solveText, textOf } from "../../examples/compiled.ts";
import { plain } from "./plans.ts";

const wordsOf = (name: string): string =>
  plain((solveText(textOf(name)).build?.steps ?? []).flatMap(({ text }) => text).join("\n"));

// The bottom lies in rabbets, 18 1/2 × 38; the plinth is 39 − 2 × 1 1/2 = 36 long: (38 − 36) / 2.
it("from the true ends of what lies in rabbets", () => {
  expect(wordsOf("rope-chest")).toContain(
    "Place the long plinth board (E) midway between the left and the right (1 in from each) and 1 in from the front of the bottom panel (K).",
  );
});

// The back lies in grooves of the case by then, and nobody can see its ends.
it("from what a part is let into, where its ends are inside that", () => {
  const words = wordsOf("key-cabinet");
  expect(words).toContain("on the back panel (E), against the left side (A) and the right side (B)");
  expect(words).toContain("in from the bottom panel (C)");
  expect(words).not.toMatch(/key rail \(K\) [^.]* from the bottom of the back panel/u);
});
