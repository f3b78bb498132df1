import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { auditOf, chainsOf, EXAMPLES, SMALL_EXAMPLES, said, solveCopy, solveText, textOf } from "./compiled.ts";
import { choicesOf, cornersOf, drawsOf, solveDraw } from "./draws.ts";

/** Copies of these take a minute; `npm run promises` tries them. */
const LONG_TO_SOLVE: ReadonlySet<string> = new Set(["index-cabinet", "overalls-chest", "spice-cabinet"]);

/** What a reader may ask for: each option, each end of a range of thickness, and sizes at random. What compiles keeps its promises. */
const tried = EXAMPLES.filter((name) => process.env.PROMISES || !LONG_TO_SOLVE.has(name));
const chosen = tried.flatMap((name) => {
  // The options that are usual are looked at as the example itself, and one that is not by every-choice.
  const [usual, ...others] = choicesOf(textOf(name));
  const unusual = (choose: Readonly<Record<string, string>>): number =>
    Object.entries(choose).filter(([choice, option]) => usual?.[choice] !== option).length;
  return others.filter((choose) => unusual(choose) > 1).map((choose) => ({ name, choose }));
});
it.each(chosen)("$name with $choose", ({ name, choose }) => {
  const { build, findings } = solveCopy(textOf(name), choose);
  expect(said(findings)).toEqual([]);
  expect(build && auditOf(textOf(name), build)).toEqual([]);
});

/** All thin; with `npm run promises` all thick too, and it draws what lies between. */
const ends = <T>(all: readonly T[]): readonly T[] =>
  process.env.PROMISES && all.length > 2 ? [all[0] as T, all.at(-1) as T] : all.slice(0, 1);
const corners = (process.env.PROMISES ? tried : SMALL_EXAMPLES)
  .flatMap((name) =>
    // The options that are usual; `npm run promises` draws the others.
    choicesOf(textOf(name))
      .slice(0, 1)
      .flatMap((choose) => ends(cornersOf(textOf(name))).map((measured) => ({ name, choose, measured }))),
  )
  .filter(({ measured }) => Object.keys(measured).length > 0);
it.each(corners)("$name, $choose, measured $measured", ({ name, choose, measured }) => {
  const { build, findings } = solveCopy(textOf(name), choose, measured);
  expect(findings.filter(({ severity }) => severity !== "advice")).toEqual([]);
  expect(build && auditOf(textOf(name), build)).toEqual([]);
});

it("dowels in the steep brace of a short, high cart stay in its wood", () => {
  const text = textOf("workbench-cart");
  const { build } = solveText(text, { width: "908", height: "950" }, { top: "slab" });
  expect(build && auditOf(text, build)).toEqual([]);
});

/** `npm run promises` draws more of them. */
const COUNT = Number(process.env.PROMISES ?? 1);
const ONLY = process.env.PROMISES_OF ?? "";
const SEED = Number(process.env.PROMISES_SEED ?? 20261125);

describe("copies at random", () => {
  it.each((process.env.PROMISES ? EXAMPLES : SMALL_EXAMPLES).filter((name) => name.includes(ONLY)))(
    "%s",
    (name) => {
      const text = textOf(name);
      const refused = new Map<string, number>();
      fc.assert(
        fc.property(drawsOf(text), (draw) => {
          const { build, findings } = solveDraw(text, draw);
          if (build) {
            expect(auditOf(text, build)).toEqual([]);
            expect(chainsOf(text, build).open).toEqual([]);
            return;
          }
          const errors = findings.filter(({ severity }) => severity === "error");
          expect(errors.length).toBeGreaterThan(0);
          // What refuses a size says what to do.
          expect(errors.filter(({ help }) => help === undefined || help === "")).toEqual([]);
          for (const rule of new Set(errors.map((each) => each.rule))) refused.set(rule, (refused.get(rule) ?? 0) + 1);
        }),
        { numRuns: COUNT, seed: SEED },
      );
      if (process.env.PROMISES) console.log(`${name}: ${COUNT} copies, refused ${JSON.stringify([...refused])}`);
    },
    60_000 + COUNT * 20_000,
  );
});
