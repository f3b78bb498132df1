/** Places at which cuts need be made: sums of sizes, and the bins' own sizes. */
export interface Grid {
  readonly points: Float64Array;
  /** For point i, from[i] on: pairs (a, b) of points that together reach at most to it; b is the farthest for a. */
  readonly from: Int32Array;
  readonly near: Int32Array;
  readonly far: Int32Array;
}

/**
 * Sums of sizes up to the longest room, in steps of `unit` where there are too many: then sizes and rooms are rounded down, so that
 * what fits still fits. Returns the unit, 1 when nothing was rounded.
 */
export function gridOf(sizes: readonly number[], rooms: readonly number[], most: number): { grid: Grid; unit: number } {
  const whole = Math.max(...rooms);
  const sums = sumsOf(sizes, whole, most);
  const unit = sums === undefined ? whole / most : 1;
  const rounded = (size: number): number => (unit === 1 ? size : Math.floor(size / unit));
  const steps = [...new Set(sizes.map(rounded))].filter((size) => size > 0);
  const points = sums ?? sumsOf(steps, most, most + 1) ?? [];
  const all = [...new Set([...points, ...rooms.map(rounded)])].toSorted((a, b) => a - b);
  return { grid: paired(all), unit };
}

/** All sums of sizes up to a limit, or undefined when there are too many. */
function sumsOf(sizes: readonly number[], limit: number, most: number): number[] | undefined {
  const found = new Set([0]);
  const distinct = [...new Set(sizes)].filter((size) => size <= limit).toSorted((a, b) => b - a);
  // A set grows while it is walked through, so that multiples are found as well.
  for (const size of distinct)
    for (const sum of found) {
      if (sum + size <= limit) found.add(sum + size);
      if (found.size > most) return undefined;
    }
  return [...found];
}

function paired(points: readonly number[]): Grid {
  const [from, near, far]: [number[], number[], number[]] = [[], [], []];
  for (const [i, point] of points.entries()) {
    from.push(near.length);
    let b = i;
    for (let a = 1; a < i; a += 1) {
      const first = points[a] as number;
      if (first * 2 > point) break;
      while ((points[b] as number) > point - first) b -= 1;
      near.push(a);
      far.push(b);
    }
  }
  from.push(near.length);
  return {
    points: Float64Array.from(points),
    from: Int32Array.from(from),
    near: Int32Array.from(near),
    far: Int32Array.from(far),
  };
}

/** The last point at or before a place. */
export function pointAt({ points }: Grid, place: number): number {
  let [low, high] = [0, points.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((points[middle] as number) <= place) low = middle;
    else high = middle - 1;
  }
  return low;
}
