/**
 * The most valuable way to cut one bin from edge to edge, each part as often as it goes in (Gilmore and Gomory 1966): over all pieces whose sides
 * are sums of parts, reduced to those that can matter (Scheithauer and Terno 1996).
 */

export interface Valued {
  readonly ways: readonly { readonly width: number; readonly length: number }[];
}

export interface Patterns {
  /** How much work one call of `best` is. */
  readonly effort: number;
  /** The greatest value, and how often it takes each kind. Values are not below zero. */
  best(values: ArrayLike<number>): { readonly value: number; readonly counts: Int32Array };
}

export function patternsOf(kinds: readonly Valued[], width: number, length: number): Patterns | null {
  const xs = raster(
    kinds.flatMap(({ ways }) => ways.map((way) => way.width)),
    width,
  );
  const ys = raster(
    kinds.flatMap(({ ways }) => ways.map((way) => way.length)),
    length,
  );
  if (xs === null || ys === null) return null;
  const [nx, ny] = [xs.length, ys.length];
  const below =
    (list: readonly number[]) =>
    (size: number): number => {
      let [low, high] = [0, list.length];
      while (low < high) {
        const middle = (low + high) >> 1;
        if ((list[middle] as number) <= size) low = middle + 1;
        else high = middle;
      }
      return low - 1;
    };
  const rests = (list: readonly number[]): readonly Int32Array[] => {
    const at = below(list);
    return list.map((size, i) => Int32Array.from({ length: i + 1 }, (_, k) => at(size - (list[k] as number))));
  };
  const [restX, restY] = [rests(xs), rests(ys)];
  const [value, choice] = [new Float64Array(nx * ny), new Int32Array(nx * ny)];
  const ways = kinds.flatMap((kind, k) =>
    kind.ways.map((way) => ({ k, x: above(xs, way.width), y: above(ys, way.length) })),
  );

  return {
    effort: nx * ny * (nx + ny),
    best(values) {
      value.fill(0);
      choice.fill(NOTHING);
      for (const { k, x, y } of ways) {
        const worth = values[k] as number;
        if (x >= nx || y >= ny || worth <= (value[x * ny + y] as number)) continue;
        value[x * ny + y] = worth;
        choice[x * ny + y] = k;
      }
      for (let x = 0; x < nx; x += 1)
        for (let y = 0; y < ny; y += 1) {
          const here = x * ny + y;
          let best = value[here] as number;
          let chosen = choice[here] as number;
          // A smaller piece does as well.
          if (x > 0 && (value[here - ny] as number) >= best) {
            best = value[here - ny] as number;
            chosen = LESS_WIDE;
          }
          if (y > 0 && (value[here - 1] as number) > best) {
            best = value[here - 1] as number;
            chosen = LESS_LONG;
          }
          const [rx, ry] = [restX[x] as Int32Array, restY[y] as Int32Array];
          for (let k = 0; k < x; k += 1) {
            const rest = rx[k] as number;
            if (rest < k) break;
            const sum = (value[k * ny + y] as number) + (value[rest * ny + y] as number);
            if (sum > best) {
              best = sum;
              chosen = CUTS - 2 * k;
            }
          }
          const row = x * ny;
          for (let k = 0; k < y; k += 1) {
            const rest = ry[k] as number;
            if (rest < k) break;
            const sum = (value[row + k] as number) + (value[row + rest] as number);
            if (sum > best) {
              best = sum;
              chosen = CUTS - 2 * k - 1;
            }
          }
          value[here] = best;
          choice[here] = chosen;
        }
      const counts = new Int32Array(kinds.length);
      const jobs: number[] = [nx * ny - 1];
      for (let job = jobs.pop(); job !== undefined; job = jobs.pop()) {
        const chosen = choice[job] as number;
        const [x, y] = [Math.floor(job / ny), job % ny];
        if (chosen >= 0) counts[chosen] = (counts[chosen] as number) + 1;
        else if (chosen === LESS_WIDE) jobs.push(job - ny);
        else if (chosen === LESS_LONG) jobs.push(job - 1);
        else if (chosen <= CUTS) {
          const k = (CUTS - chosen) >> 1;
          if ((CUTS - chosen) % 2 === 0) jobs.push(k * ny + y, ((restX[x] as Int32Array)[k] as number) * ny + y);
          else jobs.push(x * ny + k, x * ny + ((restY[y] as Int32Array)[k] as number));
        }
      }
      return { value: value[nx * ny - 1] as number, counts };
    },
  };
}

const [NOTHING, LESS_WIDE, LESS_LONG, CUTS] = [-1, -2, -3, -4];

/** More sides than this would take too long. */
const MOST_SIDES = 420;

/** Sums of sizes up to the whole, reduced; the whole is the last. Null where there are too many. */
function raster(sizes: readonly number[], whole: number): readonly number[] | null {
  const distinct = [...new Set(sizes)].filter((size) => size <= whole).sort((a, b) => a - b);
  const sums = new Set([0]);
  for (const size of distinct) {
    for (const sum of [...sums].sort((a, b) => a - b))
      for (let next = sum + size; next <= whole && !sums.has(next); next += size) sums.add(next);
    if (sums.size > 40 * MOST_SIDES) return null;
  }
  const sorted = [...sums].sort((a, b) => a - b);
  const largest = (most: number): number => {
    let [low, high] = [0, sorted.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((sorted[middle] as number) <= most) low = middle + 1;
      else high = middle;
    }
    return sorted[low - 1] ?? 0;
  };
  const reduced = [...new Set(sorted.map((sum) => largest(whole - sum)))]
    .filter((size) => size > 0)
    .sort((a, b) => a - b);
  if (reduced.length > MOST_SIDES) return null;
  return reduced.at(-1) === whole ? reduced : [...reduced, whole];
}

/** The first side that is at least so long. */
function above(list: readonly number[], size: number): number {
  const found = list.findIndex((each) => each >= size);
  return found < 0 ? list.length : found;
}
