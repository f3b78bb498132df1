import { describe, expect, test } from "vitest";
import { draftOf, meaning, planWith, rulesOf } from "./helpers.ts";

/** What a part with these settings comes to, without places. */
function partWith(lines: string): unknown {
  const piece = `shelf:\n  made of: pine\n${lines.replace(/^/gm, "  ")}`;
  return (meaning(draftOf(planWith({ piece })).piece) as unknown[])[0];
}
const number = (n: number, d = 1) => ({ kind: "number", value: { n: `${n}n`, d: `${d}n` } });
const named = (...path: string[]) => ({ kind: "name", path });
const at = (...path: string[]) => ({ path });
const face = (side: string, ...path: string[]) => ({ path, face: side });

describe("words of place", () => {
  test.each([
    ["left: 3", [{ key: "left", word: "face", face: "left", value: number(3) }]],
    ["back: outside.back", [{ key: "back", word: "face", face: "back", value: named("outside", "back") }]],
    ["across: 24", [{ key: "across", word: "extent", axis: "across", value: number(24) }]],
    ["length: 24", [{ key: "length", word: "board", size: "length", value: number(24) }]],
    ["up from floor: 6", [{ key: "up from floor", word: "face", face: "bottom", value: number(6) }]],
    ["on: base", [{ key: "on", word: "against", face: "bottom", target: face("top", "base") }]],
    [
      "under: case.top-rail",
      [{ key: "under", word: "against", face: "top", target: face("bottom", "case", "top-rail") }],
    ],
    ["behind: a", [{ key: "behind", word: "against", face: "front", target: face("back", "a") }]],
    ["in front of: a", [{ key: "in front of", word: "against", face: "back", target: face("front", "a") }]],
    ["right of: a", [{ key: "right of", word: "against", face: "left", target: face("right", "a") }]],
    ["left of: a", [{ key: "left of", word: "against", face: "right", target: face("left", "a") }]],
    ["flush with: a.top", [{ key: "flush with", word: "against", face: "top", target: face("top", "a") }]],
    [
      "flush with: [a.top, slat.2.left]",
      [
        { key: "flush with", word: "against", face: "top", target: face("top", "a") },
        { key: "flush with", word: "against", face: "left", target: face("left", "slat", "2") },
      ],
    ],
    [
      "set back: 1/8 from a.front",
      [
        {
          key: "set back",
          word: "against",
          face: "front",
          target: face("front", "a"),
          offset: number(1, 8),
          toward: "inwards",
        },
      ],
    ],
    [
      "proud: [1/16 from a.front, rail / 2 from b.top]",
      [
        {
          key: "proud",
          word: "against",
          face: "front",
          target: face("front", "a"),
          offset: number(1, 16),
          toward: "outwards",
        },
        {
          key: "proud",
          word: "against",
          face: "top",
          target: face("top", "b"),
          offset: { kind: "operation", operator: "/", left: named("rail"), right: number(2) },
          toward: "outwards",
        },
      ],
    ],
    ["between: [a, b]", [{ key: "between", word: "between", first: at("a"), second: at("b") }]],
    ["between: left side and b", [{ key: "between", word: "between", first: at("left-side"), second: at("b") }]],
    ["deep: between a and b", [{ key: "deep", word: "between", axis: "deep", first: at("a"), second: at("b") }]],
    ["centred on: a", [{ key: "centred on", word: "centred", on: at("a") }]],
    [
      "centered on: { across: a, up: b.c }",
      [
        { key: "centred on", word: "centred", axis: "across", on: at("a") },
        { key: "centred on", word: "centred", axis: "up", on: at("b", "c") },
      ],
    ],
    ["up: centred on a", [{ key: "up", word: "centred", axis: "up", on: at("a") }]],
    ["at: middle", [{ key: "at", word: "middle" }]],
    ["across: middle", [{ key: "across", word: "middle", axis: "across" }]],
    ["at: { deep: middle }", [{ key: "at", word: "middle", axis: "deep" }]],
    [
      "left: 0\nwidth: 3",
      [
        { key: "left", word: "face", face: "left", value: number(0) },
        { key: "width", word: "board", size: "width", value: number(3) },
      ],
    ],
  ])("%s", (lines, placing) => {
    expect(partWith(lines)).toMatchObject({ kind: "part", path: ["shelf"], placing });
  });
});

