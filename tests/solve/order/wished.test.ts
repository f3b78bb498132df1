/** Wishes about the order of work, dry fits, titles and notes, on the dining bench. */
import { describe, expect, it } from "vitest";
import type { Step } from "../../../src/solve/build.ts";
import { auditOf, said, solveText, textOf } from "../../examples/compiled.ts";

const plain = textOf("dining-bench")
  .replace(/^order:[\s\S]*?(?=^\S|$(?![\s\S]))/mu, "")
  .replace(/^notes:[\s\S]*?(?=^\S|$(?![\s\S]))/mu, "");

function withWishes(more: string) {
  const text = `${plain}\n${more}\n`;
  const { build, findings } = solveText(text);
  const steps = build?.steps ?? [];
  const number = (title: RegExp): number => steps.find((step) => title.test(step.title))?.number ?? Number.NaN;
  return { text, build, findings, steps, number };
}
const step = (steps: readonly Step[], title: RegExp): Step | undefined => steps.find((each) => title.test(each.title));

describe("the maker steers", () => {
  it("some work before other work: the slab is shaped before the frame is glued up", () => {
    const free = withWishes("");
    expect(free.number(/^Shape the slab/)).toBeGreaterThan(free.number(/^Glue up two legs/));
    const { text, build, findings, number } = withWishes("order:\n  - { this: shape slab, before: frame }");
    expect(said(findings)).toEqual([]);
    expect(number(/^Shape the slab/)).toBeLessThan(number(/^Glue up two legs/));
    expect(build && auditOf(text, build)).toEqual([]);
  });
  it("what is wished first comes before all that it does not depend on", () => {
    const { number } = withWishes("order:\n  - { first: tapers }");
    // The legs are sawn, planed and mortised before they can be tapered; the slab waits.
    expect(number(/^Shape four legs/)).toBeLessThan(number(/^Glue up the slab/));
    expect(number(/^Cut the joints in the legs/)).toBeLessThan(number(/^Shape four legs/));
  });
  it("against what must be it is told, with the part", () => {
    const { findings } = withWishes("order:\n  - { this: finish slab, before: glue up slab }");
    expect(findings.map(({ rule }) => rule)).toEqual(["wish-impossible"]);
    expect(findings[0]?.message).toBe(
      "finish slab cannot come before glue up slab: `seat.slab` must be done with glue up slab first",
    );
  });
  it("two cuts in one part may be made the other way round", () => {
    const { text, build, findings, number } = withWishes(
      "order:\n  - { this: tenons in left-apron, before: mortises }",
    );
    expect(said(findings)).toEqual([]);
    expect(number(/^Cut the joints in the short aprons/)).toBeLessThan(number(/^Cut the joints in the legs/));
    expect(build && auditOf(text, build)).toEqual([]);
  });
  it("a dry fit comes before the glue, when all its parts are made", () => {
    const { steps, number } = withWishes("order:\n  - { dry fit: frame, check: the diagonals are equal }");
    const dry = step(steps, /^Try the frame dry/);
    expect(dry?.text).toContain("Check: the diagonals are equal.");
    expect(dry?.number).toBeGreaterThan(number(/^Shape four legs/));
    expect(dry?.number).toBeLessThan(
      Math.min(
        ...steps.filter(({ kind, title }) => kind === "glue-up" && !/slab/.test(title)).map((each) => each.number),
      ),
    );
  });
  it("a unit of its own: two legs and a short apron", () => {
    const parts = "[front-left-leg, back-left-leg, left-apron]";
    const { text, build, findings } = withWishes(`order:\n  - { build as one: ${parts} }`);
    expect(said(findings)).toEqual([]);
    const ids = ["frame.aprons.left-apron", "frame.back-left-leg", "frame.front-left-leg"];
    const added = build?.steps.flatMap(({ actions }) =>
      actions.flatMap((each) => (each.do === "add" ? [each.parts.toSorted().join()] : [])),
    );
    expect(added).toContain(ids.join());
    expect(build && auditOf(text, build)).toEqual([]);
  });
  it("titles and notes stand with the step that they are about", () => {
    const { steps, findings } = withWishes(
      "order:\n  - { step: shape legs, call it: Give the legs their slender feet }\nnotes:\n  - { at: cut legs, say: Cut one leg too many. }\n  - { at: join slab, caution: A slab is heavy. }\n  - { at: tapers, tip: Mark the faces. }",
    );
    expect(said(findings)).toEqual([]);
    expect(step(steps, /^Give the legs their slender feet/)?.reminders).toContain("Mark the faces.");
    expect(step(steps, /10\/4/)?.text).toContain("Cut one leg too many.");
    expect(step(steps, /^Join the slab/)?.cautions).toContain("A slab is heavy.");
  });
  it("what no step is about is told", () => {
    const { findings } = withWishes("notes:\n  - { at: dadoes, say: Mind the grain. }");
    expect(said(findings)).toEqual([
      expect.stringMatching(/warning names-no-step: no step of the plan is about `dadoes`$/),
    ]);
  });
});
