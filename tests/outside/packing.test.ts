import { expect, test } from "vitest";
import { layOut } from "../../src/solve/build/cutting/lay-out.ts";
import { NO_TRIM } from "../../src/solve/build/cutting/trim.ts";
import { type Length, multiply, rational, subtract, ZERO } from "../../src/units/index.ts";
import { faultsOf } from "../solve/cutting/replay.ts";
import { blank, sheet } from "../solve/cutting/stock.ts";

/**
 * Two-dimensional bin packing: classes 1 to 6 of J. O. Berkey and P. Y. Wang, "Two-Dimensional Finite Bin-Packing Algorithms" (1987),
 * classes 7 to 10 of S. Martello and D. Vigo (1998), 20 parts, the first instance of each. Bin; fewest bins proven and
 * found by anybody with cuts from edge to edge, first without and then with turning; parts.
 */
// biome-ignore format: a table
const INSTANCES: readonly (readonly [string, number, number, number, number, number, number, string])[] = [
  ["class 1", 10, 10, 8, 8, 7, 7, "5×9 4×2 10×6 5×7 6×3 10×7 1×5 3×5 6×9 2×4 6×7 7×2 8×3 4×10 4×5 10×3 8×3 7×8 8×3 8×7"],
  ["class 2", 30, 30, 1, 1, 1, 1, "5×9 4×2 10×6 5×7 6×3 10×7 1×5 3×5 6×9 2×4 6×7 7×2 8×3 4×10 4×5 10×3 8×3 7×8 8×3 8×7"],
  ["class 3", 40, 40, 5, 6, 5, 5, "18×30 13×5 33×19 17×22 18×9 34×24 1×16 9×15 19×31 4×11 19×23 24×4 27×9 13×33 13×15 34×9 27×10 22×28 26×11 25×25"],
  ["class 4", 100, 100, 1, 1, 1, 1, "18×30 13×5 33×19 17×22 18×9 34×24 1×16 9×15 19×31 4×11 19×23 24×4 27×9 13×33 13×15 34×9 27×10 22×28 26×11 25×25"],
  ["class 5", 100, 100, 8, 8, 7, 7, "50×85 35×14 94×54 47×62 52×25 96×67 1×43 24×42 53×86 11×31 52×65 66×11 76×25 36×94 36×42 97×24 76×29 61×79 74×29 71×69"],
  ["class 6", 300, 300, 1, 1, 1, 1, "50×85 35×14 94×54 47×62 52×25 96×67 1×43 24×42 53×86 11×31 52×65 66×11 76×25 36×94 36×42 97×24 76×29 61×79 74×29 71×69"],
  ["class 7", 100, 100, 5, 5, 5, 5, "56×75 98×27 74×24 99×34 80×1 84×43 88×6 89×6 98×38 78×21 75×49 31×93 90×37 21×73 71×4 93×35 89×48 90×12 13×79 10×42"],
  ["class 8", 100, 100, 6, 6, 6, 6, "56×75 47×84 13×82 48×89 21×66 27×96 33×69 33×69 47×92 18×80 15×99 31×93 35×91 21×73 8×68 39×90 34×99 36×73 13×79 10×42"],
  ["class 9", 100, 100, 19, 19, 19, 19, "56×75 97×77 62×73 98×84 71×50 76×93 83×55 83×55 97×88 67×71 64×99 80×89 85×87 70×60 57×53 89×85 84×98 85×61 62×70 10×42"],
  ["class 10", 100, 100, 6, 6, 6, 6, "7×25 47×27 13×24 48×34 21×1 76×93 33×6 33×6 97×88 18×21 64×99 31×40 85×87 21×11 8×4 89×85 34×48 85×61 13×20 10×42"],
];

const lay = (
  width: Length,
  length: Length,
  parts: readonly (readonly [Length, Length])[],
  kerf: Length,
  turn: boolean,
) => {
  const stock = sheet(width, length);
  const grain = turn ? "free" : "length";
  const blanks = parts.map(([w, l], i) => blank(stock, `b${i}`, w, l, { grain }));
  const { layouts, proof } = layOut([stock], blanks, kerf, { trim: NO_TRIM });
  const all = new Map(blanks.map((each) => [each.id, each]));
  expect(layouts.flatMap((layout) => faultsOf(layout, all))).toEqual([]);
  return { count: layouts.length, bound: proof[0]?.countBound ?? 0 };
};

const sizes = (text: string): [Length, Length][] =>
  text.split(" ").map((part) => {
    const [w = "0", l = "0"] = part.split("×");
    return [rational(BigInt(w)), rational(BigInt(l))];
  });

test.each(INSTANCES)(
  "%s: as few bins as the best known, none below what is proven",
  (_, w, l, proven, best, provenTurned, bestTurned, parts) => {
    const straight = lay(rational(w), rational(l), sizes(parts), ZERO, false);
    expect(straight.count).toBeGreaterThanOrEqual(proven);
    expect(straight.count).toBe(best);
    expect(straight.bound).toBeLessThanOrEqual(best);
    const turned = lay(rational(w), rational(l), sizes(parts), ZERO, true);
    expect(turned.count).toBeGreaterThanOrEqual(provenTurned);
    expect(turned.count).toBe(bestTurned);
    expect(turned.bound).toBeLessThanOrEqual(bestTurned);
  },
);

test.each(INSTANCES)("%s: a kerf on parts made smaller by it changes nothing", (_, w, l, _a, _b, _c, _d, parts) => {
  // Parts and kerf on a sheet are parts grown by the kerf on a sheet grown by it.
  const kerf = rational(1, 3);
  const smaller = sizes(parts).map(([a, b]): [Length, Length] => [subtract(a, kerf), subtract(b, kerf)]);
  const [width, length] = [subtract(rational(w), kerf), subtract(rational(l), kerf)];
  const scale = (size: Length): Length => multiply(size, rational(3));
  const sawn = lay(
    scale(width),
    scale(length),
    smaller.map(([a, b]) => [scale(a), scale(b)]),
    scale(kerf),
    false,
  );
  expect(sawn).toEqual(
    lay(
      rational(3 * w),
      rational(3 * l),
      sizes(parts).map(([a, b]) => [scale(a), scale(b)]),
      ZERO,
      false,
    ),
  );
});
