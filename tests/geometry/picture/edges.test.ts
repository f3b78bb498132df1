import { describe, expect, test } from "vitest";
import { realEdges, realFaces } from "../../../src/geometry/picture/index.ts";
import { area } from "../../../src/geometry/picture/polygon.ts";
import type { Solid } from "../../../src/geometry/types.ts";
import { type Box, box, carve, INCH, randomBoxes } from "./scenes.ts";

const total = (solid: Solid): number =>
  realEdges(solid).reduce(
    (sum, { from, to }) => sum + Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]) / INCH,
    0,
  );
const faceArea = (solid: Solid): number =>
  realFaces(solid).reduce((sum, f) => sum + f.polygons.reduce((s, p) => s + area(p), 0), 0) / INCH ** 2;

const board: Box = [0, 0, 0, 10, 4, 2];
/** Counted by hand on a 10 × 4 × 2 in block: edges, their length, faces (planes), their area. */
const counted: [string, readonly Box[], number, number, number, number][] = [
  ["a plain block", [], 12, 64, 6, 136],
  // Profile of six corners along x: 6 long edges, two ends of 12 in around.
  ["an L", [[-1, 2, 1, 11, 5, 3]], 18, 60 + 24, 8, 100 + 20 + 12],
  // Profile of eight corners: two top strips in one plane, 8 long edges, ends of 12 + 2 in.
  ["a through groove", [[-1, 1, 1, 11, 2, 3]], 24, 80 + 28, 9, 136 + 20 - 2],
  // A pocket 2 × 1 × 1 in the top: 12 edges more, 4 walls more, the bottom replaces the mouth.
  ["a mortise", [[4, 1, 1, 6, 2, 3]], 24, 64 + 16, 11, 136 + 6],
  // Right through: mouths twice, no bottom.
  ["a through mortise", [[4, 1, -1, 6, 2, 3]], 24, 64 + 20, 10, 136 + 12 - 4],
  // Open at the left end: 13 of the block, 3 around the mouth, 3 at the end, 3 at the bottom, 2 upright in the corners.
  ["a stopped groove", [[-1, 1, 1, 5, 2, 3]], 24, 63 + 11 + 3 + 11 + 2, 10, 136 - 6 + 16],
];

describe("edges one would see on the wood", () => {
  test.each(counted)("%s", (_, cuts, edges, length, faces, surface) => {
    for (const order of [
      [0, 1, 2, 3, 4, 5],
      [5, 4, 3, 2, 1, 0],
      [2, 4, 0, 5, 1, 3],
    ]) {
      const solid = carve(board, cuts, order);
      expect(realEdges(solid)).toHaveLength(edges);
      expect(total(solid)).toBeCloseTo(length, 9);
      expect(realFaces(solid)).toHaveLength(faces);
      expect(faceArea(solid)).toBeCloseTo(surface, 9);
    }
  });

  test("blocks that touch along one edge keep it; what runs on in one line is one edge", () => {
    const solid: Solid = {
      ...box(board),
      pieces: [...box([0, 0, 0, 1, 1, 1]).pieces, ...box([1, 1, 0, 2, 2, 1]).pieces],
    };
    expect(realEdges(solid)).toHaveLength(2 * 12 - 1 - 4);
  });

  test("no edge ends loosely where a seam meets the middle of another piece's face: three or more end at every corner", () => {
    for (const { solid } of randomBoxes(27, 11)) {
      const ends = new Map<string, number>();
      for (const edge of realEdges(solid))
        for (const p of [edge.from, edge.to]) {
          const key = p.map((x) => Math.round(x)).join();
          ends.set(key, (ends.get(key) ?? 0) + 1);
        }
      expect(Math.min(...ends.values())).toBeGreaterThanOrEqual(3);
    }
  });

  test("corners − edges + faces = 2 for an L (Euler)", () => {
    const solid = carve(board, [[-1, 2, 1, 11, 5, 3]]);
    const corners = new Set(realEdges(solid).flatMap((e) => [e.from.join(), e.to.join()]));
    expect(corners.size - realEdges(solid).length + realFaces(solid).length).toBe(2);
  });
});
