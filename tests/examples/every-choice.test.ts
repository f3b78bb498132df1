import { describe, expect, it } from "vitest";
import { auditOf, EXAMPLES, said, solveCopy, solveText, textOf } from "./compiled.ts";

/** Every option of every choice, one at a time: nothing is found, and the record keeps its promises. */
const WAYS = EXAMPLES.flatMap((name) =>
  (solveText(textOf(name)).build?.design.choices ?? []).flatMap(({ name: choice, option, options }) =>
    options.filter((each) => each.name !== option).map((each) => [name, choice, each.name] as const),
  ),
);

describe("choices", () => {
  it("are there to be tried", () => expect(WAYS.length).toBeGreaterThan(0));
  it.each(WAYS)("%s with %s %s", (name, choice, option) => {
    const text = textOf(name);
    const { build, findings } = solveCopy(text, { [choice]: option });
    expect(said(findings)).toEqual([]);
    expect(build && auditOf(text, build)).toEqual([]);
  });
});
