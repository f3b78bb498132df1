/** Steps say once what is the same, and tell apart what is not. Common practice, no source, but where it is arithmetic. */
import { describe, expect, it } from "vitest";
import { reservedOn } from "../../../src/solve/build/layout-facts.ts";
import { likeBefore } from "../../../src/solve/build/steps/like-before.ts";
import { step } from "../../../src/solve/build/steps/making-step.ts";
import { type Sentence, sentence } from "../../../src/solve/build/steps/sentence.ts";
import { inOneUnit } from "../../../src/solve/build/steps/words/one-unit.ts";
import type { Step } from "../../../src/solve/build.ts";
import { toInches } from "../../../src/units/length.ts";
import { solveText, textOf } from "../../examples/compiled.ts";

const plain = (text: string): string =>
  text.replaceAll("\u202f", " ").replaceAll("\u00a0", " ").replaceAll("\u2044", "/");
const known = new Map<string, readonly Step[]>();
function stepsOf(name: string): readonly Step[] {
  const steps =
    known.get(name) ??
    (solveText(textOf(name)).build?.steps ?? []).map((each) => ({ ...each, text: each.text.map(plain) }));
  known.set(name, steps);
  return steps;
}

const PINS = sentence("Use 4 shelf pins.", { counts: true });
const draft = (title: string, text: readonly Sentence[]) =>
  step("join", title, text, [], { unit: title, bench: 1, cautions: [], fresh: [] });

describe("what is done again", () => {
  it("tells what differs, and what is counted", () => {
    const [, again] = likeBefore([
      draft("Add the shelf (D)", ["Push the pins in.", "They are 264 mm up.", PINS]),
      draft("Add the shelf (D)", ["Push the pins in.", "They are 398 mm up.", PINS]),
    ]);
    expect(again?.text).toEqual([
      "Do as in step 1. The rest of this step tells what is not the same here.",
      "They are 398 mm up.",
      PINS,
    ]);
  });
  it("stands in full where the title, or most of it, is another", () => {
    const other = draft("Add the rail (E)", ["Push the pins in.", PINS]);
    const most = draft("Add the shelf (D)", ["Glue it in.", "Wait.", PINS]);
    const [, ...told] = likeBefore([draft("Add the shelf (D)", ["Push the pins in.", PINS]), other, most]);
    expect(told).toEqual([other, most]);
  });
  describe("with other parts", () => {
    const lines = ["left side", "right side", "rail"].map((name, i) => ({ mark: "ABC".charAt(i), name }));
    const left = draft("Add the left side (A)", [
      "Brush glue into the grooves in the left side (A), and thinly on the tenons of the rail (C), before it dries.",
      "Set the left side (A) against the rail (C), its left face up, what is left over to the right, and clamp it there.",
      sentence("Drive 2 wood screws from the left, through the left side (A) into the rail (C).", { counts: true }),
    ]);
    const right = draft("Add the right side (B)", [
      "Brush glue into the grooves in the right side (B), and thinly on the tenons of the rail (C), before it dries.",
      "Set the right side (B) against the rail (C), its right face up, what is left over to the left, and clamp it there.",
      sentence("Drive 2 wood screws from the right, through the right side (B) into the rail (C).", { counts: true }),
    ]);
    // Posts 2 in square with mortises 1/2 in wide and 3/4 in from either face: the same from the left as from the right.
    it("does not tell again what lies midway, and so stays where it is in the mirror", () => {
      const again = stepsOf("old-plans/china-closet").find(({ title }) =>
        title.startsWith("Cut the joints in the right end front post"),
      );
      const before = stepsOf("old-plans/china-closet")[(again?.like ?? 0) - 1];
      expect(before?.text.filter((text) => text.includes("in the back face, 3/4 in from the left face"))).toHaveLength(
        2,
      );
      expect(again?.text[0]).toMatch(/^As step \d+, mirrored \(left and right change places\)/u);
      expect(again?.text.filter((text) => text.startsWith("Cut "))).toEqual([]);
    });
    it("leaves no sign of that in what is printed", () => {
      const all = stepsOf("old-plans/china-closet").flatMap(({ title, text }) => [title, ...text]);
      expect(all.filter((text) => /[\ue000-\uf8ff]/u.test(text))).toEqual([]);
    });
    it("names the parts, what is mirrored, and counts anew", () => {
      const [first, again] = likeBefore([left, right], lines);
      expect(first).toEqual(left);
      expect(again?.text).toEqual([
        "As step 1, mirrored (left and right change places), with the right side (B) in place of the left side (A); the rail (C) as there.",
        right.text[2],
      ]);
    });
    it("stands in full where the earlier step has something more", () => {
      const more = draft(left.title, [
        left.text[0] as Sentence,
        "Bore four holes for the hinge.",
        ...left.text.slice(1),
      ]);
      expect(likeBefore([more, right], lines)).toEqual([more, right]);
    });
    it("stands in full where one part would stand for two", () => {
      const mixed = draft(right.title, [right.text[0] as Sentence, ...left.text.slice(1)]);
      expect(likeBefore([left, mixed], lines)[1]).toEqual(mixed);
    });
    it("never refers to a step that refers on itself", () => {
      const others = Array.from({ length: 6 }, (_, i) =>
        draft(`Wait ${i}`, ["Wait for the glue.", `Wait ${i} hours.`]),
      );
      const told = likeBefore([left, right, ...others.slice(0, 5), right], lines);
      expect(told[1]?.text[0]).toMatch(/^As step 1,/u);
      expect(told[7]).toEqual(right);
    });
  });
  it("is planed in one step where it rests together", () => {
    for (const name of ["old-plans/bookcase", "overalls-chest"])
      expect(stepsOf(name).filter(({ title }) => title.startsWith("Plane the rough pieces"))).toHaveLength(1);
  });
  it("has its caution where a kind of work begins, not in each step of a run", () => {
    const steps = stepsOf("old-plans/bookcase");
    const drills = steps.map(({ title }) => /^(?:Drill|Cut the (?:joints|tenons?)|Make the jig)/u.test(title));
    const clamp = steps.map(({ cautions }) => cautions.some((each) => each.startsWith("Clamp the work")));
    for (const [i, { cautions }] of steps.entries())
      for (const caution of cautions) expect(steps[i - 1]?.cautions ?? []).not.toContain(caution);
    // Wherever boring or cutting begins anew it stands, and in a run again only after five steps.
    const begins = drills.flatMap((own, i) => (own && !drills[i - 1] ? [i] : []));
    expect(begins.length).toBeGreaterThan(2);
    expect(begins.filter((i) => !clamp[i] && !clamp[i - 1])).toEqual([]);
    expect(
      drills.flatMap((own, i) => (own && drills[i - 1] && clamp[i] && clamp.slice(i - 4, i).some(Boolean) ? [i] : [])),
    ).toEqual([]);
  });
});

