/** Scenes for the picture tests: bookcases whose shelves sit in dados, and boxes cut at random. */
import { boxPlanes, cut, planeThroughPoints, solidBox, subtract } from "../../../src/geometry/index.ts";
import type { Plane, Point, SceneItem, Solid } from "../../../src/geometry/types.ts";
import { rational } from "../../../src/units/rational.ts";

export const INCH = 406_400;
/** A corner in inches; whole units as long as they are whole 64ths. */
export const at = (x: number, y: number, z: number): Point => {
  const exact = (inches: number) => rational(Math.round(inches * 64) * 6350);
  return [exact(x), exact(y), exact(z)];
};

export type Box = readonly [number, number, number, number, number, number];
export const box = ([x0, y0, z0, x1, y1, z1]: Box): Solid => solidBox(at(x0, y0, z0), at(x1, y1, z1));
export const planesOf = ([x0, y0, z0, x1, y1, z1]: Box): readonly Plane[] => boxPlanes(at(x0, y0, z0), at(x1, y1, z1));

/** `order` permutes the six planes of every cut, and with them the seams. */
export const carve = (from: Box, cuts: readonly Box[], order: readonly number[] = [0, 1, 2, 3, 4, 5]): Solid =>
  cuts.reduce((solid, c) => {
    const planes = planesOf(c);
    return subtract(
      solid,
      order.map((i) => planes[i]).filter((p) => p !== undefined),
    );
  }, box(from));

/** Twelve parts, 30 × 11 × 48 in, standing at (x, y). */
export function bookcase(name: string, x = 0, y = 0, order?: readonly number[]): SceneItem[] {
  const [wide, deep, high, thick, into] = [30, 11, 48, 0.75, 0.25];
  const place = ([x0, y0, z0, x1, y1, z1]: Box): Box => [x0 + x, y0 + y, z0, x1 + x, y1 + y, z1];
  const part = (id: string, body: Box, cuts: readonly Box[] = []): SceneItem => ({
    id: `${name}.${id}`,
    solid: carve(place(body), cuts.map(place), order),
  });
  const heights = [3, 14.5, 26, 37];
  return [
    part(
      "left",
      [0, 0, 0, thick, deep, high],
      [
        ...heights.map((z): Box => [thick - into, -1, z, thick + 1, deep + 1, z + thick]),
        [thick - 0.375, deep - 0.25, -1, thick + 1, deep + 1, high + 1],
        [-1, -1, -1, thick + 1, 2, 3],
      ],
    ),
    part(
      "right",
      [wide - thick, 0, 0, wide, deep, high],
      [
        ...heights.map((z): Box => [wide - thick - 1, -1, z, wide - thick + into, deep + 1, z + thick]),
        [wide - thick - 1, deep - 0.25, -1, wide - thick + 0.375, deep + 1, high + 1],
        [wide - thick - 1, -1, -1, wide + 1, 2, 3],
      ],
    ),
    ...heights.map((z, i) =>
      part(
        `shelf${i}`,
        [thick - into, 0, z, wide - thick + into, deep - 0.25, z + thick],
        i === 1
          ? [[14.625, -1, z + thick - into, 15.375, deep, z + thick + 1]]
          : i === 2
            ? [[14.625, -1, z - 1, 15.375, deep, z + into]]
            : [],
      ),
    ),
    part("divider", [14.625, 0, 14.5 + thick - into, 15.375, deep - 0.25, 26 + into]),
    part("top", [thick, 0, high - thick, wide - thick, deep - 0.25, high]),
    part("back", [thick - 0.375, deep - 0.25, 3, wide - thick + 0.375, deep, high]),
    part("left stile", [0, -0.75, 3, 1.5, 0, high]),
    part("right stile", [wide - 1.5, -0.75, 3, wide, 0, high]),
    part("rail", [1.5, -0.75, high - 2, wide - 1.5, 0, high]),
  ];
}

/** A repeatable source of numbers from 0 to 1, after Lehmer. */
export function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** Boxes on a lattice, often touching, each with a groove, a notch, a pocket and in 40 % of cases a bevel. */
export function randomBoxes(count: number, seed: number): SceneItem[] {
  const next = numbers(seed);
  const side = Math.ceil(Math.cbrt(count));
  const play = () => (next() < 0.5 ? 0 : Math.round(next() * 16) / 8);
  return Array.from({ length: count }, (_, i): SceneItem => {
    const [cx, cy, cz] = [(i % side) * 10, (Math.floor(i / side) % side) * 10, Math.floor(i / side / side) * 10];
    const [x0, x1, y0, y1, z0, z1] = [
      cx + play(),
      cx + 10 - play(),
      cy + play(),
      cy + 10 - play(),
      cz + play(),
      cz + 10 - play(),
    ];
    const [mx, my, mz] = [(x0 + x1) / 2, (y0 + y1) / 2, (z0 + z1) / 2];
    const groove: Box =
      next() < 0.5
        ? [x0 - 1, my - 0.5, z1 - 1, x1 + 1, my + 0.5, z1 + 1]
        : [mx - 0.5, y0 - 1, z1 - 1, mx + 0.5, y1 + 1, z1 + 1];
    let solid = carve(
      [x0, y0, z0, x1, y1, z1],
      [groove, [mx - 1, y0 - 1, mz - 1, mx + 1, y0 + 1.5, mz + 1], [x0 - 1, y1 - 2, z0 - 1, x1 + 1, y1 + 1, z0 + 2]],
    );
    // Outward by the right-hand rule: up along y, then up and inwards.
    if (next() < 0.4) solid = cut(solid, planeThroughPoints(at(x1, y0, z0), at(x1, y1, z0), at(x1 - 1.5, y0, z1)));
    return { id: `box ${i}`, solid };
  });
}
