import { describe, expect, test } from "vitest";
import { solidBox } from "../../../src/geometry/solid.ts";
import type { Vec } from "../../../src/geometry/types.ts";
import { tiltedIn } from "../../../src/render/drawing/step/tilted.ts";
import type { Leg, Step } from "../../../src/solve/build.ts";
import type { Direction } from "../../../src/solve/design.ts";
import { toNumber } from "../../../src/units/index.ts";
import { inch, step } from "./fixture/making.ts";
import { at } from "./fixture.ts";

const INCH = 406_400;
const [IN, OUT, DOWN]: readonly Direction[] = [
  [0, 1, 0],
  [0, -1, 0],
  [0, 0, -1],
];
// A shelf 30 in long and 1 in thick; its middle is 15 in from the left, 5 in back and 0.5 in high.
const shelf = solidBox(at(0, 0, 0), at(30, 10, 1));
const slope = (degrees: number): Leg => ({ about: [[15 * INCH, 5 * INCH, 4.5 * INCH], OUT as Direction], degrees });
const out = (along: Direction = OUT as Direction): Leg => ({ along, distance: null });
const taken = (...actions: Step["actions"]): Step => ({ ...step(1, "Shelves", "piece", {}), actions });
const sizeOf = ({ low, high }: { readonly low: Vec; readonly high: Vec }) =>
  ([0, 1, 2] as const).map((i) => (high[i] - low[i]) / INCH);

describe("a shelf that goes in at a slope", () => {
  const wayIn: readonly Leg[] = [out(IN as Direction), slope(-60), { along: DOWN as Direction, distance: inch(4) }];
  const add = { do: "add", parts: ["shelf"], legs: wayIn } as unknown as Step["actions"][number];

  test("is drawn sloping, where it is before it is levelled and let down", () => {
    const tilted = tiltedIn(taken(add));
    expect(tilted?.parts).toEqual(["shelf"]);
    expect(tilted?.out.map((c) => c + 0)).toEqual(OUT);
    const there = tilted?.slope(shelf);
    if (!there) throw new Error("nothing slopes");
    // At 60° 30 cos 60 + sin 60 wide and 30 sin 60 + cos 60 high; as deep as before.
    const [wide = 0, deep = 0, high = 0] = sizeOf(there);
    expect(wide).toBeCloseTo(15 + Math.sqrt(3) / 2, 3);
    expect(deep).toBeCloseTo(10, 3);
    expect(high).toBeCloseTo(15 * Math.sqrt(3) + 0.5, 3);
    // Its middle is 4 in above its place.
    expect((there.low[2] + there.high[2]) / 2 / INCH).toBeCloseTo(4.5, 3);
    expect(toNumber(inch(1))).toBe(INCH);
  });

  test("is drawn level where what goes straight the same way would stand before it", () => {
    const door = { do: "add", parts: ["door"], legs: [out(IN as Direction)] } as unknown as Step["actions"][number];
    expect(tiltedIn(taken(add, door))).toBeNull();
    const back = { do: "add", parts: ["other"], legs: [out(OUT as Direction)] } as unknown as Step["actions"][number];
    expect(tiltedIn(taken(add, back))?.parts).toEqual(["shelf"]);
  });
});
