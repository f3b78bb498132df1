/** Builds of boxes at random that touch, stack and hide each other: what no maker would draw, to crowd the drawings. */
import { solidBox } from "../../../src/geometry/index.ts";
import type { Build, BuiltPart, Step } from "../../../src/solve/build.ts";
import { subtract } from "../../../src/units/index.ts";
import { numbers } from "../../geometry/picture/scenes.ts";
import { at, bench } from "./fixture.ts";

export function randomBuild(seed: number, count: number): Build {
  const base = bench();
  const [model] = base.parts;
  const [step] = base.steps;
  if (!model || !step) throw new Error("the bench has parts and steps");
  const next = numbers(seed);
  const whole = (most: number) => Math.round(next() * most * 8) / 8;
  const marks = ["A", "B", "C", "D", "E", "F", "G", "AB", "AC"];
  const parts = Array.from({ length: count }, (_, i): BuiltPart => {
    const [x, y, z] = [whole(40), whole(20), whole(30)];
    const low = at(x, y, z);
    const high = at(x + 0.75 + whole(16), y + 0.75 + whole(6), z + 0.75 + whole(10));
    const mark = marks[Math.floor(next() * marks.length)] ?? "A";
    const size = ([0, 1, 2] as const).map((k) => subtract(high[k], low[k]));
    const [thickness = model.thickness, width = model.width, length = model.length] = size;
    const box = { low, high };
    return {
      ...model,
      id: `part ${i}`,
      mark,
      name: `Part ${mark}`,
      body: box,
      blank: box,
      solid: solidBox(low, high),
      thickness,
      width,
      length,
    };
  });
  const ids = parts.map(({ id }) => id);
  const half = Math.ceil(count / 2);
  const ways = [
    [1, 0, 0],
    [0, -1, 0],
    [0, 0, -1],
  ] as const;
  const shows: Step["shows"] = {
    fresh: ids.slice(half),
    present: ids.slice(0, half),
    travel: ids.slice(half).map((id, i) => ({ parts: [id], along: ways[i % 3] ?? ways[0] })),
    fasteners: [],
  };
  return { ...base, parts, joints: [], fasteners: [], steps: [{ ...step, shows }] };
}
