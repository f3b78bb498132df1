import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { toMillimetres } from "../../../../src/units/length.ts";
import { solveText } from "../../../examples/compiled.ts";

const text = readFileSync(new URL("../plans/hall-table.yaml", import.meta.url), "utf8");
const stillOf = (plan: string): number | undefined => {
  const still = solveText(plan)
    .build?.design.joints.flatMap((joint) => joint.still ?? [])
    .at(-1);
  return still && toMillimetres(still.at);
};

// Legs of 45 mm, 25 mm in from the edge, rails of 20 mm flush with them: 25 to 45 mm from the front, 305 to 325 from it at the back.
// Fixed at one rail, free at the other: common practice, no source.
test.each([
  ["screwed fast at the front", text, (25 + 45) / 2],
  [
    "screwed fast nowhere",
    text
      .replace("  - { join: front-rail, to: table-top, with: pocket screws, count: 3 }\n", "")
      .replace("join: back-rail, to: table-top", "join: [front-rail, back-rail], to: table-top"),
    350 / 2,
  ],
  ["told where", text.replace("with: buttons in a groove,", "with: buttons in a groove, hold still: back,"), 325],
])("a top %s moves from there", (_, plan, at) => {
  expect(stillOf(plan)).toBeCloseTo(at, 6);
});
