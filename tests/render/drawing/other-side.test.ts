import { describe, expect, test } from "vitest";
import { ISOMETRIC } from "../../../src/geometry/picture/index.ts";
import { solidBox } from "../../../src/geometry/solid.ts";
import type { Vec } from "../../../src/geometry/types.ts";
import { stepPicture } from "../../../src/render/drawing/index.ts";
import { inLines } from "../../../src/render/drawing/step/captions.ts";
import { otherSide } from "../../../src/render/drawing/step/other-side.ts";
import type { Scene } from "../../../src/render/drawing/step/scene.ts";
import { wordsOfTwo } from "../../../src/render/drawing/step/two.ts";
import type { Build, Fastener } from "../../../src/solve/build.ts";
import { type Length, toNumber } from "../../../src/units/index.ts";
import { solveText, textOf } from "../../examples/compiled.ts";
import { inch } from "./fixture/making.ts";
import { pen } from "./fixture.ts";
import { outside, paths, words } from "./look.ts";

const UP: Vec = [0, 0, 1];
const INCH = 406_400;
const at = (x: number, y: number, z: number): Vec => [x * INCH, y * INCH, z * INCH];
const board = (id: string, [x, y, z]: Vec, [l, w, h]: Vec) => ({
  id,
  mark: id.toUpperCase(),
  solid: solidBox([inch(x), inch(y), inch(z)], [inch(x + l), inch(y + w), inch(z + h)]),
});

/** A rail before a back, screwed on through the back, between sides; `others` stand round it. */
function scene(others: readonly ReturnType<typeof board>[]) {
  const rail = board("rail", [1, 9, 10], [18, 1, 2]);
  const back = board("back", [1, 10, 0], [18, 1, 20]);
  const screws = [4, 16].map((x) => ({
    ...{ id: `screw ${x}`, mouth: at(x, 11, 11), head: at(x, 12, 11), point: at(x, 11.2, 11) },
    ...{ direction: [0, -1, 0] as Vec, rod: INCH / 8, headWidth: INCH / 4, isDowel: false },
  }));
  const fasteners = screws.map(({ id }) => ({ id, through: ["back"], into: "rail" }));
  return {
    build: { fasteners: fasteners as unknown as readonly Fastener[], hardware: [], joints: [] } as unknown as Build,
    scene: {
      ...{ items: [rail, back, ...others], fresh: new Set(["rail"]), hardware: new Map(), open: [], shifts: new Map() },
      ...{ screws, groups: [], goes: new Set<string>(), arms: [], pencil: [] },
    } satisfies Scene,
  };
}

describe("what holds a part, where the picture of the part hides it", () => {
  test("is seen from the other side, with all that is there", () => {
    const { build, scene: own } = scene([]);
    const other = otherSide(build, own, ISOMETRIC, UP);
    expect(other?.view.towards[1]).toBeGreaterThan(0);
    expect(other?.only).toBeNull();
    expect(other?.scene.items).toHaveLength(2);
  });

  test("stands alone with what it holds, where something hides it from every side", () => {
    const { build, scene: own } = scene([board("case", [-10, 30, -40], [60, 1, 100])]);
    const other = otherSide(build, own, ISOMETRIC, UP);
    expect(other?.only).toBe("what the screws join");
    expect(other?.scene.items.map(({ id }) => id)).toEqual(["rail", "back"]);
  });

  test("is not drawn again where it is seen", () => {
    const { build, scene: own } = scene([]);
    const facing = own.screws.map((screw) => ({
      ...screw,
      direction: [0, 1, 0] as Vec,
      mouth: at(4, 9, 11),
      head: at(4, 8, 11),
    }));
    expect(otherSide(build, { ...own, screws: facing }, ISOMETRIC, UP)).toBeNull();
    expect(otherSide(build, { ...own, screws: [] }, ISOMETRIC, UP)).toBeNull();
  });
});

