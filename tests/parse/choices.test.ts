import { describe, expect, test } from "vitest";
import { andThen } from "../../src/findings/outcome.ts";
import type { Draft } from "../../src/parse/draft.ts";
import { draftOf, readTree } from "../../src/parse/index.ts";

const PLAN = `plan: 1
title: Shelf with a back
choices:
  wood: { ask: Which wood?, options: { Oak: Oiled oak, painted: Painted, pine: Bare pine } }
  back: { options: [none, Thin Panel], default: none }
stock:
  board: { sold as: 1x8, wood: { by: wood, oak: white oak, painted: poplar, pine: pine } }
piece:
  shelf: { made of: board }
`;

const under = (text: string, choose: Readonly<Record<string, string>> = {}) =>
  andThen(readTree({ name: "plan.yaml", bytes: new TextEncoder().encode(text) }), (tree) =>
    draftOf(tree, { choose: new Map(Object.entries(choose)) }),
  );
/** The names of the parts that are left. */
const parts = (when: string, choose: Readonly<Record<string, string>>): readonly string[] => {
  const { value, findings } = under(`${PLAN}  panel: { made of: board, when: ${when} }\n`, choose);
  expect(findings).toEqual([]);
  return (value as Draft).piece.map(({ path }) => path.join("."));
};
const told = (text: string, choose: Readonly<Record<string, string>> = {}) =>
  under(text, choose).findings.map(({ at, rule, message, help }) => `${at.line} ${rule}: ${message}; ${help}`);

test("choices carry their words, and the first option where none is named", () => {
  const { value } = under(PLAN);
  expect(value?.choices).toMatchObject([
    {
      name: "wood",
      ask: { value: "Which wood?" },
      default: "oak",
      options: [{ name: "oak", words: "Oiled oak" }, {}, {}],
    },
    { name: "back", default: "none", options: [{ words: "none" }, { name: "thin-panel", words: "Thin Panel" }] },
  ]);
  expect([...(value?.chosen ?? [])]).toEqual([
    ["wood", "oak"],
    ["back", "none"],
  ]);
});

test.each([
  [{}, "white oak"],
  [{ wood: "painted" }, "poplar"],
  [{ Wood: "PINE" }, "pine"],
])("%j takes its value from by", (choose, wood) => {
  expect(under(PLAN, choose).value?.stock.get("board")?.wood?.value).toBe(wood);
});

describe("when", () => {
  test.each([
    ["wood is painted", { wood: "painted" }, true],
    ["wood is painted", { wood: "oak" }, false],
    ["wood is not painted", { wood: "painted" }, false],
    ["wood is not painted", { wood: "pine" }, true],
    ["back is thin panel", { back: "thin panel" }, true],
    ["wood is oak and back is none", {}, true],
    ["wood is oak and back is not none", {}, false],
    ["wood is pine or wood is painted", { wood: "painted" }, true],
    ["wood is pine or wood is painted", {}, false],
    // "and" binds more closely than "or".
    ["wood is oak or wood is pine and back is thin panel", {}, true],
    ["wood is pine and back is thin panel or wood is painted", { wood: "pine" }, false],
  ] as const)("%s, %j: %s", (when, choose, stays) => {
    expect(parts(when, choose)).toEqual(stays ? ["shelf", "panel"] : ["shelf"]);
  });
});

describe("names that are not there come with the nearest that is", () => {
  const panel = (settings: string) => `${PLAN}  panel: { made of: board, ${settings} }\n`;
  test.each([
    [panel("when: wod is oak"), {}, "10 choice-unknown: the plan has no choice called `wod`; write `wood`"],
    [panel("when: wood is paintd"), {}, "10 choice-unknown: `wood` has no option called `paintd`; write `painted`"],
    [
      PLAN.replace("pine: pine }", "pin: pine }"),
      {},
      "7 choice-unknown: `wood` has no option called `pin`; write `pine`",
    ],
    [
      PLAN.replace("default: none", "default: nune"),
      {},
      "5 choice-unknown: `back` has no option called `nune`; write `none`",
    ],
    [PLAN, { wood: "oka" }, "1 choice-unknown: `wood` has no option called `oka`; write `oak`"],
    [PLAN, { bakc: "none" }, "1 choice-unknown: the plan has no choice called `bakc`; write `back`"],
  ])("%#", (text, choose, message) => {
    expect(told(text, choose)).toEqual([message]);
  });
  test("an option without a value", () => {
    expect(told(PLAN.replace(", pine: pine }", " }"), { wood: "pine" })[0]).toContain(
      "7 choice-without-value: nothing is said here for `wood` when it is pine",
    );
  });
  test("more options than the limit", () => {
    const many = Array.from({ length: 21 }, (_, i) => `o${i}`).join(", ");
    expect(told(PLAN.replace("[none, Thin Panel], default: none", `[${many}]`))[0]).toContain(
      "5 too-much: the limit is 20 options of one choice, and here are 21 or more",
    );
  });
});
