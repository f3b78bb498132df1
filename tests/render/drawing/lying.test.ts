import { describe, expect, test } from "vitest";
import { lying } from "../../../src/render/drawing/part/lying.ts";
import type { BuiltPart } from "../../../src/solve/build.ts";
import type { Direction, Feature } from "../../../src/solve/design.ts";
import { at, inch, part } from "./fixture/making.ts";

/** A post of 1 × 2 × 30 in with a rabbet of 1/4 in, 1/2 in deep from behind, along its left or right side. */
function post(side: "left" | "right"): BuiltPart {
  const x = side === "left" ? 0 : 0.75;
  const made = part("post", "A", "Post", "oak", { body: [0, 0, 0, 1, 2, 30], cuts: [[x, 1.5, 0, x + 0.25, 2, 30]] });
  const rabbet: Feature = {
    ...{ kind: "rabbet", for: null, origin: at(x, 2, 0), along: [0, 0, 1], across: [1, 0, 0] },
    ...{ size: [inch(30), inch(0.25), inch(0.5)], into: [0, -1, 0] as Direction },
  };
  return { ...made, features: [rabbet] };
}

describe("the side from which a part is drawn", () => {
  // Common practice, no source: what is cut is drawn in full lines.
  test.each(["left", "right"] as const)("is the one on which a rabbet from behind runs out: the %s", (side) => {
    expect(lying(post(side), []).face.name).toBe(`the ${side}`);
  });

  test("of two sides alike it is the right one", () => {
    expect(lying({ ...post("left"), features: [] }, []).face.name).toBe("the right");
  });
});
