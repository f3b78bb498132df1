import { describe, expect, test } from "vitest";
import { stepPicture } from "../../src/render/drawing/index.ts";
import { laidOnBench } from "../../src/render/drawing/step/on-bench.ts";
import { built } from "../examples/compiled.ts";
import { pen } from "../render/drawing/fixture.ts";
import { words } from "../render/drawing/look.ts";
import { plain } from "./told/examples.ts";

const frame = { x: 0, y: 0, width: 255, height: 150 };
const stepIn = (name: string, title: string) => {
  const build = built(name);
  const step = build.steps.find((each) => each.title === title);
  if (!step) throw new Error(`no step "${title}"`);
  const lain = step.text.map(plain).find((text) => text.includes("lying flat"));
  const drawn = stepPicture(build, step, { frame, pen, before: null });
  return { lain, words: words(drawn.items) };
};

describe("a frame that is put together lying flat", () => {
  // The brace stands 1/2 in behind the post's left face and 3/4 in behind its right one: it lies on the left, where less goes under.
  test("lies on the side where least packing goes under, and is drawn so", () => {
    const { lain, words: told } = stepIn("old-plans/china-closet", "Build the left end");
    expect(lain).toBe(
      "Put it together lying flat, on two straight battens, with the left side down: packing 1/2 in thick goes under the lower brace (R) and the upper brace (S), which lie so much higher.",
    );
    expect(told).toContain("Lying on its left side, front towards you");
  });

  // As thick everywhere: the rabbets of a door are looked into from its back.
  test("that is flush on both sides lies on what is outside in the piece", () => {
    const { lain, words: told } = stepIn("old-plans/china-closet", "Build the left door");
    expect(lain).toBe("Put it together lying flat, on two straight battens, with the front side down.");
    expect(told).toContain("Lying on its front, bottom towards you");
  });

  // Rails of 40 mm in the middle of legs of 70 mm.
  test("whose rails lie in the middle has packing under them", () => {
    expect(stepIn("workbench-cart", "Build the left end").lain).toContain("packing 15 mm thick goes under");
  });

  test("whose mirror image follows is told as that", () => {
    const build = built("old-plans/china-closet");
    const right = build.steps.find(({ title }) => title === "Build the right end");
    expect(right?.text.join(" ")).toContain("mirrored (left and right change places)");
    expect(right?.text.join(" ")).not.toContain("lying flat");
  });
});

test("fourteen pieces that the saw leaves are drawn one by one, where the picture gets little wider by that", () => {
  const build = built("manuals-bookcase");
  const step = build.steps.find(({ shows }) => shows.as === "sawn");
  expect(step && laidOnBench(build, step).items).toHaveLength(14);
});
