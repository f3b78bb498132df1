/** Total orders on what pictures are made of, so that nothing depends on the order in which it was found. */
import type { Edge, Point2, Vec } from "../types.ts";

export const comparePoints = (p: Vec, q: Vec): number => p[0] - q[0] || p[1] - q[1] || p[2] - q[2];

export const compareEdges = (a: Edge, b: Edge): number => comparePoints(a.from, b.from) || comparePoints(a.to, b.to);

export const compareRuns = (a: readonly [Point2, Point2], b: readonly [Point2, Point2]): number =>
  a[0][0] - b[0][0] || a[0][1] - b[0][1] || a[1][0] - b[1][0] || a[1][1] - b[1][1];
