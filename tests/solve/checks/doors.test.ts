import { describe, expect, test } from "vitest";
import { doorExample, framed } from "../../../src/findings/door-example.ts";
import { hungExample } from "../../../src/findings/hung-example.ts";
import { UNITS_PER_MM } from "../../../src/units/length.ts";
import { toNumber } from "../../../src/units/rational.ts";
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
  });
  test("a knob or a hand-hold opens it", () => {
    expect(of("door-without-grip")).toMatchObject({ verdict: "holds", value: 1 });
    expect(of("door-without-grip", ["    pull: knob\n", ""])).toMatchObject({ verdict: "warns", value: 0, limit: 1 });
  });
});

describe("the overlay of cup hinges: what the hinge gives, and what its cup lies further in than it asks (pages of hinge makers, reproduced)", () => {
  /** From the hinged edge of the door to the middle of its cups, mm, and what is found; its hinge gives `gives`, or says nothing. */
  const hung = (gives: string | null, covers: string, more = "") => {
    const text = hungExample(
      ["{ kind: cup hinge, overlay: 1/2 }", `{ kind: cup hinge${gives === null ? "" : `, overlay: ${gives}`}${more} }`],
      ["overlay: 1/2, hinges", `overlay: ${covers}, hinges`],
    );
    const { build, findings } = solveText(text);
    const cup = build?.holes.find(({ kind }) => kind === "cup");
    const door = build?.parts.find(({ id }) => id === cup?.part);
    const from = cup && door ? toNumber(cup.at[0]) / UNITS_PER_MM - toNumber(door.body.low[0]) / UNITS_PER_MM : null;
    const check = build?.checks.find(({ rule }) => rule === "hinge-overlay");
    const items = [...new Set(build?.hardware.map(({ item }) => item.label).filter((label) => /^cup/u.test(label)))];
    return { from, check, items, told: findings.filter(({ rule }) => rule === "hinge-overlay") };
  };
  // The middle of a cup of 35 mm lies 17.5 + B from the edge: 20.5 for B = 3, 22.5 for B = 5 (maker's table, reproduced).
  test.each([
    ["1/2", "1/2", 4],
    ["1/2", "9/16", 4 + IN / 16],
    ["1/2", "15/32", 4 - IN / 32],
    ["11.7 mm", "10.7 mm", 3],
    ["11.7 mm", "12.7 mm", 5],
  ])("a hinge for %s on a door that covers %s: B = %f mm", (gives, covers, b) => {
    const { from, check, told } = hung(gives, covers);
    expect(from).toBeCloseTo(17.5 + b, 2);
    expect(check).toMatchObject({ verdict: "holds", value: expect.closeTo(0, 2), limit: 0.5 });
    expect(told).toEqual([]);
  });
  test("beyond 3 to 7 mm it is an error, with what would do; and that does", () => {
    const { told } = hung("1/4", "5/8");
    expect(told[0]?.message).toContain(
      "covers what it hangs on by 5/8 in, and its hinges are for an overlay of 1/4 in",
    );
    // 6.35 − 1 = 5.35 mm, up to 7/32; 6.35 + 3 = 9.35 mm, down to 23/64.
    expect(told[0]?.help).toBe(
      "take hinges for that (overlay: 5/8 in in the settings of the hinge); or let the door cover 7/32 in to 23/64 in there (overlay, in the settings of the door)",
    );
    expect(hung("5/8", "5/8").told).toEqual([]);
    expect(hung("1/4", "23/64").told).toEqual([]);
    expect(hung("1/4", "7/32").told).toEqual([]);
  });
  test("a hinge that says nothing is bought for the overlay of the door", () => {
    const { from, items, told } = hung(null, "3/8");
    expect(from).toBeCloseTo(21.5, 2);
    expect(items.join()).toMatch(/overlay 3⁄8 in/u);
    expect(told).toEqual([]);
  });
  test("its makers may allow more, and the plan may say where it lies", () => {
    expect(hung("1/2", "3/4", ", cup between: 3 mm to 11 mm").told).toEqual([]);
    expect(hung("1/2", "1/2", ", cup from edge: 6 mm")).toMatchObject({ from: expect.closeTo(23.5, 2), told: [] });
  });
  test("a door between the sides asks for hinges of its kind, and one in front for its own", () => {
    const inset = hungExample(["lies: overlay, overlay: 1/2", "lies: inset"]);
    expect(solveText(inset).findings.find(({ rule }) => rule === "hinge-overlay")?.help).toBe(
      "take hinges for it (kind: cup hinge for an inset door)",
    );
    const front = hungExample(["{ kind: cup hinge, overlay: 1/2 }", "{ kind: cup hinge for an inset door }"]);
    expect(solveText(front).findings.find(({ rule }) => rule === "hinge-overlay")?.help).toContain("kind: cup hinge");
  });
});

describe("hinges that are to be mortised: (closed − gap) / 2 (instructions of hinge makers, and arithmetic)", () => {
  const hung = (fit: string, gap: string) =>
    solveText(
      doorExample(
        ["butt hinge, leaf: 1/2", `butt hinge, leaf: 1/2${fit}`],
        ["    pull: knob\n", `    pull: knob\n${gap}`],
      ),
    );
  const mortises = ({ build }: ReturnType<typeof hung>) =>
    (build?.parts ?? []).flatMap(({ features }) =>
      features.flatMap((each) =>
        each.kind === "mortise" && "size" in each ? [toNumber(each.size[2]) / UNITS_PER_MM / IN] : [],
      ),
    );
  const words = ({ build }: ReturnType<typeof hung>) => (build?.steps ?? []).flatMap(({ text }) => text).join(" ");
  test("the gap follows: half of 1/8, each leaf let in by 1/32", () => {
    const found = hung(", fit: mortised", "");
    expect(said(found.findings)).toEqual([]);
    expect(new Set(mortises(found))).toEqual(new Set([1 / 32]));
    expect(words(found)).toContain("deepen or pack a mortise");
  });
  test("a gap as wide as they close is refused, with one that would do", () => {
    const { findings } = hung(", fit: mortised", "    gap: 1/8\n");
    const [finding] = findings.filter(({ rule }) => rule === "hinge-not-let-in");
    expect(finding?.help).toContain("gap: 1/16 in");
    expect(said(hung(", fit: mortised", "    gap: 1/16\n").findings)).toEqual([]);
    expect(said(hung(", fit: in the gap", "    gap: 1/8\n").findings)).toEqual([]);
  });
  test("where nothing is said they fold into the usual gap, and no step speaks of mortises", () => {
    const found = hung("", "");
    expect(mortises(found)).toEqual([]);
    expect(words(found)).toContain("put card behind a leaf");
    expect(words(found)).not.toMatch(/mortise/u);
  });
});
