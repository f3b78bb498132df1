/** Doors, drawers and loose shelves wait until their openings can be measured. */
import { describe, expect, test } from "vitest";
import { audit } from "../../audit/index.ts";
import { recordOf, solveText, textOf } from "../../examples/compiled.ts";
import { built, plain, stepWith } from "./plans.ts";

/** A case 30 × 14 × 36 of 3/4 in wood: openings of 28 1/2 across, a drawer over a shelf behind a pair of doors. */
const cupboard = ({ drawer = "", door = "", shelves = "", back = "" } = {}): string => `plan: 1
title: Cupboard for borrowed tools
units: inch
outside: { width: 30, depth: 14, height: 30 }
carries: 5 lb
stock:
  wood: { sold as: 3/4 MDF }
  half: { sold as: 1/2 MDF }
  thin: { sold as: 1/4 hardboard }
hardware:
  slide: { kind: side slide, length: 10 }
  knob: { kind: knob, screw: 1 1/2 }
  pull: { kind: knob, screw: 1 }
  hinge: { kind: butt hinge, long: 2, leaf: 5/8, closed: 1/16, fit: in the gap }
piece:
  cabinet:
    kind: case
    made of: wood
    back: thin${back}
    openings:
      down:
        - high: 6
          drawer: { made of: half, bottom: thin, slides: slide, front: { made of: wood, gap: 1/8 }, pull: knob${drawer} }
        - high: the rest
          door: { pair: yes, made of: wood, gap: 1/8, pull: pull, hinges: hinge${door} }
          shelves: { loose: 1${shelves} }
`;

describe("in a case with a drawer, a pair of doors and a loose shelf", () => {
  const text = cupboard();
  const build = built(text);
  const said = (title: string): string => plain(stepWith(build, title).text.join(" "));

  test("the drawer is less than its opening by 1 1/32 (the middle of the window of side slides), down to a sixteenth", () => {
    const box = said("Cut the parts of the drawer");
    expect(box).toMatch(
      /Measure from the cabinet left side \(\w\) to the cabinet right side \(\w\), in front, in the middle and behind/,
    );
    expect(box).toContain(
      "28 1/2 in is expected. The drawer is 1 1/16 in less than the smallest of these, 27 7/16 in wide: a pair of slides wants 1.016 to 1.039 in, and card behind them makes up the rest.",
    );
    expect(box).toMatch(/Where you measure more or less across, .*box front.*box back.* get longer or shorter/);
  });

  test("its front is less by two gaps of 1/8, measured below and above", () => {
    expect(said("Cut the false front")).toMatch(
      /below, in the middle and above: 28 1\/2 in is expected\. The false front \(\w\) is 1\/4 in less than the smallest of these, 28 1\/4 in wide/,
    );
  });

  test("both doors together are less by three gaps of 1/8", () => {
    expect(said("doors")).toMatch(/Both together are 3\/8 in less than the smallest of these, 28 1\/8 in wide/);
  });

  test("nothing of them is worked on before the step in which what bounds them stands together", () => {
    for (const part of build.parts.filter(({ id }) => /drawer|door|loose/.test(id))) {
      const own = build.steps.findIndex(({ actions }) => actions.some((a) => a.do === "machine" && a.part === part.id));
      expect(part.cutAfterStep, part.id).toBeGreaterThan(0);
      if (own >= 0) expect(own + 1, part.id).toBeGreaterThan(part.cutAfterStep ?? 0);
    }
    expect(new Set(build.later?.map(({ mark }) => mark)).size).toBeGreaterThan(5);
  });

  test("an auditor who knows nothing of that finds one that is worked on too early", () => {
    const record = JSON.parse(recordOf(text, build));
    const side = record.parts.find(({ id }: { id: string }) => id.endsWith("drawer.left-side"));
    side.cutAfterStep += 1;
    expect(audit(record).map(({ check }) => check)).toContain("what is cut to the piece waits for it");
  });
});

test("what is cut from the list need not wait", () => {
  const { later, parts } = built(
    cupboard({
      drawer: ", cut: from the list",
      door: ", cut: from the list",
      shelves: ", cut: from the list",
      back: "\n    its parts: { back-panel: { cut: from the list } }",
    }),
  );
  expect(later).toEqual([]);
  expect(parts.every(({ cutAfterStep }) => cutAfterStep === null)).toBe(true);
});

test("doors that lie over their opening are cut from the list", () => {
  const text = cupboard({ door: ", lies: overlay, overlay: 1/2" })
    .replace("hinges: hinge", "hinges: cup")
    .replace("  hinge:", "  cup: { kind: cup hinge, overlay: 1/2 }\n  hinge:")
    // The head of the knob's screw stays clear of the shelf, which comes up to the doors.
    .replace("pull: pull", "pull: { fit: pull, up: 3 }")
    // The front stays clear of the doors that reach up over the divider.
    .replace("gap: 1/8 }, pull", "gap: 3/4 }, pull");
  const waiting = built(text)
    .parts.filter(({ cutAfterStep }) => cutAfterStep !== null)
    .map(({ id }) => id);
  expect(waiting.filter((id) => id.includes("door"))).toEqual([]);
  expect(waiting.some((id) => id.includes("drawer"))).toBe(true);
});

/** The china closet: 38 in between its posts; the gap round and between its doors is 3/32, 1/16 and 3/32 of an inch, 1/4 in all. Its shelf blocks are 1 1/2 in high and stand behind the doors. */
test("an opening is measured to what bounds nearly all of it: posts, and never a small block", () => {
  const { build } = solveText(textOf("old-plans/china-closet"));
  const told = build ? plain(stepWith(build, "Cut the parts of two doors").text.join(" ")) : "";
  expect(told).toContain(
    "Measure from the left end front post (A) to the right end front post (C), below, in the middle and above: 38 in is expected. Both together are 1/4 in less than the smallest of these, 37 3/4 in wide.",
  );
  expect(told).not.toContain("block");
});

/** The bookcase: bars with stub tenons between the stiles of each door, with half laps for short ones that hang from its top rail. */
describe("what is let in between the stiles of a door", () => {
  const { build } = solveText(textOf("old-plans/bookcase"));
  const number = (title: string): number => (build ? stepWith(build, title).number : 0);

  test("gets longer or shorter with its rails, and is sawn with them", () => {
    const told = build ? plain(stepWith(build, "Cut the parts of two doors").text.join(" ")) : "";
    expect(told).toContain(
      "across, two lower door rails (M), two upper door rails (N), four glass beads (O) and four long lattice bars (P) get longer or shorter by as much",
    );
    expect(told).toContain(
      "Where the length of the door stile (D) and the door stile (G) changes, hold each where it will hang, and mark the places of its hinges from those in the left side (A) and the right side (B), not by the figures.",
    );
    expect(number("Cut the joints in the long lattice bars")).toBeGreaterThan(number("Cut the parts of two doors"));
  });

  test("is still glued up in one go with what was cut before", () => {
    expect(build ? plain(stepWith(build, "Build the two lattices").text.join(" ")) : "").toContain(
      "Press two long lattice bars (P) and two short lattice bars (Q) together",
    );
  });

  // Short bars hang from one rail, and panes are bought.
  test("nothing else waits with it", () => {
    const waiting = build?.parts.filter(({ making }) => making?.cut === "opening").map(({ mark }) => mark) ?? [];
    expect([...new Set(waiting)].toSorted().join("")).toBe("DEFGHMNOP");
  });
});
