import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

test("two kinds of wooden buttons are told apart by where they go", () => {
  const build = built("dining-bench");
  const text = textOfStep(stepWith(build, /^Join the slab/u));
  expect(text).toMatch(
    /into the slab \(A\) at two long aprons \(C\), six in each joint\. Each takes 1 wooden button .* 1 5\/8 in/u,
  );
  expect(text).toMatch(
    /into the slab \(A\) at two short aprons \(E\), two in each joint\. Each takes 1 wooden button .* 1 9\/16 in/u,
  );
  // How they are made is told once, and no wood is bought for them.
  expect(text.match(/made of hardwood offcuts/gu)).toHaveLength(1);
  // #8 is 0.164 in thick (ASME B18.6.1): the next 64th that is wider is 11/64. No table of holes has it, so the tools name it.
  expect(text).toContain("bore it through behind the step, 11/64 in wide, a little wider than the screw");
  const drills = build.tools.find(({ tool }) => tool.startsWith("Drill bits:"));
  expect(plain(`${drills?.tool} ${drills?.why}`)).toMatch(/11\/64.* in wooden buttons/u);
  const bought = build.purchases.filter(({ item }) => item.startsWith("wooden button"));
  expect(bought.map(({ note }) => note)).toEqual([
    expect.stringContaining("made of hardwood offcuts"),
    expect.stringContaining("made of hardwood offcuts"),
  ]);
  expect(text).toContain("between its face and the shoulder of each button");
  const rows = build.fastenerTable.filter((row) => row.with.some((each) => each.startsWith("wooden button")));
  expect(rows.flatMap(({ ways }) => ways.map(({ at, into }) => `${at.join()} ${into}`)).toSorted()).toEqual([
    "C A",
    "E A",
  ]);
});