describe("shapes", () => {
  test.each([
    [
      "taper: { faces: [left, front], at: bottom, to: 1, over: 2 }",
      { shape: "taper", faces: ["left", "front"], end: { value: "bottom" }, to: number(1), over: number(2) },
    ],
    [
      "chamfer: { along: top front, by: 1/8 }",
      { shape: "chamfer", along: { faces: ["top", "front"] }, by: number(1, 8) },
    ],
    [
      "bevel: { along: top front, wide: 1, deep: 1/4 }",
      { shape: "bevel", along: { faces: ["top", "front"] }, wide: number(1), deep: number(1, 4) },
    ],
    [
      "notch: { at: left front, wide: 1, deep: 2 }",
      { shape: "notch", along: { faces: ["left", "front"] }, wide: number(1), deep: number(2) },
    ],
    [
      "rebate: { along: back top, width: 1/4, depth: 1/2 }",
      { shape: "rabbet", along: { faces: ["back", "top"] }, wide: number(1, 4), deep: number(1, 2) },
    ],
    [
      "groove: { in: back, near: bottom, in from: 1/2, wide: 1/4, deep: 3/8, from: left + 1, to: right - 1 }",
      {
        shape: "groove",
        in: "back",
        near: "bottom",
        inFrom: number(1, 2),
        wide: number(1, 4),
        deep: number(3, 8),
        from: { kind: "operation", operator: "+", left: named("left"), right: number(1) },
        to: { kind: "operation", operator: "-", left: named("right"), right: number(1) },
      },
    ],
    ["housing: { in: left, near: top, in from: 3, wide: 1, deep: 1/4 }", { shape: "dado", in: "left", near: "top" }],
    ["mortice: { in: left, near: top, in from: 3, wide: 1, deep: 1/4 }", { shape: "mortise" }],
    [
      "tenon: { on: left, long: 1, thick: 1/4, wide: 2 }",
      { shape: "tenon", on: "left", long: number(1), thick: number(1, 4), wide: number(2) },
    ],
    [
      "hole: { in: top, from right: 2, from front: 3, diameter: 3/8, deep: 1/2, counterbore: { diameter: 1, deep: 1/4 } }",
      {
        shape: "hole",
        in: "top",
        centre: [
          { from: "right", distance: number(2) },
          { from: "front", distance: number(3) },
        ],
        diameter: number(3, 8),
        deep: number(1, 2),
        counterbore: { diameter: number(1), deep: number(1, 4) },
      },
    ],
  ])("%s", (lines, shape) => {
    expect(partWith(lines)).toMatchObject({ shapes: [shape] });
  });

  test("a hole right through has no depth, said or not", () => {
    for (const deep of ["", ", deep: through"]) {
      const part = partWith(`hole: { in: top, from left: 2, from front: 3, diameter: 3/8${deep} }`);
      expect(Object.keys((part as { shapes: object[] }).shapes[0] ?? {})).not.toContain("deep");
    }
  });

  test("a list gives several", () => {
    const part = partWith(
      "notch:\n  - { at: left front, wide: 1, deep: 2 }\n  - { at: right front, wide: 1, deep: 2 }",
    );
    expect(part).toMatchObject({
      shapes: [{ shape: "notch" }, { shape: "notch", along: { faces: ["right", "front"] } }],
    });
  });

  test.each([
    ["chamfer: { along: top bottom, by: 1/8 }", "wrong-value"],
    ["chamfer: { along: top, by: 1/8 }", "wrong-value"],
    ["hole: { in: top, from left: 2, diameter: 1 }", "missing-key"],
    ["hole: { in: top, from left: 2, from bottom: 2, diameter: 1 }", "missing-key"],
    ["taper: { faces: inside, at: bottom, to: 1, over: 2 }", "unknown-word"],
    ["tenon: 3", "wrong-value"],
    ["round-over: 1/8", "not-in-this-version"],
  ])("%s is told: %s", (lines, rule) => {
    expect(rulesOf(planWith({ piece: `shelf:\n  made of: pine\n  ${lines}` }))).toEqual([rule]);
  });
});

