import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { compile, expandSource, solve } from "../../../src/compile.ts";
import { printedSource, printJson, printShort, printTerminal } from "../../../src/findings/print/index.ts";
import type { ChoiceDraft } from "../../../src/parse/draft.ts";
import { strictRecordSchema } from "../../../src/render/write/record-schema.ts";
import { combinationsOf } from "../../../src/solve/options/combinations.ts";
import { conditionOf } from "../../../src/solve/options/condition.ts";
import { auditOf, recordOf } from "../../examples/compiled.ts";

const STEP = `plan: 1
title: Step for the tool shelves
units: inch
sizes:
  long: { by: size, short: 24, middling: 30, wide: 60 }
  high: { by: top, low: 12, tall: 14 }
choices:
  size: { options: [short, middling, wide] }
  top: { ask: How high?, options: { low: For children, tall: For grown-ups } }
outside: { width: long, depth: 3 1/2, height: high }
stock:
  lumber: { sold as: 2x4, wood: spruce }
piece:
  tread: { made of: lumber, as: lying flat, left: 0, right: long, front: 0, top: high }
  left-leg: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, under: tread }
  right-leg: { like: left-leg, right: long }
joints:
  - { join: tread, to: [left-leg, right-leg], with: screws }
`;
const source = (text: string) => ({ name: "step.yaml", bytes: new TextEncoder().encode(text) });
const solved = (text: string, choose: Readonly<Record<string, string>> = {}) =>
  solve(source(text), { sizes: new Map(), choose: new Map(Object.entries(choose)) });
const told = (text: string, choose: Readonly<Record<string, string>> = {}) =>
  solved(text, choose).findings.map(({ rule, when }) => [rule, when && Object.fromEntries(when)]);

describe("findings under other options", () => {
  test("a plan that is right under all of them has none", () => {
    expect(told(STEP)).toEqual([]);
    expect(told(STEP, { size: "wide", top: "tall" })).toEqual([]);
  });
  const fixed = STEP.replace("width: long", "width: 24");
  test("what is wrong under some options says under which, once", () => {
    expect(told(fixed)).toEqual([["outside-missed", { size: "middling or wide" }]]);
    expect(told(fixed, { top: "tall" })).toEqual([["outside-missed", { size: "middling or wide" }]]);
  });
  test("what is wrong under the options asked for is told as ever", () => {
    expect(told(fixed, { size: "wide" })).toEqual([["outside-missed", undefined]]);
  });
  test("what takes two options says both", () => {
    const both = STEP.replace(
      "high }\n  left-leg",
      "high, carries: { by: size, short: nothing, middling: nothing, wide: 4000 lb } }\n  left-leg",
    );
    const heavy = both.replace("wide: 4000 lb", "wide: { by: top, low: nothing, tall: 4000 lb }");
    expect(told(both)).toEqual([["shelf-sags", { size: "wide" }]]);
    expect(told(heavy)).toEqual([["shelf-sags", { size: "wide", top: "tall" }]]);
  });
  test("an error under any option is an error of the plan", () => {
    const broken = STEP.replace(
      "with: screws }",
      "with: screws }\n  - { when: top is tall, join: left-leg, to: right-leg, with: screws }",
    );
    const { value, findings } = solved(broken);
    expect(value).toBeUndefined();
    expect(findings.map(({ rule, severity, when }) => [rule, severity, when])).toEqual([
      ["joint-does-not-touch", "error", new Map([["top", "tall"]])],
    ]);
  });
  test("what is accepted under one option is not called useless under another", () => {
    const accepting = STEP.replace(
      "high }\n  left-leg",
      "high, carries: { by: size, short: nothing, middling: nothing, wide: 4000 lb } }\n  left-leg",
    ).replace("joints:", 'allow:\n  - { finding: shelf-sags, of: tread, because: "It is only a model." }\njoints:');
    expect(told(accepting)).toEqual([]);
    expect(told(accepting.replace("wide: 4000 lb", "wide: nothing")).map(([rule]) => rule)).toEqual([
      "nothing-to-accept",
    ]);
  });
  test("every form of printing says it", () => {
    const { findings } = solved(fixed);
    expect(printTerminal(findings, printedSource("step.yaml", fixed))).toContain(
      "\n  only when size is middling or wide.\n",
    );
    expect(printShort(findings, "step.yaml")).toContain(
      "of the outside, when size is middling or wide [outside-missed]",
    );
    expect(JSON.parse(printJson(findings, "step.yaml")).findings[0].when).toEqual({ size: "middling or wide" });
  });
});

