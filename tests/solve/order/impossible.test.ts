/** Pieces that nobody can build, and what is said of them. */
import { expect, test } from "vitest";
import { solveText } from "../../examples/compiled.ts";

const errors = (text: string) => solveText(text).findings.filter(({ severity }) => severity === "error");

test("a screw deep inside a closed box: the panels of a narrow tube are held by cleats inside only", () => {
  const found = errors(`plan: 1
title: Closed tube
units: inch
stock:
  ply: { sold as: 3/4 birch plywood, measures: 3/4 }
  stick: { wood: spruce, sold as: 2x2 }
piece:
  base: { made of: ply, as: lying flat, grain: across, left: 0, right: 24, front: 0, back: 6, bottom: 0 }
  roof: { like: base, bottom: 5 1/4 }
  fore: { made of: ply, as: on edge, facing: front, left: 0, right: 24, front: 0, between: [base, roof] }
  rear: { like: fore, back: 6, between: [base, roof] }
  cleat-a: { made of: stick, facing: front, as: on edge, left: 1, right: 23, front: 3/4, on: base }
  cleat-b: { like: cleat-a, back: 5 1/4, on: base }
  cleat-c: { like: cleat-a, front: 3/4, under: roof }
  cleat-d: { like: cleat-a, back: 5 1/4, under: roof }
joints:
  - { join: cleat-a, to: [base, fore], with: screws }
  - { join: cleat-b, to: [base, rear], with: screws }
  - { join: cleat-c, to: [roof, fore], with: screws }
  - { join: cleat-d, to: [roof, rear], with: screws }
`);
  expect(found.map(({ rule }) => rule)).toEqual(["no-possible-order"]);
  expect(found[0]?.message).toMatch(
    /^no tool reaches the wood screw .* between `cleat-c` and `roof`: .*`cleat-a` are in the way$/,
  );
});

test("a shelf tenoned between two sides that a wish joins first", () => {
  const found = errors(`plan: 1
title: Shelf let in on all sides
units: inch
stock:
  ply: { sold as: 3/4 birch plywood, measures: 3/4 }
piece:
  left-side: { made of: ply, as: upright, facing: left, left: 0, front: 0, back: 10, bottom: 0, top: 30 }
  right-side: { like: left-side, right: 24 }
  base: { made of: ply, as: lying flat, grain: across, between: [left-side, right-side], front: 0, back: 10, bottom: 0 }
  shelf: { made of: ply, as: lying flat, grain: across, between: [left-side, right-side], front: 0, back: 10, bottom: 15 }
joints:
  - { join: base, to: [left-side, right-side], with: screws }
  - { join: shelf, to: [left-side, right-side], with: mortise and tenon }
order:
  - { this: [left-side, right-side], before: shelf }
`);
  expect(found.map(({ rule }) => rule)).toEqual(["wish-impossible"]);
  expect(found[0]?.message).toBe("shelf cannot go in after left-side and right-side: `right-side` is in the way");
  expect(found[0]?.at.line).toBe(15);
});

const FRAMES = `plan: 1
title: Two frames, one through the other
units: mm
stock:
  bar: { wood: white oak, sold as: 52 rough, planed to: 40 }
piece:
  one:
    low: { made of: bar, as: lying flat, grain: across, wide: 40, left: 0, right: 400, front: 180, bottom: 0 }
    high: { like: low, top: 400 }
    near: { made of: bar, as: upright, facing: left, wide: 40, left: 0, front: 180, between: [low, high] }
    far: { like: near, right: 400 }
    joints: [{ join: [near, far], to: [low, high], with: screws }]
  two:
    low: { made of: bar, as: lying flat, grain: deep, wide: 40, left: 180, front: 0, back: 400, under: one.high }
    high: { made of: bar, as: lying flat, grain: deep, wide: 40, left: 180, front: 0, back: 400, top: 600 }
    near: { made of: bar, as: upright, facing: front, wide: 40, left: 180, front: 0, between: [low, high] }
    far: { like: near, back: 400 }
    joints: [{ join: [near, far], to: [low, high], with: screws }]
joints:
  - { join: two.low, to: one.high, with: loose }
`;

test("two frames, one through the other, that are wished to be built by themselves", () => {
  const found = errors(`${FRAMES}order:
  - { build as one: one }
  - { build as one: two }
`);
  expect(found.map(({ rule }) => rule)).toEqual(["wish-impossible"]);
  expect(found[0]?.message).toMatch(
    /^(one|two) cannot be put together by itself and then go to the rest: `.*` (is|are) in the way$/,
  );
});

