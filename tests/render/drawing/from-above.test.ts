import { describe, expect, test } from "vitest";
import { solidBox } from "../../../src/geometry/solid.ts";
import { pictureFromAbove } from "../../../src/render/drawing/step/from-above.ts";
import type { Scene } from "../../../src/render/drawing/step/scene.ts";
import { TINT } from "../../../src/render/palette.ts";
import { inch, step } from "./fixture/making.ts";
import { bench, pen } from "./fixture.ts";
import { clashes, outside, paths, pointsOf, words } from "./look.ts";

const frame = { x: 0, y: 0, width: 222, height: 180 };

/** Pieces an inch longer and 1/4 in wider one than the other. */
function picture(kinds: number, height = 236) {
  const items = Array.from({ length: kinds }, (_, i) => ({
    id: `kind ${i}`,
    mark: `A${String.fromCharCode(65 + i)} × ${i + 2}`,
    solid: solidBox([inch(0), inch(0), inch(0)], [inch(10 + i), inch(1 + i / 4), inch(1)]),
  }));
  const scene: Scene = {
    ...{ items, fresh: new Set(items.map(({ id }) => id)), hardware: new Map(), open: [], shifts: new Map() },
    ...{ screws: [], groups: [], goes: new Set(), arms: [], pencil: [] },
  };
  const build = bench();
  const own = step(1, "Saw the rough pieces", "B", { fresh: [], as: "sawn" });
  return { found: pictureFromAbove(build, own, scene, { frame, pen, tall: height }), items };
}

describe("many kinds on the bench", () => {
  test("few stay a picture of boards", () => {
    expect(picture(12).found).toBeNull();
  });

  test.each([13, 20, 26])("%i lie in rows, each with its mark, none on another", (kinds) => {
    const { found, items } = picture(kinds);
    if (found === null) throw new Error("they are drawn from above");
    for (const { mark } of items) expect(words(found.items)).toContain(mark);
    expect(clashes(found.items)).toEqual([]);
    expect(outside(found.items, found.frame)).toEqual([]);
  });

  test("all to one scale, and in a lower frame too", () => {
    const { found } = picture(13);
    const low = found?.within({ height: 190 });
    if (!found || !low) throw new Error("they are drawn from above");
    for (const { items } of [found, low]) {
      const bars = paths(items).filter(({ fill }) => fill === TINT.light);
      const long = bars.map((bar) => {
        const across = pointsOf(bar).map(([x]) => x);
        return Math.max(...across) - Math.min(...across);
      });
      // 22, 21, … 10 in, the longest first.
      const scale = (long[0] ?? 0) / 22;
      expect(long).toHaveLength(13);
      for (const [i, each] of long.entries()) expect(each).toBeCloseTo((22 - i) * scale, 6);
    }
    expect(outside(low.items, { ...frame, height: 190 })).toEqual([]);
    // 22 in drawn to less than 48 points would be a speck beside its mark.
    expect(found.within({ height: 90 })).toBeNull();
  });
});
