import { describe, expect, test } from "vitest";
import { doorExample, framed } from "../../../src/findings/door-example.ts";
import { said, solveText } from "../../examples/compiled.ts";
import { judge } from "./plan.ts";

/**
 * The cabinet of the examples: 18 × 20 in of 23/32 in sheet, so 16 9/16 × 18 9/16 inside; an inset door of 3/4 with gaps of 1/8, so 16 5/16 × 18 5/16,
 * on butt hinges with leaves of 1/2 that are 1/8 shut and have barrels of 1/4.
 */
const of = (rule: string, ...changes: readonly (readonly [string, string])[]) =>
  judge(doorExample(...changes)).of(rule, "finishes");
const help = (rule: string, ...changes: readonly (readonly [string, string])[]) =>
  judge(doorExample(...changes))
    .told(rule)
    .map((finding) => finding.help)
    .join();
/** What is said of a door that cannot be built so. */
const refused = (...changes: readonly (readonly [string, string])[]) => {
  const { build, findings } = solveText(doorExample(...changes));
  expect(build).toBeUndefined();
  return [...said(findings), ...findings.map(({ help }) => help)].join("\n");
};
const IN = 25.4;

describe("the leaf against its hinges", () => {
  const cups = ["hinges: hinge", "hinges: { hardware: cup, with: cup hinges }"] as const;
  const strips = ["    made of: leaf\n", "    made of: leaf\n    strips: { made of: strip }\n"] as const;
  test("3/4 in are 19.05 mm, and 25.4 with strips of 1/4, of 16 to 24", () => {
    expect(of("door-too-thick", cups)).toMatchObject({ verdict: "holds", value: expect.closeTo(19.05), limit: 24 });
    // In the plan's own unit, to the nearest 1/64.
    expect(refused(cups, strips)).toContain("is 1 in thick, strips included (3/4 in without)");
    const wider = [
      "{ kind: cup hinge for an inset door }",
      "{ kind: cup hinge for an inset door, door thickness: 16 mm to 26 mm }",
    ] as const;
    expect(of("door-too-thick", cups, strips, wider)?.verdict).toBe("holds");
  });
  // The stop for 12.5 mm is set to 1/2 in, 12.7 mm, the next mark.
  test("a cup of 12.5 mm leaves 6.35 of 3/4 in, and nothing of 1/2 in", () => {
    const half = ["leaf: { sold as: 3/4 MDF }", "leaf: { sold as: 1/2 MDF }"] as const;
    expect(of("cup-too-deep", cups)).toMatchObject({ verdict: "holds", value: expect.closeTo(6.35), limit: 1.5 });
    const said = refused(cups, half);
    expect(said).toContain("bored 1/2 in deep into finishes.slab, which is 1/2 in thick there");
    // 12.7 + 1.5 = 14.2 mm, 0.559 in: 36/64 is the first mark that is enough.
    expect(said).toContain("at least 9/16 in thick");
    expect(of("cup-too-deep")).toBeUndefined();
  });
  test("a leaf of 5/8 leaves 1/8 of 3/4, one of 11/16 only 1/16", () => {
    const leaf = (wide: string) => of("hinge-leaf-to-edge", ["leaf: 1/2", `leaf: ${wide}`]);
    expect(leaf("5/8")).toMatchObject({
      verdict: "holds",
      value: expect.closeTo(IN / 8),
      limit: expect.closeTo(IN / 8),
    });
    expect(leaf("11/16")).toMatchObject({ verdict: "warns", value: expect.closeTo(IN / 16) });
    expect(help("hinge-leaf-to-edge", ["leaf: 1/2", "leaf: 11/16"])).toContain("at most 5/8 in");
  });
  test("3/16 in a gap of 1/8 is 1/16 too much, or a mortise of 1/32 in each part", () => {
    const hinge = (more: string) => ["leaf: 1/2", `leaf: 1/2, ${more}`] as const;
    const bound = refused(hinge("fit: in the gap, closed: 3/16"));
    expect(bound).toContain("are 3/16 in thick when they are shut, and the gap is 1/8 in");
    expect(bound).toContain("let each leaf in by 1/32 in");
    expect(of("hinge-bound", hinge("closed: 3/16"))).toMatchObject({ verdict: "holds", value: 0 });
    expect(of("hinge-bound", hinge("fit: in the gap"))).toMatchObject({ verdict: "holds", value: 0 });
  });
  test("cup and groove leave 57.15 − 9.525 − 39 = 8.625 mm of a stile of 2 1/4, and 0.69 of 1 15/16", () => {
    const stiles = (wide: string) => of("cup-meets-groove", ...framed(`, stiles: ${wide}, groove: 3/8`));
    expect(stiles("2 1/4")).toMatchObject({ verdict: "holds", value: expect.closeTo(8.625), limit: 1 });
    // 2 in: 50.8 − 9.525 − 39 = 2.275; 1 15/16: 49.2125 − 9.525 − 39 = 0.6875.
    expect(stiles("2")).toMatchObject({ verdict: "holds", value: expect.closeTo(2.275) });
    expect(refused(...framed(", stiles: 1 15/16, groove: 3/8"))).toContain(
      "about 1/32 in of finishes.left-stile is left",
    );
    expect(judge(doorExample(...framed(", stiles: 2, groove: 3/8"))).told("cup-meets-groove")).toEqual([]);
  });
});

