/** A long part is drawn broken (ISO 128-3): stretches along which nothing changes are drawn short. */

/** From places along the part to points on the page, from 0; and where it is broken. */
export interface Squeezed {
  readonly width: number;
  readonly place: (u: number) => number;
  readonly breaks: readonly number[];
  /** What lies there is left out. */
  readonly hides: (u: number) => boolean;
}

/** What is left of a stretch that is shortened, in points; shorter ones are drawn whole. */
interface Stretch {
  readonly left: number;
  readonly worth: number;
}
const USUAL: Stretch = { left: 44, worth: 90 };
/** Of a part that is so many times as long as it is wide, of which nothing would be seen else. */
const SLENDER: Stretch = { left: 26, worth: 52 };
/** Of a part that does not go in. */
const LEAST: Stretch = { left: 18, worth: 36 };
const MUCH_LONGER = 5;
/** Of more breaks nothing of the part would be left; the longest stretches are broken. */
const MOST_BREAKS = 2;

/** `low` to `high` at a scale, whole. */
export const whole = (low: number, high: number, scale: number): Squeezed => ({
  width: (high - low) * scale,
  place: (u) => (u - low) * scale,
  breaks: [],
  hides: () => false,
});

/** The same with its plain stretches drawn short, and shorter where it is no wider than `room` only by that. `wide`: across the part; `kept`: what is drawn whole; `filled`: so wide where there are gaps, in points. */
export function squeezed(
  low: number,
  high: number,
  wide: number,
  scale: number,
  kept: readonly (readonly [number, number])[],
  { room, filled }: { readonly room: number; readonly filled: number } = { room: Number.POSITIVE_INFINITY, filled: 0 },
): Squeezed {
  const usual = high - low > MUCH_LONGER * wide ? SLENDER : USUAL;
  const made = [usual, SLENDER, LEAST].map((stretch) => shortened(low, high, scale, kept, stretch));
  const cuts = made.find((each) => drawn(low, high, scale, each).width <= room) ?? made.at(-1) ?? [];
  return drawn(low, high, scale, widened(cuts, scale, filled - drawn(low, high, scale, cuts).width));
}

/** What is left out, along the part. */
interface Gap {
  readonly from: number;
  readonly to: number;
}

/** A gap leaves out no less than this, in points. */
const HIDDEN = 24;

/** Where there is room more of a part is drawn, so that it looks as slender as it is: `spare` points, the same beside each gap. */
function widened(cuts: readonly Gap[], scale: number, spare: number): readonly Gap[] {
  if (spare <= 0 || cuts.length === 0) return cuts;
  const each = spare / cuts.length / 2 / scale;
  return cuts.map(({ from, to }) => {
    const by = Math.max(0, Math.min(each, (to - from - HIDDEN / scale) / 2));
    return { from: from + by, to: to - by };
  });
}

function drawn(low: number, high: number, scale: number, cuts: readonly Gap[]): Squeezed {
  const place = (u: number): number =>
    (u - low - cuts.reduce((sum, { from, to }) => sum + Math.max(0, Math.min(u, to) - from), 0)) * scale;
  const hides = (u: number): boolean => cuts.some(({ from, to }) => u > from && u < to);
  return { width: place(high), place, breaks: cuts.map(({ from }) => place(from)), hides };
}

function shortened(
  low: number,
  high: number,
  scale: number,
  kept: readonly (readonly [number, number])[],
  { left, worth }: Stretch,
): readonly Gap[] {
  const all: Gap[] = [];
  let end = low;
  for (const [from, to] of [...kept, [high, high] as const].sort((a, b) => a[0] - b[0])) {
    if ((from - end) * scale > worth) {
      const middle = (from + end) / 2;
      const half = (from - end) / 2 - left / 2 / scale;
      all.push({ from: middle - half, to: middle + half });
    }
    end = Math.max(end, to);
  }
  return all
    .sort((a, b) => b.to - b.from - (a.to - a.from) || a.from - b.from)
    .slice(0, MOST_BREAKS)
    .sort((a, b) => a.from - b.from);
}
