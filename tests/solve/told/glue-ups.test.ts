/** What a glue-up says of holding, proving and waiting. Common practice, no source. */
import { expect, test } from "vitest";
import type { StepDraft } from "../../../src/solve/build/steps/draft.ts";
import { clampsFrom } from "../../../src/solve/build/steps/shared-clamps.ts";
import { inches } from "../../../src/units/length.ts";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

const linesOf = (name: string, title: RegExp): readonly string[] => stepWith(built(name), title).text.map(plain);

test("a frame is proved square with one screw in each joint, before the others hold it as it is", () => {
  const lines = linesOf("boot-bench", /^Build the two ends/u);
  const drives = lines.findIndex((line) => line.startsWith("Drive 8 wood screws"));
  expect(lines[drives + 1]).toMatch(
    /^Of these drive one in each joint first\. Check that it is square: .* Then drive the others/u,
  );
  expect(lines.filter((line) => line.includes("Check that it is square"))).toHaveLength(1);
});

test("what is nailed from a side, wet with glue, is held", () => {
  const lines = linesOf("key-cabinet", /^Glue in three key rails/u);
  const held = lines.findIndex((line) => line.startsWith("Hold each while it is nailed: with clamps"));
  expect(held).toBeGreaterThan(0);
  expect(held).toBeLessThan(lines.findIndex((line) => /^(?:For each brad|Drive 12 brads)/u.test(line)));
});

// Sixteen clamps were on at once, eight of them long ones at most: with five long ones on, eight more are not free.
test("clamps are waited for by their reach, not by their number alone", () => {
  const glueUp = (count: number, opening: number): StepDraft =>
    ({
      clamps: [{ count, opening: inches(opening) }],
      waits: [{ for: "clamps", minutes: 45 }],
    }) as Partial<StepDraft> as StepDraft;
  expect(clampsFrom([glueUp(16, 10), glueUp(5, 40), glueUp(8, 40)])[2]).toEqual({ place: 1, minutes: 45 });
  expect(clampsFrom([glueUp(16, 10), glueUp(5, 40), glueUp(3, 10)])[2]).toBeNull();
});

// Nailed the day after: 45 minutes after the glue-up before says nothing.
test("clamps are not waited for where the glue has to be hard before", () => {
  expect(linesOf("old-plans/cedar-chest", /^Glue in the short rail \(J\), at the right/u).join(" ")).not.toContain(
    "With one set of clamps",
  );
});

// Three layers of plywood, held by figure-eight fasteners.
test("plywood is not said to move", () => {
  const lines = linesOf("workbench-cart", /^Add the plywood top/u).join(" ");
  expect(lines).toContain("Do not glue: so it comes off again.");
  expect(lines).not.toContain("free to move");
});

test("what is screwed on from below comes off while the work lies on it", () => {
  const build = built("loan-desk");
  const off = build.steps.findIndex(({ title }) => title.startsWith("Take off the panel"));
  const [step, next] = build.steps.slice(off, off + 2);
  expect(plain(step?.text[0] ?? "")).toMatch(
    /^The work still lies upside down on the panel \(E\) .*: draw the screws that hold them from above/u,
  );
  expect(step?.up).toEqual([0, 0, -1]);
  expect(next?.text[0]).toBe("Turn the work the right way up.");
});

// Rails 90 high between 180 and 826 mm from the floor: 646 − 2 × 90 = 466.
test("two rails that only a brace holds are proved by the room between them", () => {
  const told = linesOf("workbench-cart", /^Glue up the back upper rail/u);
  const ready = told.indexOf(
    "Cut two sticks 466 mm long, which hold the back upper rail (D) and the back lower rail (E) apart.",
  );
  expect(ready).toBeGreaterThan(-1);
  expect(ready).toBeLessThan(told.findIndex((line) => line.startsWith("Put glue into")));
  expect(told.join(" ")).toContain(
    "Before the clamps go on hold one of the two sticks between the back upper rail (D) and the back lower rail (E) at each end: pressed on what leans, they turn. Set a clamp beside each joint. Measure between them at both ends: 466 mm, the same at both, and the ends of the two in line.",
  );
});

// Shelves stand in the middle of a case 57 in high that lies on its back 11 in deep: jaws reach 4 in (common practice, no source).
test("clamps whose bars go under the work have it raised for them", () => {
  expect(linesOf("manuals-bookcase", /^Glue in four left shelves/u)).toContain(
    "Raise the work on blocks at least 2 in high: the lower clamps on the four left shelves (G) are out of reach from above, and their bars go under it.",
  );
  expect(linesOf("key-cabinet", /^Build the door/u).join(" ")).not.toContain("their bars go under it");
});

// Legs 29 in high splay 6 degrees: 29 × tan 6° = 3.048, which is 3 3/64.
test("splayed legs that lie on the bench are packed so that aprons stand plumb", () => {
  expect(linesOf("loan-desk", /^Glue in two long aprons/u).join(" ")).toContain(
    "put packing 3 3/64 in higher under the top ends of the leg (A) and the leg (B) than under their bottom ends",
  );
});

// Rails stand 3/8 in behind the faces of the posts: each is backed as the other is nailed.
test("what is nailed from two sides is held and backed before it is turned", () => {
  const told = linesOf("old-plans/medicine-cabinet", /^Nail on the bottom.top board/u);
  const turned = told.findIndex((line) => line.includes("turn the work"));
  expect(told.findIndex((line) => line.includes("clamp it in place first"))).toBe(turned - 1);
  expect(told[turned + 1]).toContain(
    "Put packing 3/8 in thick under the back long rail (H) and the front long rail (G) as each comes to lie below",
  );
});

test("what is not flush on any side has packing under it while its holes are marked", () => {
  const text = textOfStep(stepWith(built("workbench-cart"), /^Drill the legs \(A\)/u));
  expect(text).toContain("under what lies so much higher, put packing as thick as that");
});

test("what stands on end with a board across it is not said to lie flat", () => {
  expect(linesOf("rope-chest", /^Build the plinth/u)[0]).toBe(
    "Put it together as drawn, with the side that the heads go into uppermost.",
  );
  expect(linesOf("boot-bench", /^Build the two ends/u)).toContain(
    "Lay the work flat on the bench, with the side that the heads go into uppermost.",
  );
});

// Two long strips and two short ones: two clamps each way.
test("all mitres of a frame close in one glue-up, which is proved square", () => {
  const lines = linesOf("old-plans/cedar-chest", /^Glue up the long strip/u);
  expect(lines.filter((line) => line.startsWith("Check that it is square"))).toHaveLength(1);
  expect(lines).toContain(
    "Set the clamps so: one on the long strip (K) and one on the back strip (L) from left to right; one on each of two short strips (M) from front to back.",
  );
  expect(built("old-plans/cedar-chest").steps.some(({ title }) => title.startsWith("Glue in the short strip"))).toBe(
    false,
  );
});
