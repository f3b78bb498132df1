import { describe, expect, test } from "vitest";
import { textOf } from "../../examples/compiled.ts";
import { judge } from "./plan.ts";

const RULE = "lid-without-grip";

describe("a lid", () => {
  const rope = textOf("rope-chest");
  const cedar = textOf("old-plans/cedar-chest");
  const found = (text: string): number => judge(text).told(RULE).length;

  // Two fingers side by side, their tips: 45 mm wide, 8 mm in and 8 mm high. Common practice, no source.
  test("that reaches 1/2 in past its chest with 1/2 in of air below is lifted there", () => {
    expect(judge(rope).of(RULE, "lid.frame")?.verdict).toBe("holds");
  });
  test("flush all round it is lifted by a recess under its front", () => {
    expect(judge(cedar).of(RULE, "back-strip")?.verdict).toBe("holds");
  });
  test.each([
    ["wide: 1/4, deep: 1/2, from: lock-rail.left + 16, to: lock-rail.right - 16", "too low"],
    ["wide: 1/2, deep: 1/4, from: lock-rail.left + 16, to: lock-rail.right - 16", "not deep enough"],
    ["wide: 1/2, deep: 1/2, from: lock-rail.left + 17 1/4, to: lock-rail.right - 17 1/4", "for one finger"],
  ])("a recess %s is %s", (recess) => {
    expect(found(cedar.replace(/wide: 1\/2, deep: 1\/2, from: [^}]*right - 16/u, recess))).toBe(1);
  });
  test("a knob will do as well", () => {
    const flush = cedar.replace(/,\n\s+rabbet: \{ along: front top[^}]*\}/u, "");
    expect(found(flush)).toBe(1);
    const knob = flush.replace(
      "fittings:\n",
      "fittings:\n  - { fit: knob, to: lid-board, face: top, deep: lid-board.front + 2 }\n",
    );
    expect(found(knob)).toBe(0);
  });
});
