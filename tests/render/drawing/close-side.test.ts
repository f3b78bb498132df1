/** Small parts on a large piece: what their screws join, close; and the other half of hardware. */
import { describe, expect, test } from "vitest";
import { picturePoint, viewFrom } from "../../../src/geometry/picture/index.ts";
import { solidBox } from "../../../src/geometry/solid.ts";
import type { Vec } from "../../../src/geometry/types.ts";
import { stepPicture } from "../../../src/render/drawing/index.ts";
import { closeSide } from "../../../src/render/drawing/step/close-side.ts";
import type { OtherSide } from "../../../src/render/drawing/step/other-side.ts";
import type { Scene } from "../../../src/render/drawing/step/scene.ts";
import { solveText, textOf } from "../../examples/compiled.ts";
import { inch } from "./fixture/making.ts";
import { pen } from "./fixture.ts";
import { outside, words } from "./look.ts";

const INCH = 406_400;
const VIEW = viewFrom("the front right and above", [1, -1, 1], [0, 0, 1]);
const board = (mark: string, [x, y, z]: Vec, [l, w, h]: Vec) => ({
  id: mark.toLowerCase(),
  mark,
  solid: solidBox([inch(x), inch(y), inch(z)], [inch(x + l), inch(y + w), inch(z + h)]),
});
/** A strip 14 in long on the inside of a left side 36 in high, two inches above a shelf; screwed on from the right. */
const strip = board("G", [0.75, 0, 20], [0.75, 14, 2]);
const side = board("E", [0, 0, 0], [0.75, 15, 36]);
const shelf = board("C", [0.75, 0, 17.25], [34, 14, 0.75]);
const other = board("F", [34.75, 0, 0], [0.75, 15, 36]);
const screws = [3, 11].map((y) => ({
  ...{ id: `screw ${y}`, mouth: [1.5, y, 21].map((n) => n * INCH) as unknown as Vec, isDowel: false },
  ...{
    head: [2.5, y, 21].map((n) => n * INCH) as unknown as Vec,
    point: [1.6, y, 21].map((n) => n * INCH) as unknown as Vec,
  },
  ...{ direction: [-1, 0, 0] as Vec, rod: INCH / 8, headWidth: INCH / 4 },
}));
const scene: Scene = {
  ...{ items: [strip, side, shelf, other], fresh: new Set(["g"]), hardware: new Map(), open: [], shifts: new Map() },
  ...{ screws, groups: [], goes: new Set<string>(), arms: [], pencil: [] },
};
const alone: OtherSide = {
  ...{ view: VIEW, only: "what the screws join", scene: { ...scene, items: [strip, side] } },
};
const found = (scale: number, text: readonly string[], of = alone) =>
  closeSide(scene, of, { scale: scale / INCH, text, caption: null, pen, width: 270 });

describe("a part that is a speck in the whole", () => {
  test("is drawn close, with what the words measure it from", () => {
    const made = found(2, ["Place it 2 in from the shelf (C), as far from the front of the side (F)."]);
    expect(made?.words).toEqual(["Only what the screws join and C"]);
    expect(made?.scene.items.map(({ mark }) => mark)).toEqual(["G", "E", "C"]);
    // The edge of the shelf from which it is measured is in the picture.
    const [, low] = picturePoint(VIEW, [1.5 * INCH, 0, 18 * INCH]);
    expect(made?.focus.low[1]).toBeLessThanOrEqual(low + 1);
  });

  test("is drawn without what no word speaks of", () => {
    expect(found(2, ["Screw it on."])?.words).toEqual(["Only what the screws join"]);
  });

  test("keeps the whole beside it where it is no speck there, or is not seen close", () => {
    expect(found(9, [])).toBeNull();
    const hidden = { ...alone, scene: { ...alone.scene, items: [strip, side, board("W", [2, -2, 10], [1, 20, 30])] } };
    expect(found(2, [], hidden)).toBeNull();
    expect(found(2, [], { ...alone, only: null })).toBeNull();
  });
});

describe("hardware in two halves", () => {
  const { build } = solveText(textOf("key-cabinet"));
  const step = build?.steps.find(({ title }) => title === "Fit the catch");

  test("has both in the picture: the other one on its door, below", () => {
    if (!build || !step) throw new Error("no catch");
    const made = stepPicture(build, step, { frame: { x: 0, y: 0, width: 270, height: 180 }, pen });
    expect(words(made.items)).toContain("other half");
    expect(words(made.items)).toContain("Its other half, on H");
    expect(outside(made.items, made.frame)).toEqual([]);
    expect(made.within({ height: 180 })).toBeNull();
  });
});