it("cuts at even distances are one row: 1 1/4 + 10 × 3/4 + 9 × 3/4 + 1 1/4 = 16 3/4", () => {
  const text = stepsOf("rope-chest")
    .flatMap((each) => each.text)
    .join("\n");
  expect(text).toContain(
    "Cut 20 sockets 3/4 in long, 3/4 in wide and 3/4 in deep: in the left end and in the right end: ten in each, 3/4 in between one and the next, the first 1 1/4 in from the bottom edge, the last 1 1/4 in from the top edge.",
  );
});

it("slots that differ in length only stand in one list", () => {
  const text = stepsOf("old-plans/bookcase")
    .flatMap((each) => each.text)
    .join("\n");
  expect(text).toMatch(
    /Cut three slots 11\/64 in wide [^\n]*:\n– 5\/16 in long, [^\n]*\n– 7\/16 in long, [^\n]*\n– 9\/16 in long, /u,
  );
});

it("shelves that go in by different ways are told apart by their heights", () => {
  const text = stepsOf("old-plans/bookcase").flatMap((each) =>
    each.text.filter((one) => one.includes(" not go in straight: ")),
  );
  expect(text.length).toBeGreaterThan(1);
  for (const each of text) expect(each).toMatch(/lowest|middle|highest/u);
});

// 15/32 less 3/16.
it("a rabbet that a box is glued into is set by what it leaves: 9/32 in", () => {
  const cut = stepsOf("overalls-chest").filter(({ title }) =>
    /^Cut the joints in the (?:left|right) sides/u.test(title),
  );
  expect(cut).toHaveLength(2);
  expect(cut[0]?.text.join(" ")).toContain("by what is left standing, 9/32 in");
  expect(cut[1]?.text[0]).toMatch(
    /^As step \d+, mirrored \(left and right change places\), with the right side \(H\) in place of the left side \(G\)/u,
  );
});

