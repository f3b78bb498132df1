import { describe, expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";

describe("a frame that is bolted and comes apart", () => {
  const build = built("workbench-cart");
  const told = (title: RegExp): string => build.steps.find((step) => title.test(step.title))?.text.join(" ") ?? "";

  test("has its bolts turned in and tightened, and its dowels without glue", () => {
    const text = told(/^Add the left end/u);
    expect(text).toMatch(/Turn each into its cross dowel by hand.*with a wrench/u);
    expect(told(/^Bolt on two rails/u)).toContain("tap the dowels in without glue");
    expect(told(/^Bolt on two rails/u)).not.toContain("glued is hammered");
  });

  test("is drawn home by its bolts, since there is no clamp", () => {
    expect(told(/^Add the right end/u)).toContain("draw it home with the bolts");
  });

  // 612 × 1112 mm, three layers of 18 mm: a clamp every 8 in or 200 mm round it, which open over 54 mm and two cauls.
  test("a top of layers is clamped all round, and no brad is needed that is not bought", () => {
    const step = build.steps.find(({ title }) => title.startsWith("Glue up the plywood top"));
    expect(step?.text.join(" ")).not.toMatch(/brad/u);
    expect(step?.clamps?.[0]?.count).toBeGreaterThanOrEqual(14);
    expect(JSON.stringify(build.tools)).toMatch(/14 that open 160/u);
  });
});
