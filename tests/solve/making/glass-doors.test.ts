import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";

const lines = (name: string): readonly string[] => built(name).steps.flatMap(({ text }) => text);

// Two doors side by side, with panes (common practice, no source).
test("doors with panes are tried bare and empty, have their coats with the rest, and then the glass", () => {
  const { steps, design } = built("old-plans/china-closet");
  const place = (title: RegExp): number => steps.findIndex((each) => title.test(each.title));
  const order = [/^Hang the right door/u, /^Take off the right door/u, /^Finish .* with varnish/u, /^Put in the pane/u];
  const places = [...order, /^Put the left door and the right door on again/u].map(place);
  expect(places).not.toContain(-1);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  expect(steps[places[1] as number]?.text.join(" ")).toContain("Plane what rubs now, while the wood is bare.");
  // What comes off without glass goes on with it.
  const panes = new Set(design.stock.flatMap(({ name, form }) => (form === "pane" ? [name] : [])));
  const glass = new Set(design.parts.filter(({ stock }) => panes.has(stock)).map(({ id }) => id));
  const moved = (at: number, what: "add" | "remove"): readonly string[] =>
    steps[at]?.actions.flatMap((action) => (action.do === what ? action.parts : [])) ?? [];
  expect(moved(places[1] as number, "remove").filter((id) => glass.has(id))).toEqual([]);
  expect(moved(places[4] as number, "add").filter((id) => glass.has(id))).not.toEqual([]);
  // Only the ends, of which the glass is shut in, have coats of their own before.
  expect(steps.filter(({ title }) => /door.* before the glass/u.test(title))).toEqual([]);
});

test("doors side by side are not numbered from below", () => {
  expect(lines("old-plans/china-closet").some((line) => line.includes("from below, 1 to 2"))).toBe(false);
  expect(lines("overalls-chest").some((line) => line.includes("from below, 1 to 5"))).toBe(true);
});

test("what lies already as it must is not lifted, and eye protection is told once in a step", () => {
  const { steps } = built("old-plans/china-closet");
  const [, blocks] = steps.filter(({ title }) => title.startsWith("Screw on two shelf blocks"));
  expect(blocks?.cautions.filter((caution) => caution.includes("lift with a second person"))).toEqual([]);
  const twice = steps.filter(({ cautions }) => cautions.filter((each) => /eye protection/iu.test(each)).length > 1);
  expect(twice.map(({ title }) => title)).toEqual([]);
  // Where it is turned it is lifted.
  const lifted = steps.filter(({ cautions }) => cautions.some((each) => each.startsWith("This weighs about")));
  expect(lifted.length).toBeGreaterThan(0);
});

test("glass is ordered as soon as its rabbets can be measured, long before it goes in (common practice, no source)", () => {
  const { steps } = built("old-plans/china-closet");
  const ordered = steps.filter(({ text }) => text.some((line) => line.startsWith("Now order the glass")));
  const goesIn = steps.filter(({ title }) => title.startsWith("Put in the"));
  expect(ordered.length).toBeGreaterThan(0);
  expect(Math.min(...ordered.map(({ number }) => number))).toBeLessThan(
    Math.min(...goesIn.map(({ number }) => number)),
  );
});
