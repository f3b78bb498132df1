import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  boxPlanes,
  congruence,
  cut,
  flip,
  isMirror,
  type Mark,
  type Movement,
  matches,
  mirror,
  move,
  type Plane,
  plane,
  planeThrough,
  type Shape,
  type Solid,
  solidBox,
  subtract,
  subtractBox,
  unite,
} from "../../src/geometry/index.ts";
import { TOLERANCE } from "../../src/units/length.ts";
import { rational, ZERO } from "../../src/units/rational.ts";
import { anyPlane, board, cube, point, SIDE, sixtyFourths } from "./making.ts";

const inch = 406_400;
const upright = { length: 2, width: 1, thickness: 0 } as const;
const shape = (solid: Solid, marks: readonly Mark[] = [], frame: Shape["frame"] = upright): Shape => ({
  solid,
  frame,
  marks,
});
const compare = (a: Solid, b: Solid) => congruence(shape(a), shape(b));

describe("the sides of a bookcase", () => {
  const dados = [3, 14.5, 26] as const;
  const cutInto = (x0: number, x1: number) => dados.map((z) => [x0, -1, z, x1, 12, z + 0.75] as const);
  const left = board([0, 0, 0, 0.75, 11, 48], ...cutInto(0.5, 1));
  const right = board([29.25, 0, 0, 30, 11, 48], ...cutInto(29, 29.5));

  test("with dados right across are one part, turned about", () => {
    expect(compare(left, right)).toBe("same");
  });
  test("with a rabbet for the back are a pair", () => {
    const l = subtractBox(left, sixtyFourths(24, 10.75 * 64, -64), sixtyFourths(64, 12 * 64, 49 * 64));
    const r = subtractBox(right, sixtyFourths(29 * 64, 10.75 * 64, -64), sixtyFourths(29.625 * 64, 12 * 64, 49 * 64));
    expect(compare(l, r)).toBe("mirrored");
    expect(compare(l, l)).toBe("same");
  });
  test("with a dado at another height are two parts", () => {
    const other = board([29.25, 0, 0, 30, 11, 48], ...cutInto(29, 29.5).slice(0, 2), [29, -1, 26.25, 29.5, 12, 27]);
    expect(compare(left, other)).toBeNull();
  });
  test("cut in another order are the same, though the pieces differ", () => {
    const again = board([0, 0, 0, 0.75, 11, 48], ...cutInto(0.5, 1).reverse());
    expect(compare(left, again)).toBe("same");
  });
});

describe("the four legs of a table", () => {
  // 2 square, 28 long; mortises 3/8 wide, 1 deep, for long rails (along x) and short ones (along y).
  // `long` and `short` are the distances of the mortises from the outer faces, `drop` the length of wood above the short one.
  const legs = (long: number, short: number, drop: number): Solid[] => {
    const leg = board(
      [0, 0, 0, 2, 2, 28],
      [1, long, 24, 3, long + 0.375, 27],
      [short, 1, 24 - drop, short + 0.375, 3, 27 - drop],
    );
    const right = mirror(leg, 0, rational(20 * inch));
    return [leg, right, mirror(leg, 1, rational(10 * inch)), mirror(right, 1, rational(10 * inch))];
  };
  const kinds = (all: Solid[]) => all.map((leg) => compare(all[0] ?? cube, leg));

  test("are one part when both mortises are alike and centred", () => {
    expect(kinds(legs(0.8125, 0.8125, 0))).toEqual(["same", "same", "same", "same"]);
  });
  test("are one part when both are alike, equally near the outside: a leg is symmetric about its diagonal", () => {
    expect(kinds(legs(0.375, 0.375, 0))).toEqual(["same", "same", "same", "same"]);
  });
  test("are two pairs when one mortise is lower", () => {
    expect(kinds(legs(0.8125, 0.8125, 1))).toEqual(["same", "mirrored", "mirrored", "same"]);
  });
  test("are two pairs when one mortise is nearer the outside", () => {
    expect(kinds(legs(0.375, 0.8125, 0))).toEqual(["same", "mirrored", "mirrored", "same"]);
  });
  test("are two pairs when only one of two faces is tapered", () => {
    const taper = planeThrough([rational(2 * inch), ZERO, rational(23 * inch)], [23n, 0n, -1n]);
    const leg = cut(legs(0.8125, 0.8125, 0)[0] ?? cube, taper);
    expect(compare(leg, mirror(leg, 0, rational(20 * inch)))).toBe("mirrored");
    const both = cut(leg, planeThrough([ZERO, rational(2 * inch), rational(23 * inch)], [0n, 23n, -1n]));
    expect(compare(both, mirror(both, 0, rational(20 * inch)))).toBe("same");
  });
});