test("three bars pegged to each other in three directions lock, and opening one joint frees them", () => {
  const found = errors(`plan: 1
title: Three bars, pegged to each other in three directions
units: mm
stock:
  bar: { wood: white oak, sold as: 52 rough, planed to: 40 }
piece:
  deep-bar: { made of: bar, as: lying flat, grain: deep, wide: 40, left: 0, front: 0, back: 400, bottom: 0 }
  long-bar: { made of: bar, as: lying flat, grain: across, wide: 40, left: 0, right: 400, front: 40, on: deep-bar }
  post: { made of: bar, as: upright, facing: left, wide: 40, left: 40, front: 0, bottom: 0, top: 400 }
joints:
  - { join: long-bar, to: deep-bar, with: dowels }
  - { join: post, to: deep-bar, with: dowels }
  - { join: post, to: long-bar, with: dowels }
`);
  expect(found.map(({ rule }) => rule)).toEqual(["no-possible-order"]);
  expect(found[0]?.message).toBe("`deep-bar`, `long-bar` and `post` lock each other: none of them can be put in last");
  expect(found[0]?.help).toContain("any one of 3 joints frees them");
});

test("a drawer wider than the doorway between two strips of trim", () => {
  const found = errors(`# A drawer box on slides beside it, on two panels, made part by part.
plan: 1
title: Drawer on slides
units: inch
outside: { width: { value: 16, from: 12, to: 24 }, depth: 19, height: 8 }
stock:
  panel: { sold as: 3/4 birch plywood, measures: 23/32 }
  walls: { sold as: 1/2 birch plywood, measures: 15/32 }
hardware:
  grip: { kind: knob, screw: 7/8 }
piece:
  left-trim: { made of: panel, as: upright, facing: front, width: 2, left: 0, bottom: 0, top: outside.top, in front of: left-side }
  right-trim: { mirror of: left-trim, about: across }
  left-side: { made of: panel, as: upright, facing: left, left: 0, front: 0, back: outside.back, bottom: 0, top: outside.top }
  right-side: { mirror of: left-side, about: across }
  floor-panel: { made of: panel, as: lying flat, between: [left-side, right-side], front: 0, back: outside.back, bottom: 0 }
  drawer:
    left-wall: { made of: walls, as: on edge, grain: deep, left: left-side.right + 33/64, front: 0, deep: 18, bottom: floor-panel.top + 1/4, up: 5 }
    right-wall: { made of: walls, as: on edge, grain: deep, right: right-side.left - 33/64, front: 0, deep: 18, bottom: floor-panel.top + 1/4, up: 5 }
    front-wall: { made of: walls, as: on edge, between: [left-wall, right-wall], front: 0, bottom: left-wall.bottom, up: 5 }
    back-wall: { like: front-wall, front: left-wall.back - 15/32 }
    joints:
      - { join: [front-wall, back-wall], to: [left-wall, right-wall], with: rabbet, deep: 1/4 }
joints:
  - { join: left-trim, to: left-side, with: glue }
  - { join: right-trim, to: right-side, with: glue }
  - { join: [left-side, right-side], to: floor-panel, with: screws }
  - { join: drawer.left-wall, to: left-side, with: slides }
  - { join: drawer.right-wall, to: right-side, with: slides }
fittings:
  - { fit: grip, to: drawer.front-wall }
`);
  expect(found.map(({ rule }) => rule)).toEqual(["slide-needs-packing", "slide-needs-packing", "strikes-on-its-way"]);
  expect(found.map(({ message }) => message).join()).toMatch(
    /^left-trim stands .* in the way of the slide of drawer,right-trim/,
  );
});

test("the frames without the wish are built stick by stick, one through the other", () => {
  expect(errors(FRAMES)).toEqual([]);
});

test("the tube opens when one of its walls is screwed from outside", () => {
  const text = `plan: 1
title: Closed tube
units: inch
stock:
  ply: { sold as: 3/4 birch plywood, measures: 3/4 }
  stick: { wood: spruce, sold as: 2x2 }
piece:
  base: { made of: ply, as: lying flat, grain: across, left: 0, right: 24, front: 0, back: 6, bottom: 0 }
  roof: { like: base, bottom: 5 1/4 }
  fore: { made of: ply, as: on edge, facing: front, left: 0, right: 24, front: 0, between: [base, roof] }
  rear: { like: fore, back: 6, between: [base, roof] }
  cleat-a: { made of: stick, facing: front, as: on edge, left: 1, right: 23, front: 3/4, on: base }
  cleat-b: { like: cleat-a, back: 5 1/4, on: base }
joints:
  - { join: cleat-a, to: [base, fore], with: screws }
  - { join: cleat-b, to: [base, rear], with: screws }
  - { join: roof, to: [rear, fore], with: screws }
`;
  expect(errors(text)).toEqual([]);
});
