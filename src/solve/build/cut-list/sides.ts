/** Lines of the cut list that only their places tell apart: mirror images, and the stiles of a pair of doors. */
import type { Part } from "../../design.ts";

type Placed = Pick<Part, "solid">;
/** Along each axis, from low to high. */
export const WAYS = [
  ["left", "right"],
  ["front", "back"],
  ["lower", "upper"],
] as const;

const middle = ({ solid }: Placed, axis: 0 | 1 | 2): number => solid.low[axis] + solid.high[axis];
const reach = (parts: readonly Placed[], axis: 0 | 1 | 2): readonly [number, number] => {
  const at = parts.map((part) => middle(part, axis));
  return [Math.min(...at), Math.max(...at)];
};

/** "left" and "right"; "outer", "left inner" and "right inner"; null for each where their parts lie among one another. */
export function sidesOf(lines: readonly (readonly Placed[])[]): readonly (string | null)[] {
  const nothing = lines.map(() => null);
  for (const axis of [0, 1, 2] as const) {
    const spans = lines.map((parts) => reach(parts, axis));
    const outer = spans.findIndex(([low, high], i) =>
      spans.every(([from, to], j) => i === j || (low < from && to < high)),
    );
    const others = lines.filter((_, i) => i !== outer);
    if (lines.length === 3 && outer >= 0) {
      const inner = sidesOf(others);
      if (inner.includes(null)) continue;
      return lines.map((parts, i) => (i === outer ? "outer" : `${inner[others.indexOf(parts)]} inner`));
    }
    const [one, two] = spans;
    if (lines.length !== 2 || !one || !two) continue;
    const [low, high] = WAYS[axis];
    if (one[1] < two[0]) return [low, high];
    if (two[1] < one[0]) return [high, low];
  }
  return nothing;
}
