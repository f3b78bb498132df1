/** When jigs are made, how slabs are cut, how drawers are numbered, and what is told of a reader's wall (common practice, no source). */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

test("a jig is cut from planed wood when that has been planed", () => {
  const { steps, jigs = [], design } = built("old-plans/bookcase");
  const made = stepWith({ ...built("old-plans/bookcase"), steps }, /^Make the jigs?$/u).number;
  const from = design.stock.filter(({ name }) => jigs.some((jig) => jig.from === name)).map(({ name }) => name);
  const planed = steps.filter(({ kind, unit }) => kind === "mill" && from.includes(unit));
  expect(planed.length).toBeGreaterThan(0);
  for (const { number } of planed) expect(number).toBeLessThan(made);
});

test("two holes that have their measures get no template", () => {
  const { jigs = [] } = built("old-plans/china-closet");
  expect(
    jigs.filter(({ uses }) => uses.parts.length === 0 && uses.features.length === 0 && uses.holes.length < 3),
  ).toEqual([]);
});

test("a slab has its ends cut square to one straight edge, a thick one from both faces", () => {
  const top = textOfStep(stepWith(built("dining-bench"), /^Flatten the slab/u));
  expect(top).toContain(
    "Straighten one edge, cut the ends square to it, and cut the other edge parallel to it last: 1 1/4 in thick",
  );
  expect(top).not.toContain("from both faces");
  const thick = built("workbench-cart").steps.filter(({ text }) =>
    text.some((line) => line.includes("cut from both faces")),
  );
  expect(thick.length).toBeGreaterThan(0);
});

test("drawers one behind the other are numbered from the front, and those one above the other from below", () => {
  const said = (name: string): string =>
    plain(
      built(name)
        .steps.flatMap(({ text }) => text)
        .join(" "),
    );
  expect(said("old-plans/library-table")).toContain("with its number from the front, 1 to 2");
  expect(said("overalls-chest")).toContain("with its number from below, 1 to 5");
});

test("why the maker accepts one stud is no fact of the reader's wall", () => {
  const hung = textOfStep(stepWith(built("spice-cabinet"), /to the wall$/u));
  expect(hung).toContain("find the studs behind the place");
  expect(hung).not.toContain("were found: the first lies");
});

// The back stands 1 3/4 in past the shelf below and is flush with it above; as the piece stands the shelf would hang in the air. The heads are level either way.
test("what is screwed from a side begins on the side on which all of it reaches the bench", () => {
  const step = stepWith(built("old-plans/wall-shelf"), /^Screw the lower shelf/u);
  expect(step.up).toEqual([0, 0, -1]);
  expect(textOfStep(step)).toContain("Put it together upside down, as drawn.");
});
