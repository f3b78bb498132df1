import { describe, expect, it } from "vitest";
import { cut, plane, solidBox } from "../../../../src/geometry/index.ts";
import { depthAt, roundDepthAt } from "../../../../src/solve/design/fastening/line.ts";
import { millimetres, toMillimetres } from "../../../../src/units/length.ts";
import { rational, ZERO } from "../../../../src/units/rational.ts";

const mm = (x: number, y: number, z: number) => [millimetres(x), millimetres(y), millimetres(z)] as const;

/** A block 100 mm square and high, its top sloping down 3 mm for each mm to the right, from 200 mm high above its left edge. */
const sloping = cut(solidBox(mm(0, 0, 0), mm(100, 100, 200)), plane(3n, 0n, 1n, BigInt(200 * 16_000)));

describe("how deep a bore of some radius may go", () => {
  const depth = (radius: number, x: number): number =>
    toMillimetres(roundDepthAt(millimetres(radius))(sloping, [millimetres(x), millimetres(50), ZERO], 2, 1));

  it("is what stands above its lower side where the far face slopes", () => {
    // Above the middle, 50 mm from the left: 200 - 150 = 50 mm; above the rim, 4 mm further: 3 * 4 = 12 mm less.
    expect(toMillimetres(depthAt(sloping, [millimetres(50), millimetres(50), ZERO], 2, 1))).toBeCloseTo(50, 6);
    expect(depth(4, 50)).toBeCloseTo(38, 6);
  });

  it("is nothing where the rim leaves the wood", () => {
    // At 66 mm from the left there are 2 mm, and none from 66.67 mm on.
    expect(depth(4, 66)).toBe(0);
  });

  it("is the whole depth where the far face is square", () => {
    const square = solidBox(mm(0, 0, 0), mm(100, 100, 30));
    const at = [millimetres(50), millimetres(50), rational(0)] as const;
    expect(toMillimetres(roundDepthAt(millimetres(4))(square, at, 2, 1))).toBe(30);
  });
});
