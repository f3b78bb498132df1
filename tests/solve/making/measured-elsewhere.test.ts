import { describe, expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, textOfStep } from "../told/examples.ts";

/** The back uprights of the china closet are glued to their posts, and stand between braces that are glued to others. */
describe("a part that is built into one body and measured in another", () => {
  const { steps } = built("old-plans/china-closet");
  const at = (title: RegExp): number => steps.findIndex((step) => title.test(plain(step.title)));
  test("is cut when that stands, and before its own is built", () => {
    const cut = at(/^Cut the upright \(.\) to fit, at the back left$/u);
    expect(at(/^Build the left end$/u)).toBeGreaterThanOrEqual(0);
    expect(cut).toBeGreaterThan(at(/^Build the left end$/u));
    expect(at(/^Glue up the left end back post/u)).toBeGreaterThan(cut);
    expect(textOfStep(steps[cut] as (typeof steps)[number])).toContain("Measure from the lower brace");
  });
  test("of four of one name each is told by two words", () => {
    const titles = steps.map(({ title }) => plain(title)).filter((title) => /^Cut the upright/u.test(title));
    expect(titles.map((title) => title.replace(/^.*, /u, "")).toSorted()).toEqual([
      "at the back left",
      "at the back right",
      "at the front left",
      "at the front right",
    ]);
  });
});
