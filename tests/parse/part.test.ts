import { describe, expect, test } from "vitest";
import { draftOf, named, number, partWith, planWith, rulesOf } from "./helpers.ts";

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
    ["group: { top: { made of: pine } }", ["reserved-name"]],
    ["Outside: { made of: pine }", ["reserved-name"]],
    ["group: { floor: { made of: pine } }", ["reserved-name"]],
    ["a.b: { made of: pine }", ["unusable-name"]],
    ["2nd: { made of: pine }", ["unusable-name"]],
    ["doors: { kind: dwoor }", ["unknown-assembly"]],
    ["case: { shelf: { made of: pine } }", []],
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
