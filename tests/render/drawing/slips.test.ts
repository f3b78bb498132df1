import { expect, test } from "vitest";
import { solidBox } from "../../../src/geometry/solid.ts";
import { slips } from "../../../src/render/drawing/step/slips.ts";
import type { Build, Fastener, Step } from "../../../src/solve/build.ts";
import { at } from "./fixture/making.ts";

const body = solidBox(at(0, 0, 0), at(2, 0.125, 2));
const key = { id: "k", kind: "key", body, travelsWith: null, through: ["a"], into: "b" } as unknown as Fastener;
const steps = [1, 2].map(
  (number) => ({ number, actions: number === 1 ? [{ do: "drive", fasteners: ["k"] }] : [] }) as unknown as Step,
);
const build = { fasteners: [key], steps } as unknown as Build;
const [first, second] = steps as [Step, Step];
const both = new Set(["a", "b"]);

test("a key is drawn as what it is: off its slot in the step that glues it in, and in it afterwards", () => {
  const driven = [{ id: "k", off: [1, 0, 1] }] as unknown as Parameters<typeof slips>[3];
  expect(slips(build, first, both, driven)).toEqual([{ id: "k", mark: "", solid: body, shift: [1, 0, 1] }]);
  expect(slips(build, second, both, [])).toEqual([{ id: "k", mark: "", solid: body }]);
});

test("not before it is glued in, nor beside one of its parts alone", () => {
  expect(slips(build, first, both, [])).toEqual([]);
  expect(slips(build, second, new Set(["a"]), [])).toEqual([]);
});
