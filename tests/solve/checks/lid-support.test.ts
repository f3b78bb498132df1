import { describe, expect, test } from "vitest";
import { solveText, textOf } from "../../examples/compiled.ts";
import { judge } from "./plan.ts";

const INCH = 25.4;
const RULE = "lid-support-out-of-reach";

describe("the arm of a lid support", () => {
  const text = textOf("rope-chest");
  // Seen from the left: the pin at 20 1/8 from the front and 20 up; the body 4 from the back of the side at 20, its middle half of 4 less
  // 1/8 below the side's edge at 19 3/4; the plate over it, under the lid at 20 1/4. A quarter turn takes the plate from (-4 1/8, 1/4)
  // of the pin to (1/4, 4 1/8).
  const shut = 20.25 - (19.75 - 1.875);
  const upright = Math.hypot(20.125 + 0.25 - 16, 20 + 4.125 - (19.75 - 1.875));

  test("is as long as geometry says where the lid stands upright", () => {
    const check = judge(text).of(RULE, "chest.left-side.stay.1");
    expect((check?.value ?? 0) / INCH).toBeCloseTo(upright, 6);
    expect([check?.verdict, check?.limit]).toEqual(["holds", 8 * INCH]);
  });
  const told = (plan: string) => solveText(plan).findings.filter(({ rule }) => rule === RULE);
  test.each([
    [`1 1/2 to ${Math.floor(upright * 8) / 8}`, 1],
    [`1 1/2 to ${Math.ceil(upright * 8) / 8}`, 0],
    [`${shut} to 8`, 0],
    [`${shut + 1 / 8} to 8`, 1],
  ])("where it reaches %s in, findings: %i", (reach, count) => {
    expect(told(text.replace("carries: 12 lb", `carries: 12 lb, reach: ${reach}`))).toHaveLength(count);
  });
  test("in the middle of a chest it does not exist, and is told how much nearer to the hinge it would do", () => {
    const placed = (deep: string) => textOf("old-plans/cedar-chest").replace(/, deep: left-end.back - [\d /]+/u, deep);
    const [finding] = told(placed(""));
    // Before the pin, 9 in from the middle of the side and in line with the lid's underside: √(9² + 11²) upright, and what the barrel adds.
    expect(finding?.message).toMatch(/2 in apart .* shut and about 14 3\/8 in when it is 90° open.*1 1\/2 in to 8 in/u);
    const [, whole = "", quarters = "0"] = /put it (\d+)(?: (\d)\/4)? in nearer/u.exec(finding?.help ?? "") ?? [];
    const by = Number(whole) + Number(quarters) / 4;
    expect(told(placed(`, deep: left-end.front + 7 1/8 + ${by}`))).toEqual([]);
    expect(told(placed(`, deep: left-end.front + 7 1/8 + ${by - 1 / 4}`))).toHaveLength(1);
  });
});
