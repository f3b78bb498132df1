/** A tenon is fitted when its mortise is there. */
import { describe, expect, test } from "vitest";
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