describe("how many hinges", () => {
  const hung = (count: number, more: readonly (readonly [string, string])[] = []) =>
    of("too-few-hinges", ["hinges: hinge", `hinges: { hardware: hinge, count: ${count} }`], ...more);
  test("two up to 40 in, three above", () => {
    expect(hung(2)).toMatchObject({ verdict: "holds", value: 2, limit: 2 });
    expect(hung(1)).toMatchObject({ verdict: "warns", value: 1, limit: 2 });
    // 44 in high: 44 − 2 × 23/32 − 1/4 = 42 5/16; 42.3 / 20 → 3.
    expect(hung(2, [["height: 20", "height: 44"]])).toMatchObject({ verdict: "warns", value: 2, limit: 3 });
    expect(hung(3, [["height: 20", "height: 44"]])?.verdict).toBe("holds");
  });
});

describe("shutting and opening", () => {
  test("the inner corner swings out by √(W² + (t + k)²) − W", () => {
    // The pin lies in the middle of the gap of 1/8, half of 1/4 in front: W = 16 5/16 + 1/16, t + k = 3/4 + 1/8.
    const out = Math.sqrt(16.375 ** 2 + 0.875 ** 2) - 16.375;
    expect(of("closing-edge-rubs")).toMatchObject({
      verdict: "holds",
      value: expect.closeTo(out * IN, 6),
      limit: expect.closeTo(IN / 8),
    });
    const narrow = [
      ["width: 18", "width: 6"],
      ["across: 16", "across: 4"],
      ["    hinges: hinge", "    gap: 1/16\n    hinges: hinge"],
    ] as const;
    // 6 − 2 × 23/32 − 2 × 1/16 = 4 7/16, and half a gap: √(4 15/32² + 7/8²) − 4 15/32 = 0.085 in, where there are 0.0625.
    const rubs = refused(...narrow);
    expect(rubs).toContain("swings about 5/64 in farther out than its front, and the gap there is about 1/16 in");
    expect(rubs).toContain("strikes cabinet.right-side");
    // A bevel of β takes (t + k) tan β off: √((4.469 − 0.875 tan β)² + 0.875²) < 4.531 from β = 2° on.
    expect(rubs).toContain("a bevel of 2°");
  });
  test("a bar before its opening lets it open by so much, and no further", () => {
    // Its corner lies 6 − 25/32 = 5.22 beside the pin and 7 1/4 − 1/8 in front of it, at 53.8°; the front of the door is 1/8 behind the pin,
    // which is 0.8° more at that distance: 54.6°, and of poses every 2° the last that is free is 54.
    const bar = [
      ["outside: { width: 18, depth: 10, height: 20 }\n", ""],
      ["cabinet: { kind: case,", "cabinet: { kind: case, left: 0, right: 18, front: 0, deep: 10, bottom: 0, top: 20,"],
      [
        "  finishes:\n",
        "  arm: { made of: oak, as: on edge, facing: left, left: 0, front: -8, back: 0, bottom: 8, up: 3 }\n  bar: { made of: oak, as: on edge, facing: front, left: 3/4, right: 6, front: -8, bottom: 8, up: 3 }\n  finishes:\n",
      ],
      [
        "fittings:\n",
        "joints:\n  - { join: arm, to: cabinet.left-side, with: glue }\n  - { join: bar, to: arm, with: glue }\nfittings:\n",
      ],
    ] as const;
    const found = of("opens-too-little", ...bar);
    expect(found).toMatchObject({ verdict: "warns", limit: 90 });
    expect(found?.value).toBe(54);
    expect(of("opens-too-little")).toMatchObject({ verdict: "holds", value: 180 });
    expect(of("strikes-on-its-way", ...bar)?.verdict).toBe("holds");
  });
  test("a catch 3/4 in high holds the strike of a door 1/8 in below its case, and passes the one that begins 1 1/2 in below it", () => {
    const lower = [
      ["    pull: knob\n", "    pull: knob\n    gap: 1 1/2\n"],
      ["leaf: 1/2 }", "leaf: 2, fit: on the face }"],
      ["across: 16", "across: 14"],
    ] as const;
    expect(judge(doorExample()).told("catch-misses-strike")).toEqual([]);
    const { told, checks } = judge(doorExample(...lower));
    expect(told("catch-misses-strike").map(({ message }) => message)).toEqual([
      "the catch on cabinet.top-panel passes its strike on finishes.slab by 3/4 in: it cannot hold it",
    ]);
    // And nothing says that the door stays shut.
    expect(checks.some(({ rule }) => rule === "door-without-catch")).toBe(false);
  });
  const CATCH = "  - { fit: catch, to: cabinet.top-panel, face: bottom, across: 16, against: finishes.slab }\n";
  const fitted = (line: string) => [[`fittings:\n${CATCH}`, line === "" ? "" : `fittings:\n${line}`]] as const;
  test("a stop, a catch or wood behind it stops it; only a catch holds it", () => {
    const rules = (line: string) =>
      ["inset-door-without-stop", "door-without-catch"].map((rule) => of(rule, ...fitted(line))?.verdict);
    expect(rules(CATCH)).toEqual(["holds", "holds"]);
    expect(
      rules("  - { fit: stop, to: cabinet.bottom-panel, face: top, along: across, deep: finishes.slab.back + 3/8 }\n"),
    ).toEqual(["holds", "warns"]);
    // An inch behind the door it stops nothing.
    expect(
      rules(
        "  - { fit: stop, to: cabinet.bottom-panel, face: top, along: across, deep: finishes.slab.back + 1 3/8 }\n",
      ),
    ).toEqual(["warns", "warns"]);
    expect(rules("")).toEqual(["warns", "warns"]);
    // Cup hinges hold and stop theirs.
    const cups = ["hinges: hinge", "hinges: { hardware: cup, with: cup hinges }"] as const;
    expect(of("inset-door-without-stop", ...fitted(""), cups)).toBeUndefined();
    expect(of("door-without-catch", ...fitted(""), cups)).toBeUndefined();
    // But for those that are said to have no spring.
    const free = [
      "cup: { kind: cup hinge for an inset door }",
      "cup: { kind: cup hinge for an inset door, shuts: by a catch }",
    ] as const;
    expect(of("door-without-catch", ...fitted(""), cups, free)?.verdict).toBe("warns");
    expect(of("door-without-catch", ...fitted(CATCH), cups, free)?.verdict).toBe("holds");
  });
  test("the lines that the help gives do", () => {
    const lines = (rule: string) =>
      [...help(rule, ...fitted("")).matchAll(/`(- \{ fit: .*?\})`/g)].map(([, line]) => line);
    const verdict = (rule: string, line = "") => of(rule, ...fitted(`  ${line}\n`))?.verdict;
    const [hold, stop] = lines("inset-door-without-stop");
    expect(hold).toBe(
      "- { fit: catch, to: cabinet.top-panel, face: bottom, across: finishes.slab.right - 2, against: finishes.slab }",
    );
    expect(lines("door-without-catch")).toEqual([hold]);
    expect(verdict("inset-door-without-stop", hold)).toBe("holds");
    expect(verdict("door-without-catch", hold)).toBe("holds");
    expect(verdict("inset-door-without-stop", stop)).toBe("holds");
  });
  test("a knob or a hand-hold opens it", () => {
    expect(of("door-without-grip")).toMatchObject({ verdict: "holds", value: 1 });
    expect(of("door-without-grip", ["    pull: knob\n", ""])).toMatchObject({ verdict: "warns", value: 0, limit: 1 });
  });
});
