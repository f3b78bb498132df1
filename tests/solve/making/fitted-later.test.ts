/** A tenon is fitted when its mortise is there. */
import { describe, expect, test } from "vitest";
import type { StepDraft, Work } from "../../../src/solve/build/steps/draft.ts";
import { fittedLater } from "../../../src/solve/build/steps/fitted-later.ts";
import { solveText, textOf } from "../../examples/compiled.ts";
import { plain } from "./plans.ts";

const PUSH = "with the push of a hand";

describe("a tenon whose mortise is cut later", () => {
  const steps = solveText(textOf("old-plans/bookcase")).build?.steps ?? [];
  const textIn = (title: string): string =>
    plain(steps.find((step) => step.title.startsWith(title))?.text.join(" ") ?? "");

  // The rails of the doors are cut to their openings, long after the bars.
  test("is left thick, and fitted in the step that cuts the mortise", () => {
    const bars = textIn("Cut the joints in the short lattice bars");
    expect(bars).toContain(
      "Leave them a little thick: they are fitted when the mortises in two upper door rails (N) are cut.",
    );
    expect(bars).not.toContain(PUSH);
    expect(textIn("Cut the joints in the upper door rails")).toContain(
      `Fit the tenons of four short lattice bars (Q) to the mortises now: they should slide in ${PUSH}.`,
    );
  });

  // The stiles have their mortises by then.
  test("all others are fitted as they are cut", () => {
    for (const title of ["Cut the joints in the long lattice bars", "Cut the joints in the lower door rails"])
      expect(textIn(title)).toContain(`Fit each to its mortise: it should slide in ${PUSH}.`);
  });

  // The top has its tongues before its breadboard ends have their grooves.
  test("holds for tongues and grooves too", () => {
    const desk = solveText(textOf("loan-desk")).build?.steps ?? [];
    const said = (title: string): string =>
      plain(desk.find((step) => step.title.startsWith(title))?.text.join(" ") ?? "");
    expect(said("Cut the tongues in the panel (E)")).toContain(
      "Leave them a little thick: they are fitted when the grooves in two breadboard ends (F) are cut.",
    );
    expect(said("Cut the grooves in the breadboard ends (F)")).toContain(
      "Fit the tongues of the panel (E) to the grooves now: they should slide without force.",
    );
  });

  test("nothing is fitted to what is not there, in any step", () => {
    const { build } = solveText(textOf("old-plans/piano-bench"));
    const part = (id: string) => build?.design.parts.find((each) => each.id === id);
    const jointsIn = (i: number, kind: string): readonly string[] =>
      (build?.steps[i]?.actions ?? []).flatMap((action) =>
        action.do === "machine"
          ? action.features.flatMap((at) => {
              const feature = part(action.part)?.features[at];
              return feature?.kind === kind && "for" in feature && feature.for !== null ? [feature.for] : [];
            })
          : [],
      );
    const places = (build?.steps ?? []).map((_, i) => i);
    for (const i of places) {
      const own = jointsIn(i, "tenon");
      if (own.length === 0) continue;
      const later = places.filter((at) => at > i).flatMap((at) => jointsIn(at, "mortise"));
      const waiting = own.filter((id) => later.includes(id));
      const text = build?.steps[i]?.text.join(" ") ?? "";
      expect(text.includes("a little thick")).toBe(waiting.length > 0);
    }
    expect(places.some((i) => build?.steps[i]?.text.join(" ").includes("a little thick"))).toBe(true);
  });
});

// A rail with a tenon at either end: one post has its mortise, the other is bored when the piece tells where.
test("of two tenons of which one has its mortise, one is fitted and one is left thick", () => {
  const cut = (kind: string, joint: string) => ({ kind, for: joint });
  const parts = new Map([
    ["early", { features: [cut("mortise", "one")] }],
    ["rail", { features: [cut("tenon", "one"), cut("tenon", "two")] }],
    ["late", { features: [cut("mortise", "two")] }],
  ]);
  const work = {
    part: (id: string) => parts.get(id),
    line: (id: string) => ({ name: `${id} post`, mark: id.charAt(0).toUpperCase(), parts: [id] }),
  } as unknown as Work;
  const draft = (part: string, features: readonly number[], text: readonly string[]) =>
    ({ text, actions: [{ do: "machine", part, features, holes: [] }] }) as unknown as StepDraft;
  const told = fittedLater(work, [
    draft("early", [0], ["Cut a mortise."]),
    draft("rail", [0, 1], [`Fit each to its mortise: it should slide in ${PUSH}.`]),
    draft("late", [0], ["Cut a mortise."]),
  ]);
  expect(told[1]?.text).toEqual([
    `Fit that for the early post (E): it should slide in ${PUSH}.`,
    "Leave that for the late post (L) a little thick: it is fitted when the mortise there is cut.",
  ]);
  expect(told[2]?.text.at(-1)).toContain("Fit the tenon of the ");
});
