import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";

test("what lies loose on pins is told to fall where the work that holds it is laid down, and nowhere else", () => {
  const build = built("spice-cabinet");
  const falls = build.steps.filter(({ text }) => text.some((each) => each.startsWith("What lies loose on pins falls")));
  expect(falls.map(({ title }) => title)).toEqual(["Add the face frame"]);
  const standing = build.steps.filter(({ up, number }) => up[2] === 1 && number > (falls[0]?.number ?? 0));
  expect(standing.length).toBeGreaterThan(0);
});

test("another row of holes is offered only where there is one", () => {
  const texts = (name: string): string =>
    built(name)
      .steps.flatMap(({ text }) => text)
      .join(" ");
  const offered = (name: string): boolean => texts(name).includes("Any other row does as well.");
  // Ten holes in each row of four; three holes for three shelves.
  expect(offered("index-cabinet")).toBe(true);
  expect(texts("old-plans/bookcase").includes("heights, measured from the bottom end")).toBe(true);
  expect(offered("old-plans/bookcase")).toBe(false);
});