it("dowels of parts of one mark are marked from parts that are named by their place", () => {
  const text = stepsOf("overalls-chest")
    .flatMap((each) => each.text)
    .join("\n");
  expect(text).toContain("the left end of the back top rail (L)");
  expect(text).toContain("the right end of the front top rail (L)");
  expect(text).toContain("Write on each of them where it goes");
});

it("fronts are placed before they are fixed, and the shims alone say where", () => {
  const [set] = stepsOf("overalls-chest").filter(({ title }) => title.startsWith("Screw on five false fronts"));
  const at = (words: RegExp): number => set?.text.findIndex((each) => words.test(each)) ?? -1;
  expect(at(/on shims/u)).toBeGreaterThan(0);
  expect(at(/on shims/u)).toBeLessThan(at(/^Drive 2 wood screws .* 10 in all/u));
  expect(at(/^Drive 2 wood screws .* 10 in all/u)).toBeLessThan(at(/Take the screw that you pulled by out/u));
  expect(at(/^Place the false front/u)).toBe(-1);
});

// Of 3/4 plywood 23/32 in thick; at 11/16 the same parts are 1/32 wider.
it("settings of fence that leave room for thinner stock are told beside those of the cut list", () => {
  const { build } = solveText(textOf("overalls-chest"));
  const told =
    build && reservedOn(build.layouts, build).map(({ mark, drawn, cut }) => [mark, toInches(cut), toInches(drawn)]);
  // 24 1/2 less 3/4 overhang, the back and two posts of 1 3/4; the bottom reaches under the posts.
  const [drawn, thin] = [23 / 32, 11 / 16].map((back) => 24.5 - 0.75 - back) as [number, number];
  expect(told).toEqual([
    ["A", drawn - 3.5, thin - 3.5],
    ["B", drawn - 3.5, thin - 3.5],
    ["D", drawn, thin],
  ]);
});

it("a measure in both units is said in that of the plan", () => {
  const text = "a bit 12 in (300 mm) long, 1 1/2 in (40 mm) wide";
  expect([inOneUnit(text, "inch"), inOneUnit(text, "mm")]).toEqual([
    "a bit 12 in long, 1 1/2 in wide",
    "a bit 300 mm long, 40 mm wide",
  ]);
});

describe("a face whose corners are badly reached later", () => {
  const badly = (name: string): readonly string[] =>
    stepsOf(name).flatMap(({ text }) => text.filter((each) => each.includes("badly reached")));

  // Rails 7/8 thick and slats 3/8, flush with one face or in the middle of posts of 1 1/2; the stretcher of 7/8 in the middle of a rail of 2 1/4.
  it("is sanded while its part is single, whatever its width, not again before the next of its joints", () => {
    const told = badly("old-plans/piano-bench");
    expect(told).toHaveLength(2);
    expect(told[0]).toContain("the left and right faces of three slats (G)");
    expect(told[0]).toContain("the right face of the end rail (F) and the right face of the lower end rail (E) with");
    expect(told[1]).toMatch(
      /the back face of the front (?:side )?rail \(D\), the front face of the back (?:side )?rail \(D\)/u,
    );
    expect(told[1]).toContain("and the bottom and top faces of the stretcher (C) with");
  });

  // 3/16 in from the outer faces of legs of 2 1/4 in, 1 1/16 in from the inner ones: set back by more than 1/8 at both.
  it("is sanded before a bearer is glued between two aprons, since the legs come to what is glued then", () => {
    const told = badly("dining-bench");
    expect(told).toHaveLength(2);
    expect(told[0]).toMatch(/^First: sand the front and back faces of two long aprons \(C\) with .* reached later\.$/u);
    expect(told[1]).toMatch(/the left and right faces of the short apron \(E\) with /u);
  });
});

describe("parts of several marks that are worked in the same words", () => {
  // Four legs that lean the same way in pairs: two marks, as their joints are not the same.
  it("are all told", () => {
    const [ends] = stepsOf("loan-desk").filter(({ title }) => title.startsWith("Cut the ends of two legs (A) and"));
    expect(ends?.text[0]).toContain("All four are worked alike; those that stand the other way");
    const [bores] = stepsOf("loan-desk").filter(({ title }) => title === "Drill the legs (A)");
    expect(bores?.text[0]).toContain("front left leg as it stands in the piece. Both are the same part");
  });
});
