import { describe, expect, it } from "vitest";
import { solidBox, subtractBox, volume } from "../../src/geometry/index.ts";
import { partAfter, workIn } from "../../src/solve/build/part-after.ts";
import type { BuiltPart, Step } from "../../src/solve/build.ts";
import type { Feature } from "../../src/solve/design.ts";
import { toNumber } from "../../src/units/index.ts";
import { built } from "../examples/compiled.ts";
import { at, inch, part, step } from "../render/drawing/fixture/making.ts";

const CUBIC_INCH = 406_400 ** 3;
const volumeOf = ({ solid }: BuiltPart): number => toNumber(volume(solid)) / CUBIC_INCH;

describe("a part while it is worked on", () => {
  // A board of 1 × 4 × 20 in between shoulders with a tenon of 1/2 × 3 × 1 in, a groove of 1/4 × 1/4 in over its length,
  // and an end that is cut off at 45° over its thickness.
  const groove: Feature = {
    ...{ kind: "groove", for: null, origin: at(0, 0, 1), along: [1, 0, 0], across: [0, 0, 1], into: [0, 1, 0] },
    size: [inch(20), inch(0.25), inch(0.25)],
  };
  const tenon: Feature = {
    ...{ kind: "tenon", for: "j1", origin: at(20, 0.25, 0.5), along: [0, 0, 1], across: [0, 1, 0], into: [1, 0, 0] },
    size: [inch(3), inch(0.5), inch(1)],
  };
  const notch: Feature = {
    ...{ kind: "notch", for: null, origin: at(0, 0, 0), along: [1, 0, 0], across: [0, 1, 0], into: [0, 0, 1] },
    size: [inch(2), inch(1), inch(2)],
  };
  const plain = part("board", "A", "Board", "oak", {
    body: [0, 0, 0, 20, 1, 4],
    more: [[20, 0.25, 0.5, 21, 0.75, 3.5]],
  });
  const cuts = [
    [at(0, 0, 1), at(20, 0.25, 1.25)],
    [at(0, 0, 0), at(2, 1, 2)],
  ] as const;
  const solid = cuts.reduce((so, [low, high]) => subtractBox(so, low, high), plain.solid);
  const board: BuiltPart = { ...plain, solid, features: [groove, tenon, notch] };
  const machined = (number: number, features: readonly number[], holes: readonly number[] = []): Step => ({
    ...step(number, "Cut", "A", {}),
    actions: [{ do: "machine", part: "board", features, holes }],
  });
  const steps = [step(1, "Saw", "A", {}), machined(2, [1]), machined(3, [0]), machined(4, [2], [0])];
  const build = { steps, holes: [] };

  it("is as the saw leaves it before the first cut: 21 × 1 × 4", () => {
    expect(volumeOf(partAfter(build, board, 1))).toBeCloseTo(84, 9);
    expect(partAfter(build, board, 1).features).toEqual([]);
  });
  it("has its tenon, then its groove, and at last its notch", () => {
    // 80 + 1.5; less 20 · 1/16; less 2 · 1 · 2 but for the 2 · 1/16 that the groove took.
    expect(volumeOf(partAfter(build, board, 2))).toBeCloseTo(81.5, 9);
    expect(volumeOf(partAfter(build, board, 3))).toBeCloseTo(80.25, 9);
    expect(volumeOf(partAfter(build, board, 4))).toBeCloseTo(76.375, 9);
    expect(partAfter(build, board, 4)).toBe(board);
  });
  it("tells what a step makes", () => {
    expect([...workIn(build, "board", 3, 3).features]).toEqual([0]);
    expect([...workIn(build, "board", 2, 4).features].sort()).toEqual([0, 1, 2]);
    expect(workIn(build, "other", 1, 9).features.size).toBe(0);
  });
  it("is a box of wood where a slope will be", () => {
    const taper: Feature = { kind: "taper", for: null, origin: at(0, 1, 0), normal: [0, 1, 0] };
    const whole: BuiltPart = {
      ...plain,
      body: plain.body,
      solid: solidBox(at(0, 0, 0), at(20, 0.5, 4)),
      features: [taper],
    };
    const short = { ...whole, features: [{ ...taper, origin: at(0, 0.5, 0) }] };
    expect(volumeOf(partAfter({ steps: [machined(2, [0])], holes: [] }, short, 1))).toBeCloseTo(80, 9);
  });
});

describe("parts of a frame with keyed mitres, loose", () => {
  const build = built("old-plans/medicine-cabinet");
  const line = build.cutList.find(({ parts }) => parts.includes("door.left-stile"));
  const stile = build.parts.find(({ id }) => id === "door.left-stile") as BuiltPart;
  const keyed = (build.steps.find((step) =>
    step.actions.some(
      (action) =>
        action.do === "machine" &&
        action.part === stile.id &&
        action.features.some((i) => stile.features[i]?.kind === "slot"),
    ),
  )?.number ?? 0) as number;

  it("have no slots before the corner is glued", () => {
    const loose = partAfter(build, stile, keyed - 1);
    expect(loose.features.some(({ kind }) => kind === "slot")).toBe(false);
    // At each end half of a key's triangle with legs of 2 in, 1/8 in thick: the mitre halves it, so that 2 · 1/2 in² · 1/8 in come back.
    // Where the groove for the panel, 3/8 in deep from the inner edge, ends below the slot nothing of it was there.
    expect(volumeOf(loose) - volumeOf(stile)).toBeCloseTo(2 * 1 * 0.125, 6);
    expect(volumeOf(partAfter(build, stile, keyed))).toBeCloseTo(volumeOf(stile), 9);
  });
  it("have none in the cut list", () => {
    expect(line?.notes.join()).toContain("2 mitres");
    expect(line?.notes.join()).not.toContain("slot");
  });
});
