import { expect, test } from "vitest";
import { auditOf, built, textOf } from "../../examples/compiled.ts";

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

// 34 7/16 in long behind an opening 33 1/8 in wide: on a slope of some 20° it passes, its pins out of the way.
test("shelves behind a face frame come off for the finish when their pins are pulled, and go on again after it", () => {
  const text = textOf("index-cabinet");
  const build = built("index-cabinet");
  const place = (unit: string): number => build.steps.findIndex((step) => step.unit === unit);
  const [off, on] = [place("take off"), place("put on again")];
  const shelves = build.design.parts.map(({ id }) => id).filter((id) => id.includes("loose-shelf"));
  const moved = (at: number, verb: "remove" | "add"): readonly string[] =>
    build.steps[at]?.actions.flatMap((action) => (action.do === verb ? action.parts : [])) ?? [];
  expect(shelves).toHaveLength(2);
  for (const id of shelves)
    expect([moved(off, "remove").includes(id), moved(on, "add").includes(id)]).toEqual([true, true]);
  const finish = build.steps.findIndex(({ title }) => title.startsWith("Finish the piece"));
  expect([off < finish, finish < on]).toEqual([true, true]);
  expect(build.steps[off]?.text.join(" ")).toMatch(
    /hold each up, pull its pins, raise one end until it slopes about /u,
  );
  expect(build.steps[on]?.text.join(" ")).toContain("push its pins in below it");
  expect(auditOf(text, build)).toEqual([]);
});
