/** Words that a maker stumbles over. Common practice, no source. */
import { expect, test } from "vitest";
import { sayWeight } from "../../../src/solve/build/cut-list/weight.ts";
import { built } from "../../examples/compiled.ts";
import { plain, textOfStep } from "./examples.ts";

const said = (name: string): string => built(name).steps.map(textOfStep).join(" ");

test("nothing weighs nothing", () => {
  expect([sayWeight(0.2, "mm"), sayWeight(0.2, "inch"), sayWeight(24.4, "mm")].map(plain)).toEqual([
    "1 kg",
    "1 lb",
    "24 kg",
  ]);
});

test("what is said of hardware stands in brackets, and one hole is no holes", () => {
  expect(said("old-plans/cedar-chest")).toContain(
    "lid support (holds at every angle, carries 15 lb, 4 in high, middles of its halves 1 1/2 in to 8 in apart)",
  );
  expect(said("old-plans/china-closet")).toMatch(/2 catches \(each with a roller, holds 9 lb/u);
  expect(said("old-plans/china-closet")).toContain("in the hole bored for it");
});

test("spacers are cut from the end of a strip that can be held, never ripped short", () => {
  expect(said("boot-bench")).toMatch(
    /rip a strip 1\/4 in thick, long enough to be held at the saw, and cut 2 spacers/u,
  );
});

test("buttons are measured from shoulders only where there are some", () => {
  // Aprons with tenons, and with dowels.
  expect(said("dining-bench")).toContain("in from its shoulders");
  expect(said("loan-desk")).not.toContain("from its shoulders");
  expect(said("loan-desk")).toContain("in from its ends");
});

test("sheets that are glued in layers are not flattened", () => {
  const top = built("workbench-cart").steps.find(({ title }) => title.startsWith("Glue up the plywood top"));
  expect(top?.reminders.join()).toContain("until the next day");
  expect(top?.reminders.join()).not.toContain("flattened");
});

test("a screw is as long as the hardware that it passes and the wood that it goes into; drawer stops are told with their size", () => {
  const [stops] = built("old-plans/library-table").purchases.filter(({ item }) => item.startsWith("drawer stop"));
  // 3/4 in of stop and 3/8 in of box back, less 1 1/2 mm, by eighths.
  expect(plain(stops?.item ?? "")).toBe("drawer stop 1 1/2 in long, 3/4 in wide, 3/4 in thick");
  expect(plain(stops?.note ?? "")).toContain("1 to a piece, #6 × 1 in;");
});

test("what is turned over is heavy also where nothing is joined to it, and a bolt has no point", () => {
  const bench = built("workbench-cart").steps;
  const turned = built("old-plans/china-closet").steps.filter(
    ({ kind, title, text }) =>
      (kind === "finish" || title.endsWith("on again")) &&
      text.some((each) => /^(?:Turn the work|Stand the work)/u.test(each)),
  );
  for (const { cautions } of turned) expect(cautions.join()).toContain("lift with a second person");
  const bolted = bench.filter(
    ({ actions }) =>
      actions.some((each) => each.do === "drive") &&
      actions.every((each) => each.do !== "drive" || each.tool === "wrench"),
  );
  expect([turned.length, bolted.length].every((count) => count > 0)).toBe(true);
  for (const { cautions } of bolted) expect(cautions.join()).not.toContain("the point would come out");
});

test("a mitred frame is clamped both ways; what goes into its groove from the side is pressed", () => {
  const [door] = built("old-plans/medicine-cabinet").steps.filter(({ title }) => title === "Build the door");
  expect(door && textOfStep(door)).toMatch(/set 2 clamps that open 25 in, and 2 clamps that open 17 in/u);
  expect(said("old-plans/china-closet")).toMatch(/Press the upright \([A-Z]\) into the groove, with glue\./u);
  expect(said("old-plans/medicine-cabinet")).toMatch(/Slide the panel \([A-Z]\) into the grooves/u);
});

test("the work is turned upside down once for the screws of what is clamped in as it stands", () => {
  const turned = built("old-plans/china-closet").steps.filter(({ text }) =>
    text.some((each) => each.includes("turn the work upside down with it")),
  );
  expect(turned.length).toBeGreaterThan(0);
  for (const step of turned) expect(textOfStep(step)).not.toContain("Turn the work upside down.");
});
