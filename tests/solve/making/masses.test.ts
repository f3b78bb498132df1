import { describe, expect, test } from "vitest";
import { sayWeight, takesTwo, weighsMuch } from "../../../src/solve/build/cut-list/weight.ts";
import { bench, built, plain } from "./plans.ts";

const KG_PER_POUND = 0.45359237;
const CUBIC_INCHES_PER_CUBIC_FOOT = 1728;
/** White oak: specific gravity 0.68 at 12 % (FPL-GTR-190, from memory), water 62.4 lb/ft³: 0.68 × 62.4 × 1.12 = 47.5 lb/ft³. */
const POUNDS_PER_CUBIC_INCH = (0.68 * 62.4 * 1.12) / CUBIC_INCHES_PER_CUBIC_FOOT;

describe("the bench of white oak", () => {
  const build = built(bench());
  const pounds = (...ids: string[]) =>
    build.parts.filter(({ id }) => ids.includes(id)).reduce((so, { mass }) => so + mass / KG_PER_POUND, 0);

  // 52 × 14 × 1 1/4 = 910 in³: 25.0 lb.
  test("the seat", () => {
    expect(POUNDS_PER_CUBIC_INCH * 910).toBeCloseTo(25.0, 1);
    expect(pounds("seat")).toBeCloseTo(25.0, 1);
  });
  // 2 1/4 × 2 1/4 × 16 1/2, less two mortises 3/8 × 2 3/4 × 1 5/16: 83.53 − 2.71 = 80.82 in³.
  test("a leg, its mortises taken out", () => {
    const cubic = 2.25 * 2.25 * 16.5 - 2 * 0.375 * 2.75 * 1.3125;
    expect(pounds("front-left-leg") / (POUNDS_PER_CUBIC_INCH * cubic)).toBeCloseTo(1, 3);
  });
  // 39 1/2 × 3 1/2 × 1 between the shoulders, and two tenons 3/8 × 2 3/4 × 1 1/4.
  test("an apron with its tenons", () => {
    const cubic = 39.5 * 3.5 + 2 * 0.375 * 2.75 * 1.25;
    expect(pounds("front-apron") / (POUNDS_PER_CUBIC_INCH * cubic)).toBeCloseTo(1, 3);
  });
  test("nothing of it needs a second person", () => {
    expect(build.steps.flatMap(({ cautions }) => cautions).join()).not.toContain("second person");
  });
});

test("over 20 kg a part's weight is on the cut list, over 50 lb it takes two", () => {
  expect([20, 20.1].map(weighsMuch)).toEqual([false, true]);
  expect([22.67, 22.69].map(takesTwo)).toEqual([false, true]);
  expect([sayWeight(22.68, "inch"), sayWeight(22.68, "mm")].map(plain)).toEqual(["50 lb", "23 kg"]);
});

test("a seat twice as thick is heavy: said in the cut list, where it is glued up and where it is put on", () => {
  // 52 × 14 × 2 1/2 = 1820 in³: 50.05 lb.
  const heavy = built(
    bench()
      .replace("sold as: 6/4, planed to: 1 1/4", "sold as: 12/4, planed to: 2 1/2")
      .replace("top: 17 3/4", "top: 19"),
  );
  const note = heavy.cutList.find(({ parts }) => parts.includes("seat"))?.notes.join();
  expect(plain(note ?? "")).toContain("weighs about 50 lb");
  const cautioned = heavy.steps.filter(({ cautions }) => cautions.join().includes("lift with a second person"));
  expect(cautioned.map(({ kind }) => kind)).toContain("glue-up");
});