describe("what a drawer runs on", () => {
  const side = board("side", [20, 0, 0], [1, 20, 20]);
  const slides = [4, 12].map((z) => board(`slide ${z}`, [19.5, -1, z], [0.5, 14, 2]));
  const drawers = [3, 11].map((z) => board(`drawer ${z}`, [1, -0.5, z], [18, 18, 6]));
  const other = board("other", [0, 0, 0], [1, 20, 20]);
  const own = {
    ...{ items: [...drawers, ...slides, side, other], fresh: new Set([...drawers, ...slides].map(({ id }) => id)) },
    ...{ hardware: new Map(slides.map(({ id }) => [id, id])), open: [], shifts: new Map(), screws: [], groups: [] },
    ...{ goes: new Set<string>(), arms: [], pencil: [] },
  } satisfies Scene;
  const build = (kind: string) =>
    ({
      fasteners: [],
      joints: [{ id: "runs", kind }],
      hardware: slides.map(({ id }) => ({ id, joint: "runs", carriedBy: "side", at: [19.5, -1, 4].map(inch) })),
      parts: [{ id: "side", body: { low: [20, 0, 0].map(inch), high: [21, 20, 20].map(inch) } }],
      motions: [{ kind: "slide", poses: [{ shift: [0, -INCH, 0] }] }],
    }) as unknown as Build;

  test("is drawn on its part alone, where the drawers hide it", () => {
    const found = otherSide(build("running"), own, ISOMETRIC, UP);
    expect(found?.only).toBe("SIDE and what runs on it");
    expect(found?.scene.items.map(({ id }) => id)).toEqual(["slide 4", "slide 12", "side"]);
    // Its inner face looks to the left.
    expect(found?.view.towards[0]).toBeLessThan(0);
  });

  test("tells how far its front end stands past the edge, or behind it", () => {
    const found = otherSide(build("running"), own, ISOMETRIC, UP);
    if (found === null) throw new Error("the drawers hide it");
    const say = (length: Length): string => `${toNumber(length) / INCH} in`;
    const words = (past: number) =>
      wordsOfTwo(ISOMETRIC, { ...found, past: inch(past) }, { ceiling: UP, say })[1]?.at(-1);
    expect(found.past && toNumber(found.past)).toBe(INCH);
    expect(words(1)).toBe("Only SIDE and what runs on it, its front end 1 in past the edge");
    expect(words(-2)).toBe("Only SIDE and what runs on it, its front end 2 in behind the edge");
  });

  test("is not drawn again where it is seen, where it only goes in again, and where nothing runs", () => {
    const seen = { ...own, items: own.items.filter(({ id }) => !id.startsWith("drawer") && id !== "side") };
    expect(otherSide(build("running"), seen, ISOMETRIC, UP)).toBeNull();
    expect(otherSide(build("running"), { ...own, goes: new Set(["drawer 3"]) }, ISOMETRIC, UP)).toBeNull();
    expect(otherSide(build("hinged"), own, ISOMETRIC, UP)).toBeNull();
  });
});

describe("two pictures of a step", () => {
  const { build } = solveText(textOf("key-cabinet"));
  if (build === undefined) throw new Error("the key cabinet compiles");
  const step = build.steps.find(({ title }) => title.startsWith("Glue in three key rails"));
  if (step === undefined) throw new Error("the key cabinet has key rails");
  const frame = { x: 0, y: 0, width: 222, height: 180 };

  test("the second shows every brad that the first hides, and both say from where they are seen", () => {
    const found = stepPicture(build, step, { frame, pen, tall: 236 });
    const crosses = paths(found.items).filter(({ stroke, fill }) => stroke?.width === 0.6 && !fill);
    expect(step.shows.fasteners).toHaveLength(12);
    expect(crosses).toHaveLength(12);
    expect(found.frame.height).toBe(236);
    const said = words(found.items).join(" ");
    expect(said).toContain("Seen from the front right and above");
    expect(said).toContain("Seen from the back right and above");
    expect(found.alt).toContain("second picture");
    expect(outside(found.items, found.frame)).toEqual([]);
  });

  test("stand in a wide frame too, in none too low", () => {
    const found = stepPicture(build, step, { frame, pen, tall: 236 });
    const wide = found.within({ width: 468, height: 200 });
    expect(wide && outside(wide.items, { ...frame, width: 468, height: 200 })).toEqual([]);
    expect(found.within({ height: 120 })).toBeNull();
    // So that a page with room for it knows that they get larger.
    expect(found.two).toBe(found.take?.scale);
    expect(wide?.size).toBeGreaterThan(1.15 * (found.two ?? 0));
  });

  test("words below them are broken where they are too long, one word never", () => {
    const narrow = pen.measure("Seen from the", "regular", 10) + 1;
    expect(inLines("Seen from the back", narrow, pen)).toEqual(["Seen from the", "back"]);
    expect(inLines("Overlong", 1, pen)).toEqual(["Overlong"]);
  });
});