test("the other settings", () => {
  const lines = [
    ...[
      "as: lying flat",
      "facing: left",
      "grain: up",
      "like: other",
      "mirror of: rail",
      "about: deep",
      "called: The shelf",
    ],
    ...["good face: top", "count: rows + 1", "spread: deep between a and b", "gaps: both ends", "gap: 1/4", "every: 6"],
  ];
  expect(partWith(lines.join("\n"))).toMatchObject({
    madeOf: { value: "pine" },
    attitude: { value: "lying flat" },
    facing: { value: "left" },
    grain: { value: "up" },
    like: at("other"),
    mirrorOf: at("rail"),
    about: { value: "deep" },
    called: { value: "The shelf" },
    goodFace: { value: "top" },
    repeat: {
      count: { kind: "operation" },
      spread: { axis: "deep", first: at("a"), second: at("b") },
      gaps: { value: "both ends" },
      gap: number(1, 4),
      every: number(6),
    },
  });
});

describe("groups and parts", () => {
  const paths = (piece: string): unknown => {
    const walk = (node: { kind: string; path: string[]; children?: unknown[] }): unknown =>
      node.kind === "group"
        ? [node.path.join("."), node.children?.map((each) => walk(each as never))]
        : node.path.join(".");
    return draftOf(planWith({ piece })).piece.map((node) => walk(node as never));
  };
  test("an entry that is made of nothing is a group, to any depth", () => {
    expect(paths("a:\n  b:\n    c d: { made of: pine }\n  Notch: { made of: pine }\ne: { like: a.b.c-d }")).toEqual([
      ["a", [["a.b", ["a.b.c-d"]], "a.notch"]],
      "e",
    ]);
  });
  test.each([
    ["shelf: { left: 0 }", ["missing-key"]],
    ["shelf: {}", ["missing-key"]],
    ["shelf: { hole: { in: top, from left: 1, from front: 1, diameter: 1 } }", ["missing-key"]],
    ["shelf: { mad of: pine, left: 0 }", ["unknown-key"]],
    ["shelf: { mad of: pine }", ["unknown-key"]],
    ["shelf: pine", ["wrong-value"]],
    ["shelf: [pine]", ["wrong-value"]],
    ["top: { made of: pine }", ["reserved-name"]],
    ["Outside: { made of: pine }", ["reserved-name"]],
    ["group: { floor: { made of: pine } }", ["reserved-name"]],
    ["a.b: { made of: pine }", ["unusable-name"]],
    ["2nd: { made of: pine }", ["unusable-name"]],
    ["doors: { kind: door }", ["assembly-name"]],
    ["case: { shelf: { made of: pine } }", ["assembly-name"]],
    ["case: { made of: pine }", []],
    [`${"n".repeat(101)}: { made of: pine }`, ["text-too-long"]],
    [`${"n".repeat(100)}: { made of: pine }`, []],
  ])("%s: %j", (piece, rules) => {
    expect(rulesOf(planWith({ piece }))).toEqual(rules);
  });
});

test("names that mean something to JavaScript are names like any other", () => {
  const names = ["__proto__", "constructor", "prototype", "toString", "hasOwnProperty", "valueOf", "then"];
  const source = [
    "plan: 1\ntitle: Names\nsizes:",
    ...names.map((name, i) => `  ${name}: ${i + 1}`),
    "stock:",
    ...names.map((name) => `  ${name}: { sold as: 1x8, wood: ${name} }`),
    "piece:",
    ...names.map((name) => `  ${name}: &${name} { made of: ${name}, left: ${name}, on: ${name} }`),
    ...names.map((name) => `  again-${name}: *${name}`),
  ].join("\n");
  const draft = draftOf(source);
  const lower = names.map((name) => name.toLowerCase());
  expect([...draft.sizes.keys()]).toEqual(lower);
  expect([...draft.stock.keys()]).toEqual(lower);
  expect(draft.piece.map(({ path }) => path[0])).toEqual([...lower, ...lower.map((name) => `again-${name}`)]);
  expect(({} as Record<string, unknown>).sold).toBeUndefined();
  expect(Object.keys(Object.prototype)).toEqual([]);
});
