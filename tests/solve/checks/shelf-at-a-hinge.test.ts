import { describe, expect, it } from "vitest";
import { hungExample } from "../../../src/findings/hung-example.ts";
import { solveText } from "../../examples/compiled.ts";

/** The lower cup of the 29 5/8 in door lies 107.156 mm up; its flange reaches 26.5 mm either way: 80.656 to 133.656. */
describe("a shelf at a hinge", () => {
  const found = (at: string) => solveText(hungExample(["at: [12]", `at: [${at}]`]));
  const helps = (at: string) =>
    found(at).findings.flatMap(({ rule, help }) => (rule === "shelf-at-a-hinge" ? [help] : []));

  it("is told by how much to raise or lower it", () => {
    // Top at 4 + 23/32 in = 119.856, its lower face at 101.6: 133.656 − 101.6 = 32.056 = 1.2621 in; 119.856 − 80.656 = 39.2 = 1.5433 in.
    const [help] = helps("4");
    expect(help).toContain("raise it by about 1 17/64 in");
    expect(help).toContain("lower it by about 1 35/64 in");
  });

  it("is none above or below it", () => {
    // 4 + 1.2621, and 4 − 1.5433, to the next eighth away from the hinge.
    for (const at of ["5 3/8", "2 3/8"]) {
      expect(helps(at)).toEqual([]);
      const check = found(at).build?.checks.find(
        ({ rule, subject }) => rule === "shelf-at-a-hinge" && subject === "cabinet.bay-shelf-1",
      );
      expect(check?.verdict).toBe("holds");
    }
    expect(helps("5 1/8")).toHaveLength(1);
    expect(helps("2 1/2")).toHaveLength(1);
  });

  it("is none where it ends behind it", () => {
    // The plate ends 64.256 mm behind the front of the case.
    const text = (back: string) => hungExample(["at: [12]", `at: [4], set back: ${back}`]);
    const rules = (back: string) => solveText(text(back)).findings.map(({ rule }) => rule);
    expect(rules("1")).toContain("shelf-at-a-hinge");
    expect(rules("2")).not.toContain("shelf-at-a-hinge");
  });
});
