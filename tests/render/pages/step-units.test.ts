import { expect, test } from "vitest";
import type { Drawn } from "../../../src/render/pages/drawn-part.ts";
import { textUnder } from "../../../src/render/pages/step-text.ts";
import { overPages, stepUnits } from "../../../src/render/pages/step-units.ts";
import { block } from "../../../src/render/typeset/atom.ts";
import type { Unit } from "../../../src/render/typeset/columns.ts";
import { textsOf } from "../boxes.ts";
import { bench } from "../fixture/bench.ts";

const [first] = bench().steps;
if (!first) throw new Error("a bench has steps");
/** Each sentence is one line. */
const step = { ...first, cautions: [], reminders: [], text: Array.from({ length: 20 }, (_, i) => `Do this ${i}.`) };
const drawn = (name: string, height: number): Drawn => ({
  height,
  paint: (x, y) => [{ kind: "text", x, y, text: name, font: "regular", size: 12, ink: [0, 0, 0], width: 20 }],
});
const under = { text: textUnder(step, 240), width: 240, most: 1000 };
const heightOf = (unit: Unit): number => unit.reduce((sum, { height, above }) => sum + height + above, 0);
const wordsIn = (unit: Unit): string =>
  textsOf(unit.flatMap((atom) => atom.paint(0, 0)))
    .map(({ text }) => text)
    .join(" ");

test("a step that goes over the page has its picture on both, and all its words once", () => {
  const units = overPages(step, drawn("large", 180), drawn("small", 120), under, 400);
  const [one = [], two = []] = units ?? [];
  expect(units).toHaveLength(2);
  expect(heightOf(one)).toBeLessThanOrEqual(400);
  const words = [wordsIn(one), wordsIn(two)];
  expect(words[0]).toContain("large");
  expect(words[1]).toMatch(/\(continued\) .*small/);
  const said = words.join(" ").match(/Do this \d+/g) ?? [];
  expect(said).toEqual(step.text.map((text) => text.replace(".", "")));
  expect([one[0]?.of, two[0]?.of]).toEqual([`step ${step.number}`, `step ${step.number}`]);
});

test("a step does not go over where few words would stand on either page", () => {
  // Title and picture take more than 200: no room for five lines.
  expect(overPages(step, drawn("large", 180), drawn("small", 120), under, 280)).toBeNull();
  const short = { ...step, text: step.text.slice(0, 5) };
  expect(
    overPages(short, drawn("large", 180), drawn("small", 120), { ...under, text: textUnder(short, 240) }, 900),
  ).toBeNull();
});

test("nor where more is drawn among its words", () => {
  const jig = { above: "Do this 9", atom: block(100, () => []) };
  const picture = { ...drawn("large", 180), among: [jig, { ...jig, above: "Do this 15" }] };
  const own = { ...under, text: textUnder(step, 240) };
  expect(stepUnits(step, picture, own)).toHaveLength(2);
  expect(overPages(step, picture, picture, own, 400)).toBeNull();
});

test("a short rest is read with the picture before it", () => {
  const units = overPages(step, drawn("large", 180), drawn("small", 120), under, 560) ?? [];
  expect(units).toHaveLength(2);
  expect(wordsIn(units[0] ?? [])).toContain("large");
  expect(wordsIn(units[1] ?? [])).toMatch(/\(continued\)/);
  expect(wordsIn(units[1] ?? [])).not.toContain("small");
});
