import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { solve } from "../../../src/compile.ts";
import { exactBounds, volume } from "../../../src/geometry/index.ts";
import { swapHands } from "../../../src/solve/design/hands.ts";
import { mirrorDesign } from "../../../src/solve/design/mirrored.ts";
import type { Design, Part } from "../../../src/solve/design.ts";
import { toNumber } from "../../../src/units/rational.ts";
import { auditOf, SMALL_EXAMPLES, said, textOf } from "../../examples/compiled.ts";

const folder = new URL("../design/plans/", import.meta.url);
/** Some of the examples, and every sixth of the small plans: all would take a minute. */
const PLANS: readonly (readonly [string, string])[] = [
  ...SMALL_EXAMPLES.map((name) => [name, textOf(name)] as const),
  ...readdirSync(folder)
    .sort()
    .filter((_, i) => i % 6 === 0)
    .map((name) => [name, readFileSync(new URL(name, folder), "utf8")] as const),
];

const HAND = "  hand: { options: [as drawn, mirrored], mirror: mirrored }";

/** The plan with a choice of hand; nothing else in it says anything of it. */
const handed = (text: string): string =>
  /^choices:$/m.test(text)
    ? text.replace(/^choices:$/m, `choices:\n${HAND}`)
    : text.replace(/^stock:/m, `choices:\n${HAND}\nstock:`);

const build = (text: string, hand: string) =>
  solve(
    { name: "plan.yaml", bytes: new TextEncoder().encode(text) },
    { sizes: new Map(), choose: new Map([["hand", hand]]) },
  );

/** The extents of all parts across the piece. */
function across(design: Design): readonly [number, number] {
  const bounds = design.parts.map((part) => exactBounds(part.solid));
  return [
    Math.min(...bounds.map(({ low }) => toNumber(low[0]))),
    Math.max(...bounds.map(({ high }) => toNumber(high[0]))),
  ];
}

describe.each(PLANS)("%s, mirrored", (_, text) => {
  const source = handed(text);
  const plain = build(source, "as drawn");
  const other = build(source, "mirrored");

  test("is found as right as it was", () => {
    expect(plain.value).toBeDefined();
    expect(said(other.findings).map((line) => line.split(":")[1])).toEqual(
      said(plain.findings).map((line) => line.split(":")[1]),
    );
  });

  test("keeps the promises of its record", () => {
    expect(other.value && auditOf(source, other.value)).toEqual([]);
  });

  test("has every part where a mirror in the middle shows it", () => {
    const [before, after] = [plain.value?.design as Design, other.value?.design as Design];
    const [low, high] = across(before);
    expect(across(after)).toEqual([low, high]);
    const byId = new Map(after.parts.map((part) => [part.id, part]));
    for (const part of before.parts) {
      const image = byId.get(swapHands(part.id)) as Part;
      expect(volume(image.solid)).toEqual(volume(part.solid));
      const [a, b] = [part.solid, image.solid];
      expect(b.low[0]).toBeCloseTo(low + high - a.high[0], 3);
      expect(b.high[0]).toBeCloseTo(low + high - a.low[0], 3);
      for (const axis of [1, 2] as const) expect([b.low[axis], b.high[axis]]).toEqual([a.low[axis], a.high[axis]]);
    }
  });

  test("needs the same wood, screws and holes", () => {
    const count = (each: typeof plain) => [
      each.value?.cutList.map(({ parts }) => parts.length).reduce((a, b) => a + b, 0),
      each.value?.fasteners.length,
      each.value?.holes.length,
    ];
    expect(count(other)).toEqual(count(plain));
  });

  test("is itself again when it is mirrored twice", () => {
    const design = plain.value?.design as Design;
    const twice = mirrorDesign(mirrorDesign(design));
    const told = ({ parts, joints, groups }: Design) => [
      groups,
      parts.map(({ solid: _, turned: __, ...part }) => part),
      joints.map(({ contact: _, arrangements: __, ...joint }) => joint),
    ];
    expect(told(twice)).toEqual(told(design));
  });
});

test("words for the hands change in names and sentences, and nothing else does", () => {
  expect(swapHands("front-left-leg.2")).toBe("front-right-leg.2");
  expect(swapHands("Left leg, RIGHT side")).toBe("Right leg, LEFT side");
  expect(swapHands("leftover, bright, upright, right-angle block")).toBe(
    "leftover, bright, upright, right-angle block",
  );
});