test("a choice that nothing depends on is told", () => {
  const idle = STEP.replace("  top: { ask", "  wood: { options: [oak, pine] }\n  top: { ask");
  expect(told(idle)).toEqual([["choice-changes-nothing", undefined]]);
  const alike = idle.replace("wood: spruce", "wood: { by: wood, oak: spruce, pine: spruce }");
  expect(told(alike)).toEqual([["choice-changes-nothing", undefined]]);
  // It matters under one option of another choice only.
  const sometimes = idle.replace(
    "wood: spruce",
    "wood: { by: size, short: spruce, middling: spruce, wide: { by: wood, oak: spruce, pine: pine } }",
  );
  expect(told(sometimes)).toEqual([]);
});

test("what was chosen is in the record and on the pages", async () => {
  const one = solved(STEP, { top: "tall" });
  const record = JSON.parse(recordOf(STEP, one.value as NonNullable<typeof one.value>));
  expect(record.source.choices).toEqual({ size: "short", top: "tall" });
  expect(record.source.sizes.height).toBeCloseTo(14 * 25.4, 6);
  const { value } = await compile(one, { date: "1970-01-01", version: "0" });
  const text = JSON.stringify(value?.pages).replaceAll(/[“”]/g, "");
  expect(text).toContain("Chosen for this copy: short (size); For grown-ups (top).");
  expect(text).toContain("If you had chosen otherwise");
});

test("the record has the findings of other options, with those options", () => {
  const text = STEP.replace("width: long", "width: 24");
  const { value, findings } = solved(text);
  const build = { ...(value as NonNullable<typeof value>), findings };
  const record = JSON.parse(recordOf(text, build));
  expect(record.findings).toMatchObject([{ rule: "outside-missed", when: { size: "middling or wide" } }]);
  const valid = new Ajv2020({ strict: false }).compile(strictRecordSchema);
  expect(valid(record), JSON.stringify(valid.errors)).toBe(true);
  expect(auditOf(text, build)).toEqual([]);
});

test("expand prints the plan with its choices made", () => {
  const { value = "" } = expandSource(source(STEP), new Map([["size", "wide"]]));
  expect(value).not.toMatch(/choices|by:|when:/);
  expect(value).toMatch(/long: 60/);
  expect(value).toMatch(/high: 12/);
  expect(solved(value).findings).toEqual([]);
});

const choicesOf = (...counts: readonly number[]): readonly ChoiceDraft[] =>
  counts.map((count, c) => ({
    name: `c${c}`,
    at: { start: 0, end: 0, line: 1, column: 1 },
    options: Array.from({ length: count }, (_, o) => ({ name: `o${o}`, words: "" })),
    default: "o0",
  }));

describe("combinations", () => {
  test.each([
    [[2, 3], 6],
    [[4, 4, 4], 64],
    [[65], 65],
  ])("%j: all %i", (counts, all) => {
    const found = combinationsOf(choicesOf(...counts));
    expect(found.complete).toBe(true);
    expect(new Set(found.all.map((each) => [...each].join())).size).toBe(all);
  });
  // Any covering of pairs needs at least the product of the two largest numbers of options.
  test.each([[[5, 13]], [[2, 2, 2, 2, 2, 2, 2]], [[3, 4, 5, 6]], [[1, 10, 10]], [[20, 20, 20]]])(
    "%j: any two options of two choices meet",
    (counts) => {
      const choices = choicesOf(...counts);
      const { all, complete } = combinationsOf(choices);
      expect(complete).toBe(false);
      for (const [a, first] of choices.entries())
        for (const second of choices.slice(a + 1))
          for (const i of first.options)
            for (const j of second.options)
              expect(all.some((each) => each.get(first.name) === i.name && each.get(second.name) === j.name)).toBe(
                true,
              );
      const [most = 1, next = 1] = [...counts].sort((x, y) => y - x);
      expect(all.length).toBeGreaterThanOrEqual(most * next);
      expect(all.length).toBeLessThanOrEqual(3 * most * next);
    },
  );
});

test("a condition that needs three options is told in full", () => {
  const choices = choicesOf(2, 2, 2);
  const { all } = combinationsOf(choices);
  const only = all.filter((each) => [...each.values()].every((option) => option === "o1"));
  expect(conditionOf(new Set(only), all, choices)).toEqual(
    new Map([
      ["c0", "o1"],
      ["c1", "o1"],
      ["c2", "o1"],
    ]),
  );
});
