/** Parts that fill a room which is there without them: they bring neither side of it to its place, and go in when both stand. */
import { type AxisIndex, indexOf } from "../../design/space.ts";
import type { Design, Part } from "../../design.ts";
import { isNear, SIZES, tightIn } from "../tight.ts";
import { components, type Halves, type Link, LOOSE, linksOf } from "./links.ts";

/** By their places in the source. */
export interface Filler {
  readonly part: number;
  /** What it is fastened to at both ends. */
  readonly sides: readonly number[];
}

interface Known {
  readonly parts: readonly Part[];
  readonly fixed: readonly Link[];
  readonly fast: readonly Link[];
}

/**
 * Those fastened at both ends between two parts, each of which is itself fixed, on its far side, to what holds fast together without all three:
 * a rail between two ends that are screwed against the shelves of a table. The shelves say how far apart the ends are, not the rail.
 */
export function fillersOf({ parts, joints }: Pick<Design, "parts" | "joints">): readonly Filler[] {
  const linked = (kept: typeof joints): readonly Link[] => linksOf({ parts, joints: kept });
  const known: Known = {
    parts,
    fixed: linked(joints.filter(({ kind }) => kind === "fixed")),
    fast: linked(joints.filter(({ kind }) => !LOOSE.includes(kind))),
  };
  return parts.flatMap((_, part) => {
    const sides = sidesOf(known, part);
    return sides ? [{ part, sides }] : [];
  });
}

/** Whether a half brings one of its sides to a filler that stands already. */
export const shuts = ({ part, sides }: Filler, { moving, staying }: Halves): boolean =>
  staying.includes(part) && sides.some((side) => moving.includes(side));

function sidesOf(known: Known, place: number): readonly number[] | null {
  const { parts, fixed } = known;
  const part = parts[place];
  if (!part || part.turned) return null;
  const mates = fixed
    .flatMap(({ ends }) => (ends.includes(place) ? ends.filter((end) => end !== place) : []))
    .flatMap((i) => (parts[i]?.turned ? [] : (parts[i] ?? [])));
  for (const size of SIZES) {
    const between = tightIn(part, size, mates);
    const sides = between?.parts.map((id) => parts.findIndex((each) => each.id === id)) ?? [];
    if (between && isStopped(known, [place, ...sides], indexOf(part.axes[size]))) return sides;
  }
  return null;
}

/** Whether both sides of a room are fixed, on their far sides, to what stands without them. */
function isStopped({ parts, fixed, fast }: Known, own: readonly number[], axis: AxisIndex): boolean {
  const [, low, high] = own;
  const stops = (side: number | undefined, isHigh: boolean): readonly number[] =>
    fixed.flatMap(({ ends: [joined, stop] }) => {
      const [it, to] = [parts[joined], parts[stop]];
      // What is joined to the side afterwards, as a base is, does not stop it.
      if (joined !== side || !it || !to || own.includes(stop)) return [];
      const [end, begin] = isHigh ? [it.body.high, to.body.low] : [it.body.low, to.body.high];
      return isNear(end[axis], begin[axis]) ? [stop] : [];
    });
  const [below, above] = [stops(low, false), stops(high, true)];
  if (below.length === 0 || above.length === 0) return false;
  const rest = parts.flatMap((_, i) => (own.includes(i) ? [] : [i]));
  return components(rest, fast).some(
    (body) => below.some((i) => body.includes(i)) && above.some((i) => body.includes(i)),
  );
}
