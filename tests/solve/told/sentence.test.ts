/** Passes over the steps ask what a sentence tells, not how it is worded: in other words it counts as before. */
import { expect, test } from "vitest";
import { usedUp } from "../../../src/solve/build/purchases/used-up.ts";
import { oneForNow } from "../../../src/solve/build/steps/in-turn.ts";
import { likeBefore } from "../../../src/solve/build/steps/like-before.ts";
import { step } from "../../../src/solve/build/steps/making-step.ts";
import { reworded, type Sentence, sentence, tells, toldBy, wordsOf } from "../../../src/solve/build/steps/sentence.ts";
import { withTurns } from "../../../src/solve/build/steps/turns.ts";
import { closedAtOnce, withClampPlaces } from "../../../src/solve/build/steps/words/closed-at-once.ts";
import { leadsToldOnce } from "../../../src/solve/build/steps/words/lead-holes.ts";

const other = (told: Sentence): Sentence => reworded(told, () => "In other words.");
const draft = (title: string, text: readonly Sentence[]) =>
  step("join", title, text, [], { unit: title, bench: 1, cautions: [], fresh: [] });

test("in other words it tells the same", () => {
  const told = other(sentence("Clamp it.", { clamps: { later: null } }));
  expect(wordsOf(told)).toBe("In other words.");
  expect(tells(told, "clamps")).toEqual({ later: null });
  expect(tells(told, "glues")).toBeNull();
  expect(tells("Clamp it.", "clamps")).toBeNull();
});

test("glue first, then the push, the clamps last", () => {
  const glue = other(sentence("Brush glue into the dado.", { glues: true }));
  const set = sentence("In it goes, clamped.", { clamps: { later: "In it goes." } });
  const clamp = other(sentence("Clamp it.", { clamps: { later: null } }));
  const told = closedAtOnce([
    [glue, set],
    [glue, "Push it home.", clamp],
  ]);
  expect(told.map(wordsOf)).toEqual([glue, glue, "In it goes.", "Push it home.", clamp].map(wordsOf));
  const drive = sentence("In other words.", { drives: "fasteners" });
  expect(withClampPlaces([...told, drive], ["Here."])).toEqual([...told, "Here.", drive]);
});

test("one screw for now is told after the sentence that drives", () => {
  const hole = other(sentence("Bore.", { drives: "holes" }));
  const drive = other(sentence("Drive.", { drives: "fasteners" }));
  expect(oneForNow([hole, drive, "Then rest."]).map((each) => wordsOf(each).slice(0, 17))).toEqual([
    ...["In other words.", "In other words.", "Of these drive on", "Then rest."],
  ]);
});

test("work that is turned by its own step is not turned twice", () => {
  const bodies = (to: readonly string[]) => [{ do: "add", parts: ["a", "b"], to, how: "straight", legs: [] } as const];
  const shows = { fresh: [], present: ["a", "b"], travel: [], fasteners: [] };
  const first = {
    ...draft("First", ["Set it."]),
    actions: bodies([]),
    shows: { ...shows, fresh: ["a", "b"], present: [] },
  };
  const then = (text: readonly Sentence[]) => ({ ...draft("Then", text), up: [0, 0, -1] as const, shows });
  const told = (text: readonly Sentence[]) => withTurns([first, then(text)], new Set(), () => [])[1]?.text.map(wordsOf);
  expect(told(["Bore it."])).toEqual(["Turn the work upside down.", "Bore it."]);
  expect(told([other(sentence("Turn it.", { turns: "so" }))])).toEqual(["In other words."]);
});

test("counts are told anew in a step that refers to one before", () => {
  const count = (n: number): Sentence => sentence(`${n} of them are at hand.`, { counts: true });
  const same = ["Push the pins in.", "Lay the shelf on.", "It stays loose."];
  const [, again] = likeBefore([draft("Add", [...same, count(4)]), draft("Add", [...same, count(4)])]);
  expect(again?.text).toEqual(["Do as in step 1.", count(4)]);
});

test("the second lead hole is told without its reasons", () => {
  const lead = { kind: "nail", size: "2 mm across and 20 mm deep", whole: "20 mm", short: false };
  const bore = other(sentence("Bore.", { lead, drives: "holes" }));
  const [first, again] = leadsToldOnce([draft("One", [bore]), draft("Two", [bore])]);
  expect(first?.text).toEqual([bore]);
  expect(again?.text.map(wordsOf)).toEqual(["For each nail bore a lead hole first, 2 mm across and 20 mm deep."]);
});

test("what is used up is bought, in the units of the plan", () => {
  const pull = sentence("In other words.", {
    uses: [
      { of: "spare screw", item: "wood screw 4 mm × 30 mm" },
      { of: "double-sided tape", holds: "fronts" },
    ],
  });
  const fences = sentence("In other words.", { uses: [{ of: "screws in fences" }] });
  const steps = [toldBy([pull, fences], (words) => words), toldBy([fences], (words) => words)];
  expect(usedUp(steps, "mm").map(({ item, used }) => [item, used])).toEqual([
    ["double-sided tape, thin, no foam", 1],
    ["wood screw 4 mm × 30 mm", 1],
    // Four in the fences of each jig.
    ["wood screw for the fences of jigs, thin, 30 mm long", 8],
  ]);
  expect(toldBy(["Drive a spare wood screw."], (words) => words)).toEqual({});
});
