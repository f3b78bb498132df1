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

test("panes stand among what is cut later, with the steps in which they are ordered", () => {
  const { later = [], steps, cutList } = built("old-plans/china-closet");
  const ordered = later.filter((each) => each.ordered);
  expect(ordered.length).toBe(2);
  for (const { mark, steps: numbers } of ordered) {
    const told = steps.filter(
      (step) => /Now order the glass/u.test(textOfStep(step)) && textOfStep(step).includes(`(${mark})`),
    );
    // What is told as in an earlier step is not told in words.
    expect(numbers[0]).toBe(told[0]?.number);
    expect(told.filter(({ number }) => !numbers.includes(number))).toEqual([]);
  }
  // Both boards are cut to fit, each in a step of its own.
  const boards = cutList.find(({ name }) => name === "Bottom/top board");
  expect(later.find(({ mark }) => mark === boards?.mark)?.steps).toHaveLength(2);
});
