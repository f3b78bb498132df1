import { describe, expect, test } from "vitest";
import { textOf } from "../../examples/compiled.ts";
import { judge } from "./plan.ts";

const RULE = "nail-holds-too-little";

describe("a nail", () => {
  const cedar = textOf("old-plans/cedar-chest");
  const strips = (length: string) =>
    cedar.replace(
      "[front-strip, back-strip], to: lid-board, with: nails, nail: { length: 2 }",
      `[front-strip, back-strip], to: lid-board, with: nails, nail: { length: ${length} }`,
    );

  // Strips 1 in thick before a board 16 in wide: half of 2 in is in it. At least half, common practice, no source.
  test.each([
    ["2", 0],
    ["1 3/4", 1],
    ["1 1/2", 1],
  ])("through 1 in, %s in long into wide wood: findings %i", (length, count) => {
    const told = judge(strips(length)).told(RULE);
    expect(told).toHaveLength(count);
    for (const { help } of told) expect(help).toContain("nail: { length: 2 in }");
  });
  // A base 1 in thick on a side of 7/8: 1 3/4 in leaves 1/8 in of 1 7/8; 2 in would come out.
  test("as long as the wood behind lets it be holds, though less than half of it is there", () => {
    const judged = judge(cedar);
    const base = judged.checks.filter(
      ({ rule, value, limit }) => rule === RULE && (value as number) / 25.4 < 0.8 && limit === value,
    );
    expect(base.length).toBeGreaterThan(0);
    expect(
      base.every(({ verdict, value }) => verdict === "holds" && Math.abs((value as number) - 0.75 * 25.4) < 0.001),
    ).toBe(true);
    expect(judged.told(RULE)).toEqual([]);
  });
});
