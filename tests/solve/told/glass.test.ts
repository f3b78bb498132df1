import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, textOfStep } from "./examples.ts";

test("panes of a case go in before its doors are hung: the case is laid on its side for them", () => {
  const titles = built("old-plans/china-closet").steps.map(({ title }) => plain(title));
  const last = titles.findLastIndex((title) => /^Put in the long pane/u.test(title));
  const doors = titles.findIndex((title) => /^Hang the (?:left|right) door/u.test(title));
  expect(last).toBeGreaterThan(0);
  expect(doors).toBeGreaterThan(last);
});

test("two boards of one mark that are above and below are called so, one and both", () => {
  const all = built("old-plans/china-closet")
    .steps.map((step) => `${plain(step.title)} ${textOfStep(step)}`)
    .join(" ");
  expect(all).toContain("Screw on the bottom/top board (J)");
  expect(all).toContain("against two bottom/top boards (J)");
});
