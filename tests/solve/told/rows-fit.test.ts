/** Spaces that are stepped off fill what they are measured from. By hand from the plans; over all of them by what is told and the sizes of the cut list. */
import { expect, test } from "vitest";
import type { Build } from "../../../src/solve/build.ts";
import { type Length, UNITS_PER_INCH } from "../../../src/units/length.ts";
import { subtract, toNumber } from "../../../src/units/rational.ts";
import { built, EXAMPLES } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

const inches = (length: Length): number => toNumber(length) / UNITS_PER_INCH;
const read = (text: string): number =>
  text.split(" ").reduce((sum, word) => {
    const [n = 0, d = 1] = word.split("/").map(Number);
    return sum + n / d;
  }, 0);

const TOLD =
  /(evenly )?about ([\d /]+) in(?: apart[^;]*?)?, the outer ones ([\d /]+) in from (?:its|their) (ends|edges)/gu;

/** The rows of nails that a step drives: how many, in what, and along which of its sizes. */
function rowsIn({ fasteners, parts, steps }: Build, i: number) {
  const driven = (steps[i]?.actions ?? []).flatMap((action) => (action.do === "drive" ? action.fasteners : []));
  const own = fasteners.filter(({ id, kind }) => driven.includes(id) && ["nail", "brad", "staple"].includes(kind));
  return [...new Set(own.map(({ joint }) => joint))].flatMap((joint) => {
    const row = own.filter((each) => each.joint === joint);
    const spread = [0, 1, 2].map((axis) => {
      const at = row.map(({ head }) => inches(head.at[axis as 0]));
      return Math.max(...at) - Math.min(...at);
    });
    const axis = spread.indexOf(Math.max(...spread)) as 0;
    const part = parts.find(({ id }) => id === row[0]?.through[0]);
    if (!part || row.length < 3) return [];
    const side = { across: 0, deep: 1, up: 2 }[part.axes.length] === axis ? "ends" : "edges";
    return [{ joint, n: row.length, side, size: inches(subtract(part.blank.high[axis], part.blank.low[axis])) }];
  });
}

// K is 38 in long and 18 1/2 in wide: 8 × 4 7/16 + 2 × 1 1/4, 4 × 4 1/8 + 2 × 1.
test("a panel in rabbets is measured to its true edges", () => {
  const told = textOfStep(stepWith(built("rope-chest"), /^Build the chest/u));
  expect(told).toContain("about 4 7/16 in, the outer ones 1 1/4 in from its ends");
  expect(told).toContain("about 4 1/8 in, the outer ones 1 in from its edges");
});

// The back panel ends in grooves of the sides, where no rule reaches it: 16 9/16 in between them.
test("where the ends of a panel lie in other parts, those are measured from", () => {
  expect(textOfStep(stepWith(built("key-cabinet"), /^Glue in three key rails/u))).toContain(
    "from the left side (A) and the right side (B)",
  );
});

test.each(EXAMPLES)("all rows of %s come out", (name) => {
  const build = built(name);
  build.steps.forEach(({ text }, i) => {
    for (const sentence of text.map(plain).filter((each) => /^Drive \d+ (?:nails|brads|staples)/u.test(each))) {
      const told = [...sentence.matchAll(TOLD)].map(([, even, gap = "", from = "", side]) => ({
        ...{ even: even !== undefined, gap: read(gap), from: read(from), side },
      }));
      const rows = rowsIn(build, i);
      for (const one of told) {
        const fits = rows.some(
          ({ n, side, size }) =>
            side === one.side &&
            Math.abs((n - 1) * one.gap + 2 * one.from - size) <= (n - 1) * (one.even ? 1 / 32 : 1 / 4) + 1 / 32,
        );
        expect(fits, `${name} ${i + 1}: ${sentence} ${JSON.stringify({ one, rows })}`).toBe(true);
      }
    }
  });
});
