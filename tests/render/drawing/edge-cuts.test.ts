/** Pictures of steps that only take off edges, or band them. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { dot } from "../../../src/geometry/vec.ts";
import { stepPicture } from "../../../src/render/drawing/index.ts";
import { sceneOf } from "../../../src/render/drawing/step/scene.ts";
import { METAL } from "../../../src/render/palette.ts";
import { built, said, solveText } from "../../examples/compiled.ts";
import { plain, stepWith } from "../../solve/told/examples.ts";
import { pen } from "./fixture.ts";
import { outside, paths, words } from "./look.ts";

const frame = { x: 0, y: 0, width: 255, height: 180 };

test("the edge that is taken off lies where it is seen, and a corner of it is drawn larger", () => {
  const { build, findings } = solveText(
    readFileSync(new URL("../../solve/design/plans/coat-rail.yaml", import.meta.url), "utf8"),
  );
  if (!build) throw new Error(said(findings).join("\n"));
  const shape = stepWith(build, /^Shape the rail/u);
  const { done = [], items } = sceneOf(build, shape);
  const [rail] = done;
  const solid = items.find(({ id }) => id === rail?.id)?.solid;
  if (!rail || !solid) throw new Error("the rail lies on the bench");
  // From above, the front right: each of the edges lies on top, in front, or at the right.
  const middle = solid.low.map((low, i) => (low + (solid.high[i] as number)) / 2);
  const seen = rail.edges.filter(({ from, to }) => {
    const off = from.map((c, i) => (c + (to[i] as number)) / 2 - (middle[i] as number)) as [number, number, number];
    return dot(off, [0, -1, 0]) > 0 && dot(off, [0, 0, 1]) > 0;
  });
  // Of 5 mm a chamfer has two long edges.
  expect(seen.length).toBeGreaterThanOrEqual(2);
  const picture = stepPicture(build, shape, { frame, pen });
  expect(words(picture.items).some((word) => /^Detail, \d+ × as large$/u.test(plain(word)))).toBe(true);
  expect(words(picture.items)).toContain(rail.says);
  expect(outside(picture.items, frame)).toEqual([]);
});

test("edges that are banded have a tone of their own", () => {
  const build = built("key-cabinet");
  const band = stepWith(build, /^Band the edges/u);
  const { items } = stepPicture(build, band, { frame, pen });
  const inks: readonly unknown[] = Object.values(METAL);
  // The front of two sides, bottom and top.
  expect(paths(items).filter(({ fill }) => inks.includes(fill)).length).toBeGreaterThanOrEqual(1);
  expect(words(items)).toContain("What is banded is tinted");
  const before = stepWith(build, /^Cut the parts from .*3\/4 birch/u);
  expect(paths(stepPicture(build, before, { frame, pen }).items).filter(({ fill }) => inks.includes(fill))).toEqual([]);
});
