import { describe, expect, test } from "vitest";
import { inches, millimetres } from "../../src/units/length.ts";
import { draftOf, meaning, number, parseText, planWith, rulesOf } from "./helpers.ts";

const at = (...path: string[]) => ({ path });

const jointWith = (lines: string): unknown => {
  const joints = `- join: a\n  to: b\n${lines.replace(/^/gm, "  ")}`;
  return (meaning(draftOf(planWith({ joints })).joints) as unknown[])[0];
};

describe("joints", () => {
  test.each([
    ["with: mortise and tenon", { with: { value: "mortise and tenon" }, join: [at("a")], to: [at("b")] }],
    ["with: housing\ndeep: 1/4\nplay: 1/64", { with: { value: "dado" }, deep: number(1, 4), play: number(1, 64) }],
    ["with: rebate", { with: { value: "rabbet" } }],
    ["with: Pocket-Screws\nglue: yes", { with: { value: "pocket screws" }, glue: { value: true } }],
    ["with: glue\nglue: false", { with: { value: "glue" }, glue: { value: false } }],
    ["with: dado\nstopped: 1/2 from front", { stopped: { by: number(1, 2), from: "front" } }],
    ["with: half lap\njoin side: right", { joinSide: { value: "right" } }],
    [
      "with: mortise and tenon\ntenon: { thick: 3/8, long: 1 1/4, in from: 1/4 from front, shoulder above: 1/2, shoulder: 1/4, ends: mitred }\nmortise: 1/16 deeper",
      {
        tenon: {
          thick: number(3, 8),
          long: number(5, 4),
          inFrom: { distance: number(1, 4), face: "front" },
          shoulderAbove: number(1, 2),
          shoulderBelow: number(1, 4),
          ends: { value: "mitred" },
        },
        mortiseDeeper: number(1, 16),
      },
    ],
    [
      "with: screws\nfrom: a\nscrew: { gauge: 8, length: 1 1/4, head: round }\ncount: 2\nspacing: 4\nin from ends: 1\nside: back\ncounterbore: 1/2\noversized: 5/16",
      {
        from: at("a"),
        fasteners: {
          gauge: { value: 8 },
          length: number(5, 4),
          head: { value: "round" },
          count: number(2),
          spacing: number(4),
          inFromEnds: number(1),
          side: { value: "back" },
          counterbore: number(1, 2),
          oversized: number(5, 16),
        },
      },
    ],
    ["with: dowels\ndowel: { diameter: 3/8, length: 2 }", { fasteners: { diameter: number(3, 8), length: number(2) } }],
    ['with: screws\nscrew: { gauge: "#8" }', { fasteners: { gauge: { value: 8 } } }],
  ])("%s", (lines, expected) => {
    expect(jointWith(lines)).toMatchObject(expected);
  });

  test("a centred tenon is placed by nothing", () => {
    const joint = jointWith("with: mortise and tenon\ntenon: { in from: centred }") as { tenon: object };
    expect(joint.tenon).toEqual({});
  });

  test.each([
    ["with: sticky tape", ["unknown-word"]],
    ["glue: yes", ["missing-key"]],
    ["with: screws\nglue: perhaps", ["unknown-word"]],
    ["with: screws\nscrew: 8", ["wrong-value"]],
    ["with: screws\nmortise: 1/16", ["wrong-value"]],
    ["with: screws\nscrew: { gauge: eight }", ["wrong-value"]],
    ["with: screws\nscrew: { gauge: -8 }", ["wrong-value"]],
    ["with: screws\nscrew: { gauge: 99999999999999999999 }", ["wrong-value"]],
    ["with: screws\nmade of: pine", ["unknown-key"]],
  ])("%s is told: %j", (lines, rules) => {
    expect(rulesOf(planWith({ joints: `- join: a\n  to: b\n${lines.replace(/^/gm, "  ")}` }))).toEqual(rules);
  });
});

test("stock", () => {
  const stock = [
    "ply: { sold as: 3/4 birch plywood, measures: 23/32, between: 11/16 and 3/4, good faces: 1, price: 62.50, sheet: { wide: 48, long: 96 } }",
    "Legs: { wood: cherry, sold as: 8/4, planed to: { thick: 1 1/2, wide: 1 3/4 }, sold in: [8 ft, 10 ft] }",
    "2x4: { sold as: 2x4, measures: { thick: 1 1/2, wide: 3 1/2 }, widths: 5 to 8 }",
  ].join("\n");
  const draft = draftOf(planWith({ stock, piece: "a: { made of: ply }" }));
  expect(meaning(draft.stock)).toMatchObject([
    [
      "ply",
      {
        soldAs: { value: "3/4 birch plywood" },
        measures: { thick: number(23, 32) },
        between: { low: number(11, 16), high: number(3, 4) },
        goodFaces: { value: 1 },
        price: { value: 62.5 },
        sheet: { wide: number(48), long: number(96) },
      },
    ],
    ["legs", { wood: { value: "cherry" }, planedTo: number(3, 2), planedWide: number(7, 4), soldIn: [{}, {}] }],
    ["2x4", { measures: { thick: number(3, 2), wide: number(7, 2) }, widths: { low: number(5), high: number(8) } }],
  ]);
});

