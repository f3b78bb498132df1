import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { solveText } from "../../examples/compiled.ts";
import { textOfStep } from "./examples.ts";

const plan = readFileSync(new URL("../design/plans/wedged-stool.yaml", import.meta.url), "utf8");
const told = (source: string): string => (solveText(source).build?.steps ?? []).map(textOfStep).join(" ");

test("a mortise right through is told so, with room for the wedges, and these with their size", () => {
  const text = told(plan);
  // Legs of 40: tenons 12 thick, 30 wide and 40 long through a seat of 40; two thirds of 40 are 27 to the nearest millimetre.
  expect(text).toContain("Cut four mortises 30 mm long and 12 mm wide, right through:");
  expect(text).toContain("Mark each on both faces from the same edge and end, and cut from both to the middle");
  expect(text).toContain("On the top face make each 1.5 mm longer at both ends, sloping to nothing at the other face");
  expect(text).toContain("from an offcut of this wood or a harder one, the grain along them: 12 mm wide, 33 mm long");
});

test("without wedges nothing is widened, and a blind mortise has its depth", () => {
  expect(told(plan.replace(", wedges: yes", ""))).toContain("right through:");
  expect(told(plan.replace(", wedges: yes", ""))).not.toContain("sloping to nothing");
  const blind = told(plan.replace("through tenon, tenon: { thick: 12, wedges: yes }", "mortise and tenon"));
  expect(blind).toMatch(/Cut four mortises \d+ mm long from front to back, \d+ mm wide and [\d.]+ mm deep:/u);
  expect(blind).not.toContain("from both to the middle");
});
