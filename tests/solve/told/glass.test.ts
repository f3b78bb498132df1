import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, textOfStep } from "./examples.ts";

test("panes of a case go in while its doors are off, when all has its coats in one round", () => {
  const titles = built("old-plans/china-closet").steps.map(({ title }) => plain(title));
  const at = (title: RegExp): number => titles.findIndex((each) => title.test(each));
  const last = titles.findLastIndex((title) => /^Put in the long pane/u.test(title));
  expect(at(/^Take off the right door/u)).toBeGreaterThan(0);
  expect(at(/^Finish the piece/u)).toBeGreaterThan(at(/^Take off the right door/u));
  expect(at(/^Put in the long pane/u)).toBeGreaterThan(at(/^Finish the piece/u));
  expect(at(/doors? .*on again/u)).toBeGreaterThan(last);
  expect(titles.filter((title) => title.startsWith("Finish "))).toHaveLength(1);
  // No glass is drawn before it is in.
  const { design, steps } = built("old-plans/china-closet");
  const panes = new Set(design.stock.flatMap(({ name, form }) => (form === "pane" ? [name] : [])));
  const glass = new Set(design.parts.flatMap(({ id, stock }) => (panes.has(stock) ? [id] : [])));
  expect(glass.size).toBeGreaterThan(2);
  for (const { shows } of steps.slice(0, at(/^Put in the long pane/u)))
    expect([...shows.present, ...shows.fresh].filter((id) => glass.has(id))).toEqual([]);
});

test("two boards of one mark that are above and below are called so, one and both", () => {
  const all = built("old-plans/china-closet")
    .steps.map((step) => `${plain(step.title)} ${textOfStep(step)}`)
    .join(" ");
  expect(all).toContain("Screw on the bottom/top board (J)");
  expect(all).toContain("against two bottom/top boards (J)");
});
