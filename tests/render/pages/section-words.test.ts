import { expect, test } from "vitest";
import { render } from "../../../src/render/index.ts";
import { bounds, leaves } from "../../../src/render/shapes.ts";
import { groupsOf } from "../../../src/render/write/gather.ts";
import { solveText, textOf } from "../../examples/compiled.ts";
import { textsOf } from "../boxes.ts";

test("what the letters of a section stand for begins close below it, on its page and in its column", () => {
  const { build } = solveText(textOf("workbench-cart"));
  if (build === undefined) throw new Error("it does not compile");
  const { value } = render(build, { paper: "a4", date: "2025-03-01", version: "0.0.0" });
  const found = (value?.pages ?? []).flatMap(({ items }) =>
    textsOf(items)
      .filter(({ text }) => /^Cut through .*seen from/.test(text))
      .map(({ x, y }) =>
        groupsOf(items, "figure").some((figure) => {
          const [left, , right, bottom] = bounds(leaves(figure.items));
          // From the foot of a drawing to the baseline of a line of 13 points below it.
          return x < right && x > left - 150 && y > bottom && y - bottom < 20;
        }),
      ),
  );
  // The top is screwed on while the work stands on its head: its right is at the left of the drawing.
  const told = (value?.pages ?? []).flatMap(({ items }) => textsOf(items).map(({ text }) => text)).join(" ");
  expect(told).toMatch(/a figure-eight fastener, seen\s+from the front, upside down, as the work lies\./);
  expect(found.length).toBeGreaterThan(0);
  expect(found).not.toContain(false);
});
