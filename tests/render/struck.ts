/** Texts of a drawing that a line runs through. */
import type { Item, PathStep } from "../../src/render/document.ts";
import { leaves } from "../../src/render/shapes.ts";
import { type Box, boxOf } from "./boxes.ts";

type Spot = readonly [number, number];
interface Line {
  readonly from: Spot;
  readonly to: Spot;
  /** Half its width. */
  readonly half: number;
  /** Place in the order of painting. */
  readonly order: number;
}

/** The runs of a path; a curve as eight short ones. */
function runsOf(steps: readonly PathStep[]): (readonly Spot[])[] {
  const runs: Spot[][] = [];
  for (const step of steps) {
    const run = runs.at(-1);
    if (step.to === "move") runs.push([[step.x, step.y]]);
    else if (step.to === "line") run?.push([step.x, step.y]);
    else if (step.to === "close") run?.push(run[0] as Spot);
    else {
      const [x0, y0] = (run ?? []).at(-1) as Spot;
      for (let i = 1; i <= 8; i++) {
        const [t, u] = [i / 8, 1 - i / 8];
        const at = (a: number, b: number, c: number, d: number): number =>
          u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
        run?.push([at(x0, step.x1, step.x2, step.x), at(y0, step.y1, step.y2, step.y)]);
      }
    }
  }
  return runs;
}

function inside([x, y]: Spot, runs: readonly (readonly Spot[])[]): boolean {
  let odd = false;
  for (const run of runs)
    run.forEach(([x1, y1], i) => {
      const [x2, y2] = run[(i + 1) % run.length] as Spot;
      if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) odd = !odd;
    });
  return odd;
}

/** A place where a line meets the ink of a box, or null. */
function meeting({ from, to, half }: Line, box: Box): Spot | null {
  const air = 0.3 - half;
  if (Math.max(from[0], to[0]) < box.left + air || Math.min(from[0], to[0]) > box.right - air) return null;
  if (Math.max(from[1], to[1]) < box.top + air || Math.min(from[1], to[1]) > box.bottom - air) return null;
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const steps = Math.max(1, Math.ceil(long / 0.5));
  for (let i = 0; i <= steps; i++) {
    const [x, y] = [from[0] + ((to[0] - from[0]) * i) / steps, from[1] + ((to[1] - from[1]) * i) / steps];
    if (x > box.left + air && x < box.right - air && y > box.top + air && y < box.bottom - air) return [x, y];
  }
  return null;
}

/** The texts of a figure that a line meets which no filled shape covers below them. */
export function struckThrough(figure: readonly Item[]): string[] {
  const all = leaves(figure);
  const lines: Line[] = [];
  const covers: { readonly runs: (readonly Spot[])[]; readonly order: number }[] = [];
  all.forEach((leaf, order) => {
    if (leaf.kind !== "path") return;
    const runs = runsOf(leaf.steps);
    if (leaf.fill) covers.push({ runs, order });
    if (leaf.stroke)
      for (const run of runs)
        for (let i = 1; i < run.length; i++)
          lines.push({ from: run[i - 1] as Spot, to: run[i] as Spot, half: leaf.stroke.width / 2, order });
  });
  return all.flatMap((leaf, at) => {
    if (leaf.kind !== "text" || leaf.text.trim() === "") return [];
    const box = boxOf(leaf);
    const struck = lines.some((line) => {
      const spot = meeting(line, box);
      if (spot === null) return false;
      return !covers.some(({ runs, order }) => order >= line.order && order < at && inside(spot, runs));
    });
    return struck ? [leaf.text] : [];
  });
}