describe("the head of a plan", () => {
  test("what is not said is taken as the language says", () => {
    const draft = draftOf(planWith({}));
    expect(draft).toMatchObject({ units: "inch", precision: { value: inches(1, 16) }, kerf: inches(1, 8), joints: [] });
    const metric = draftOf(planWith({ top: "units: mm" }));
    expect(metric).toMatchObject({ units: "mm", precision: { value: millimetres(1) }, kerf: millimetres(16, 5) });
  });
  test("and what is said is kept", () => {
    const top =
      "subtitle: Small\nby: The tool library\nsummary: >\n  Two\n  lines.\nedition: 2\nunits: metric\nprecision: 0.5\nfits: 0.1\nkerf: 2.4\noutside: { width: { value: 60 cm, from: 500, to: 700, ask: 'How wide?' }, depth: 300 }\nsizes: { Side Panel: 3 }";
    const draft = draftOf(planWith({ top }));
    expect(draft).toMatchObject({
      title: { value: "Test" },
      subtitle: { value: "Small" },
      by: { value: "The tool library" },
      summary: { value: "Two lines." },
      edition: { value: "2" },
      units: "mm",
      precision: { value: millimetres(1, 2) },
      fits: { value: millimetres(1, 10) },
      kerf: millimetres(24, 10),
      outside: {
        width: { value: { kind: "measure", value: millimetres(600) }, ask: { value: "How wide?" } },
        depth: { value: { kind: "number" } },
      },
    });
    expect([...draft.sizes.keys()]).toEqual(["side-panel"]);
  });
  test.each([
    ["precision: 1/5", ["precision-step"]],
    ["precision: 1/128", ["precision-step"]],
    ["precision: 0", ["precision-step"]],
    ["precision: -1/16", ["precision-step"]],
    ["precision: width / 100", ["precision-step"]],
    ["precision: 1/64", []],
    ["precision: 1 mm", ["precision-step"]],
    ["kerf: -1/8", ["precision-step"]],
    ["kerf: 0", []],
    ["outside: { width: 3 }\nsizes: { width: 3 }", ["size-and-outside"]],
    ["sizes: { width: 3 }", []],
    ["sizes: { a: { from: 3 } }", ["missing-key"]],
    ["sizes: [3]", ["wrong-value"]],
    ["sizes: { 3a: 3 }", ["unusable-name"]],
    ["choices: { wood: oak }", ["wrong-value"]],
    ["words: american\nphotos: []", ["not-in-this-version", "not-in-this-version"]],
    ["Subtitle: x\nsub-title: y", ["duplicate-key"]],
    ["stcok: {}", ["unknown-key"]],
    ["grain: up", ["unknown-key"]],
  ])("%s: %j", (top, rules) => {
    expect(rulesOf(planWith({ top }))).toEqual(rules);
  });
});

test("what this version does not read is a warning, and the plan is read all the same", () => {
  const { value, findings } = parseText(planWith({ top: "built: { with: oil }" }));
  expect(findings.map(({ severity }) => severity)).toEqual(["warning"]);
  expect(value).toBeDefined();
});

test("a word in the wrong place is sent where it belongs, a misspelt one to the right spelling", () => {
  const [misplaced] = parseText(planWith({ top: "grain: up" })).findings;
  expect(misplaced?.why).toContain("a part");
  const [misspelt] = parseText(planWith({ piece: "a: { made of: pine, grian: up }" })).findings;
  expect(misspelt?.help).toBe("write `grain`");
});

test("independent mistakes are told in one run, in the order of the source, each once", () => {
  const source = planWith({
    top: "units: furlong\nsizes: { a: 3 + , b: 3 inchs }",
    stock: "pine: { wod: pine }",
    piece: "a: { made of: pine, left: 3,5, on: 3 }\nb: { like: a, faces: 3 }",
    joints: "- { join: a, too: b, with: scrws }",
  });
  expect(rulesOf(source)).toEqual([
    ...[
      "unknown-word",
      "measure-not-read",
      "unknown-unit",
      "unknown-key",
      "decimal-comma",
      "wrong-value",
      "unknown-key",
    ],
    ...["unknown-key", "unknown-word"],
  ]);
});