describe("grain and faces", () => {
  test("the length lies along the length, whatever axis that is", () => {
    const up = board([0, 0, 0, 0.75, 4, 30]);
    const across = board([5, 5, 5, 35, 9, 5.75]);
    expect(congruence(shape(up), shape(across, [], { length: 0, width: 1, thickness: 2 }))).toBe("same");
    const square = board([0, 0, 0, 0.75, 4, 4]);
    expect(congruence(shape(square), shape(square, [], { length: 1, width: 2, thickness: 0 }))).toBe("same");
    expect(
      congruence(
        shape(board([0, 0, 0, 1, 2, 3])),
        shape(board([0, 0, 0, 1, 2, 3]), [], { length: 1, width: 2, thickness: 0 }),
      ),
    ).toBeNull();
  });
  test("a groove along the grain is not one across it", () => {
    const along = board([0, 0, 0, 0.75, 6, 6], [0.5, 2, -1, 1, 2.5, 7]);
    const across = board([0, 0, 0, 0.75, 6, 6], [0.5, -1, 2, 1, 7, 2.5]);
    expect(compare(along, across)).toBeNull();
    expect(congruence(shape(along), shape(across, [], { length: 1, width: 2, thickness: 0 }))).toBe("same");
  });
});

describe("holes", () => {
  const plank = board([0, 0, 0, 0.75, 4, 30]);
  const hole = (y: number, z: number, label = "pilot", x = 0): Mark => ({
    label,
    at: [x * inch, y * inch, z * inch],
    direction: [x === 0 ? 1 : -1, 0, 0],
  });
  const kind = (a: Mark[], b: Mark[]) => congruence(shape(plank, a), shape(plank, b));

  test("must lie on each other", () => {
    expect(kind([hole(1, 3)], [hole(1, 3)])).toBe("same");
    expect(kind([hole(1, 3)], [hole(3, 27)])).toBe("same");
    expect(kind([hole(1, 3)], [hole(1.5, 3)])).toBeNull();
    expect(kind([hole(1, 3)], [])).toBeNull();
    expect(
      kind(
        [{ label: "cable", at: [0, 2 * inch, 15 * inch], direction: [1, 0, 0] }],
        [{ label: "cable", at: [0, 2 * inch, 15 * inch], direction: [0.6, 0, 0.8] }],
      ),
    ).toBeNull();
    expect(
      kind([{ label: "cable", at: [0, 2 * inch, 15 * inch] }], [{ label: "cable", at: [0, 2 * inch, 15 * inch] }]),
    ).toBe("same");
    expect(kind([hole(1, 3)], [hole(1, 3, "clearance")])).toBeNull();
    expect(kind([hole(1, 3), hole(2, 5)], [hole(2, 5), hole(1, 3)])).toBe("same");
  });
  test("make a pair of what would be one part", () => {
    expect(kind([hole(1, 3), hole(2, 20)], [hole(3, 3), hole(2, 20)])).toBe("mirrored");
    // From the other face it is a turn about the length.
    expect(kind([hole(1, 3), hole(2, 20)], [hole(3, 3, "pilot", 0.75), hole(2, 20, "pilot", 0.75)])).toBe("same");
  });
});

test("equal within the tolerance is equal, beyond it is not", () => {
  const plain = solidBox(point(0, 0, 0), point(400_000, 800_000, 4_000_000));
  const longer = (by: number) => solidBox(point(0, 0, 0), point(400_000, 800_000, 4_000_000 + by));
  expect(compare(plain, longer(1))).toBe("same");
  expect(compare(plain, longer(TOLERANCE))).toBe("same");
  expect(compare(plain, longer(TOLERANCE + 1))).toBeNull();
  const notched = (by: number) =>
    subtractBox(plain, point(100_000, 200_000, 1_000_000), point(400_000, 300_000 + by, 1_100_000));
  expect(compare(notched(0), notched(TOLERANCE))).toBe("same");
  expect(compare(notched(0), notched(TOLERANCE * 3))).toBeNull();
  expect(compare(plain, notched(0))).toBeNull();
  expect(compare(notched(0), plain)).toBeNull();
});

test("any solid matches itself moved and divided anew, and not when a corner is missing", () => {
  const sign = fc.constantFrom(1 as const, -1 as const);
  const anyMovement = fc.tuple(fc.boolean(), sign, sign, sign).map(
    ([swap, ...signs]): Movement => ({
      from: swap ? [1, 0, 2] : [0, 1, 2],
      sign: signs,
      shift: [rational(1, 3), rational(-5), rational(7, 2)],
    }),
  );
  // The planes of `making` for a blank a thousand times as large, longer than it is wide.
  const large = anyPlane.map(({ A, B, C, D }) => plane(A, B, C, D * 1000n));
  const blank = solidBox(point(0, 0, 0), point(SIDE * 1000, SIDE * 1000, SIDE * 1500));
  const core = boxPlanes(point(100_000, 100_000, 0), point(900_000, 900_000, 1_500_000));
  const corner = boxPlanes(point(0, 0, 0), point(50_000, 50_000, 1_000));
  fc.assert(
    fc.property(
      fc.array(large, { maxLength: 2 }),
      fc.array(large, { maxLength: 3 }),
      anyMovement,
      (cuts, divisions, movement) => {
        const body = cuts.reduce<Solid>((so, p) => subtract(so, [p, ...core]), blank);
        const divide = (so: Solid, p: Plane): Solid => unite([cut(so, p), cut(so, flip(p))]);
        const divided = divisions.reduce(divide, body);
        expect(matches(body, divided)).toBe(true);
        const found = congruence(shape(body), shape(move(divided, movement)));
        if (isMirror(movement)) expect(found).not.toBeNull();
        else expect(found).toBe("same");
        expect(congruence(shape(body), shape(move(subtract(divided, corner), movement)))).toBeNull();
      },
    ),
    { numRuns: 40 },
  );
});
