/** What is told is there, comes out when it is added up, and can be reached. Common practice, no source, but where figures are worked out by hand. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

const textOf = (name: string, title: RegExp): string => plain(textOfStep(stepWith(built(name), title)));

// The first end of the plinth lies on the bench when the second is driven from above.
test("screws that were left out on the other side have the work turned for them", () => {
  expect(textOf("rope-chest", /^Screw on the long plinth board/u)).toContain(
    "then turn the work so that the heads in the long plinth board (E) look up, and drive those that were left out there",
  );
  // The lower back of the wall shelf is driven from where the upper one is.
  expect(textOf("old-plans/wall-shelf", /^Glue in the left side/u)).toContain(
    "those that were left out of the lower back (E)",
  );
});

// 46 1/2 in, the outer nails 11 in from its ends, three of them: 24 1/2 in in two spaces.
test("spaces that are even add up", () => {
  const texts = built("old-plans/china-closet").steps.flatMap(({ text }) => text.map(plain));
  expect(
    texts.some((text) => /(?:evenly )?about 12 1\/4 in apart, the outer ones 11 in from its ends/u.test(text)),
  ).toBe(true);
});

test("several in one opening share what it is larger by", () => {
  const texts = built("overalls-chest").steps.flatMap(({ text }) => text.map(plain));
  expect(texts.some((text) => text.includes("wider or narrower by a fifth of it each"))).toBe(true);
});

test("the day of the first coat is told with coats that dry", () => {
  const { steps, timeline } = built("old-plans/china-closet");
  const coats = steps.find(({ waits }) => waits.some(({ for: what }) => what === "coats to dry"));
  const day = timeline.days.find(({ steps: own }) => own !== null && own[1] >= (coats?.number ?? 0));
  expect(day?.dries).toContain("coats to dry");
  expect(timeline.days.reduce((so, { bench }) => so + bench, 0)).toBe(timeline.bench);
  expect(steps.reduce((so, { bench }) => so + bench, 0)).toBe(timeline.bench);
});

// Its screws lie 3/8 in behind the door: 1 1/8 in from the front, less 3/4 in of the door.
test("a catch has to reach from its screws to the door", () => {
  const decides = built("old-plans/medicine-cabinet").hardware.flatMap(({ item }) => item.decides);
  expect(decides.map(({ name, value }) => `${name}: ${plain(value)}`)).toContain(
    "from its screws to the shut door: 3/8 in",
  );
});

test("what is hung has no part in a glue-up of posts: cuts for it are no part in hand", () => {
  expect(textOf("old-plans/plant-stand", /^Glue up the post \(A\), the rail/u)).not.toContain("(I) as there");
});

test("loose shelves go back before what is hung in front of them", () => {
  const text = textOf("index-cabinet", /^Put the left lower door/u);
  expect(text.indexOf("Before all else bring two loose shelves (D) in")).toBeGreaterThanOrEqual(0);
  expect(text.indexOf("Before all else")).toBeLessThan(text.indexOf("Turn the screws backwards"));
});
