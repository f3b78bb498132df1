/** What a drawer runs on is set in slots: once its screws are out, the setting is lost. Common practice, no source. */
import { describe, expect, it, test } from "vitest";
import { auditOf, solveText, textOf } from "../../examples/compiled.ts";
import { type Built, built, plain, stepWith } from "./plans.ts";

const chest = textOf("overalls-chest");
const asIs = built(chest);
const textIn = (build: Built, title: string): string => plain(stepWith(build, title).text.join(" "));
/** Numbers of the steps in which halves of slides are put on. */
const fitsOf = ({ steps, hardware }: Built): ReadonlySet<number> => {
  const slides = new Set(hardware.flatMap(({ id, item }) => (item.kind === "side slide" ? [id] : [])));
  return new Set(
    steps.flatMap(({ number, actions }) =>
      actions.some((each) => each.do === "fit" && each.hardware.some((id) => slides.has(id))) ? [number] : [],
    ),
  );
};

describe("slides", () => {
  it("stay on, covered, where what carries them stays bare", () => {
    const build = asIs;
    expect([...fitsOf(build)]).toEqual([stepWith(build, "Put in the five overalls drawers").number]);
    expect(textIn(build, "Take off the five overalls drawers")).toContain("halves of the slides stay on");
    expect(textIn(build, "Take off the five overalls drawers")).not.toContain("unscrew the");
    expect(textIn(build, "Put the five overalls drawers on again")).not.toContain("same holes");
  });

  it("stay on also where what carries them is finished, and were fixed through a round hole before", () => {
    const text = chest.replace("with: hard wax oil", "with: water-based polyurethane");
    const { build, findings } = solveText(text);
    if (!build) throw new Error(findings.map(({ rule }) => rule).join());
    expect(auditOf(text, build)).toEqual([]);
    const all = { ...build, told: [] };
    expect([...fitsOf(all)]).toEqual([stepWith(build, "Put in the five overalls drawers").number]);
    expect(textIn(all, "Take off the five overalls drawers")).toContain("halves of the slides stay on");
    const fronts = stepWith(build, "Screw on five false fronts");
    expect(fronts.text.join(" ")).toContain(
      "bore a pilot hole under a round hole of each half, and move a screw from its slot to it",
    );
    expect(fronts.number).toBeLessThan(stepWith(build, "Take off the five overalls drawers").number);
  });

  // 12.9 to 13.2 mm are 32.5 to 33.3 of 1/64 in; (29 − 27 31/32) / 2.
  it("are told in the marks of the rule, half by half, and apart from what has no halves", () => {
    const [hand] = asIs.steps;
    const text = hand?.text.map(plain).join("\n") ?? "";
    expect(text).toContain("12.9 mm to 13.2 mm (33/64 in)");
    expect(text).toContain("screw holes of the side slides lie elsewhere, do not bore for these ahead: hold each half");
    expect(text).toContain(
      "screw holes of the wall straps lie elsewhere, do not bore for these ahead: hold each of them",
    );
    const run = textIn(asIs, "Put in the five overalls drawers");
    expect(run).toContain("There is 33/64 in (0.516 in) of room");
    expect(run).toMatch(
      /drawer half to the side of its drawer, in the holes bored there.* case half to the left side panel/u,
    );
  });

  // A false front 3/4 in thick comes flush with the posts.
  it("are shifted until the box stands right, before its front is taped to it", () => {
    const { text } = stepWith(asIs, "Screw on five false fronts");
    const [box, tape, out] = [/box now lies 3.4.in behind/u, /double-sided tape/u, /^The front leaves no room/u].map(
      (said) => text.findIndex((each) => said.test(plain(each))),
    ) as [number, number, number];
    expect([box >= 0, box < tape, tape < out]).toEqual([true, true, true]);
  });

  // Five fronts, each with two screws of its own.
  it("are gone through with one drawer after another, each by its number", () => {
    const text = textIn(asIs, "Screw on five false fronts");
    expect(text).toContain(
      "Drive 2 wood screws #6 × 1 in, countersunk head from the back, through the box front (E) into",
    );
    expect(text).toContain("into the false front (M): 10 in all.");
    expect(textIn(asIs, "Cut five false fronts")).toContain(
      "with its number from below, 1 to 5, on it and on its opening",
    );
  });
});

// 34 over posts that are 32 1/2 apart outside.
test("a top is measured from where a rule reaches", () => {
  expect(textIn(asIs, "Screw on the slab")).toContain(
    "midway between the left and the right (3/4 in past two chest posts (J) and two chest posts (K) at each)",
  );
});

// The sides of the drawers are 15/32 in thick; of a slide only its thin web lies between the head and the wood.
test("a screw of a slide is no longer than the side of its drawer is thick", () => {
  const told = asIs.steps.flatMap(({ text }) => text.map(plain).filter((each) => each.startsWith("The slides take")));
  expect(told.join(" ")).toContain("screws #6, no longer than 3/8 in");
});
