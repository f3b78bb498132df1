import { describe, expect, test } from "vitest";
import { doorExample } from "../../../src/findings/door-example.ts";
import { hungExample } from "../../../src/findings/hung-example.ts";
import { UNITS_PER_MM } from "../../../src/units/length.ts";
import { toNumber } from "../../../src/units/rational.ts";
import { said, solveText } from "../../examples/compiled.ts";

const IN = 25.4;

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
    expect(words(found)).toContain("deepen a seat, or lay card into it");
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
    expect(words(found)).toContain("put a strip of card behind a leaf");
    expect(words(found)).not.toMatch(/mortise/u);
  });
});

describe("a door that is set back behind what it hangs on", () => {
  const hung = (leaf: string, back: string) =>
    solveText(
      doorExample(["leaf: 1/2", `leaf: ${leaf}`], ["made of: leaf\n", `made of: leaf\n    set back: ${back}\n`]),
    );
  test("has too little of a narrow leaf on it: 1/2 in less 3/8 in", () => {
    const { findings } = hung("1/2", "3/8");
    const told = findings.find(({ rule }) => rule === "hinge-leaf-off-door");
    expect(told?.message).toContain("1/8 in lie on it");
    expect(told?.help).toContain("at least 3/4 in wide");
  });
  test("takes a wider one, whose screws stand in the middle of what lies on both", () => {
    const { findings, build } = hung("7/8", "3/8");
    expect(findings.filter(({ rule }) => rule.startsWith("hinge-leaf"))).toEqual([]);
    const from = (part: string): readonly number[] => [
      ...new Set(
        build?.holes
          .filter((hole) => hole.part === part && hole.kind === "pilot" && hole.for?.includes(".h"))
          .map(({ at }) => Math.round((toNumber(at[1]) / UNITS_PER_MM) * 1000) / 1000),
      ),
    ];
    // From 3/8 to 7/8 in behind the front edge: 5/8 in, for both leaves.
    expect(from("finishes.slab")).toEqual([(IN * 5) / 8]);
    expect(from("cabinet.left-side")).toContain((IN * 5) / 8);
  });
});
