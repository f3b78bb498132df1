/** Wishes that steps become one, or that work gets a step of its own, on the dining bench. */
import { describe, expect, it } from "vitest";
import type { Action } from "../../../src/solve/build.ts";
import { auditOf, said, solveText, textOf } from "../../examples/compiled.ts";

const plain = textOf("dining-bench")
  .replace(/^order:[\s\S]*?(?=^\S|$(?![\s\S]))/mu, "")
  .replace(/^notes:[\s\S]*?(?=^\S|$(?![\s\S]))/mu, "");

function withOrder(...wishes: readonly string[]) {
  const text = `${plain}\n${wishes.length > 0 ? `order:\n${wishes.map((wish) => `  - { ${wish} }\n`).join("")}` : ""}`;
  const { build, findings } = solveText(text);
  const steps = build?.steps ?? [];
  return { text, build, findings, steps, titled: (title: RegExp) => steps.filter((step) => title.test(step.title)) };
}

/** All that is done in a plan, whatever step it is done in. */
const doneIn = (steps: readonly { readonly actions: readonly Action[] }[]): readonly string[] =>
  steps
    .flatMap(({ actions }) => actions)
    .flatMap((action) =>
      action.do === "make"
        ? action.blanks.map((id) => `make ${id}`)
        : action.do === "machine"
          ? [...action.features.map((i) => `cut ${action.part} ${i}`), ...action.holes.map((i) => `bore ${i}`)]
          : action.do === "finish"
            ? action.parts.map((id) => `finish ${id} ${action.coat}`)
            : [JSON.stringify(action, (_, value: unknown) => (typeof value === "bigint" ? String(value) : value))],
    )
    .toSorted();

const free = withOrder();

describe("several steps become one", () => {
  it("does in one step what two did, under one title, with the time of both", () => {
    const { text, build, findings, steps, titled } = withOrder(
      "in one step: [mortises in legs, tapers in legs], call it: Give the legs their joints and their feet",
    );
    expect(said(findings)).toEqual([]);
    expect(steps).toHaveLength(free.steps.length - 1);
    const [one] = titled(/^Give the legs their joints/);
    const two = [...free.titled(/^Cut the joints in the legs/), ...free.titled(/^Shape four legs/)];
    expect(two).toHaveLength(2);
    expect(one?.bench).toBe((two[0]?.bench ?? 0) + (two[1]?.bench ?? 0));
    expect(one?.text).toEqual(two.flatMap((step) => step.text));
    expect(doneIn(steps)).toEqual(doneIn(free.steps));
    expect(build && auditOf(text, build)).toEqual([]);
  });
  it("puts first what has to be, however the wish lists them", () => {
    const { titled } = withOrder("in one step: [tapers in legs, mortises in legs]");
    const [one] = titled(/legs/).filter(({ actions }) => actions.length === 8);
    const [two] = free.titled(/^Cut the joints in the legs/);
    expect(one?.actions.slice(0, 4)).toEqual(two?.actions);
  });
  it("says which step has to come between", () => {
    const { findings } = withOrder("in one step: [saw legs, mortises in legs]");
    expect(findings.map(({ rule }) => rule)).toEqual(["not-one-step"]);
    expect(findings[0]?.message).toMatch(
      /^saw legs and mortises in legs cannot be one step: between them comes “Plane the rough pieces of /u,
    );
  });
  it("says what has to dry between", () => {
    const { findings } = withOrder("in one step: [glue up slab, flatten slab]");
    expect(findings.map(({ rule, message }) => `${rule}: ${message}`)).toEqual([
      "not-one-step: glue up slab and flatten slab cannot be one step: with `seat.slab` there is a wait between them (glue before flattening)",
    ]);
  });
});

describe("a step of its own", () => {
  it.each([
    ["sawn", "saw bearer", /^(Saw the rough pieces?|Cut the parts?)/],
    ["planed", "plane left-apron", /^Bring /],
    ["cut", "tenons in left-apron", /^Cut the (joints|tenons) in/],
    ["joined", "bearer", /^(Glue|Build|Add)/],
    ["finished", "finish legs", /^Finish/],
  ])("what is %s apart is done all the same", (_, wish, title) => {
    const { text, build, findings, steps, titled } = withOrder(`in its own step: ${wish}`);
    expect(said(findings)).toEqual([]);
    expect(titled(title).length).toBeGreaterThan(free.titled(title).length);
    // Short parts that are planed apart do not share a piece.
    const done = (all: typeof steps) => doneIn(all).filter((each) => !each.startsWith("make "));
    expect(done(steps)).toEqual(done(free.steps));
    const made = (all: typeof steps) => doneIn(all).filter((each) => each.startsWith("make ")).length;
    expect(made(steps)).toBeGreaterThanOrEqual(made(free.steps));
    expect(build && auditOf(text, build)).toEqual([]);
  });
  it("what has its own step already keeps it", () => {
    const { findings, steps } = withOrder("in its own step: tapers in legs");
    expect(said(findings)).toEqual([]);
    expect(steps.map(({ title }) => title)).toEqual(free.steps.map(({ title }) => title));
  });
  it("what names no step is told", () => {
    const { findings } = withOrder("in its own step: dadoes", "in one step: [dadoes, tapers]");
    expect(findings.map(({ rule }) => rule)).toEqual(["names-no-step", "names-no-step"]);
  });
  it("of one wish alone there is nothing to make one", () => {
    const { findings } = withOrder("in one step: [tapers]");
    expect(findings.map(({ rule }) => rule)).toEqual(["wrong-value"]);
  });
});
