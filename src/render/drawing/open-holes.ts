/** Holes that stay open in the finished piece, for air, a cable or a finger: the rims that are seen. */
import { circlePoint } from "../../geometry/angle.ts";
import { type Stage, stretch } from "../../geometry/picture/index.ts";
import type { Point2, Vec } from "../../geometry/types.ts";
import { cross, dot, norm, plus, times } from "../../geometry/vec.ts";
import type { Build } from "../../solve/build.ts";
import type { Hole } from "../../solve/design.ts";
import { toNumber } from "../../units/index.ts";
import { toVec } from "./feature-box.ts";

const SIDES = 32;
/** A rim is looked at so far off its face, that the face does not hide it: 0.1 mm in units of 1/16 µm. */
const OFF = 1600;

/** Runs in the plane of view; `shiftOf` tells how far off its place a part is drawn, null where it is not drawn. */
export function openHoles(
  holes: Build["holes"],
  stage: Stage,
  shiftOf: (part: string) => Vec | null,
): readonly (readonly [Point2, Point2])[] {
  return holes.flatMap((hole) => {
    const shift = hole.for === null ? shiftOf(hole.part) : null;
    if (shift === null) return [];
    return rimsOf(hole).flatMap(({ points, out }) => {
      if (dot(out, stage.view.towards) <= 0) return [];
      const placed = points.map((p) => plus(plus(p, shift), times(out, OFF)));
      return placed.flatMap((p, i) => {
        const q = placed[(i + 1) % placed.length] ?? p;
        return stage.look(p, q).seen.map((run) => stretch(stage.view, p, q, run));
      });
    });
  });
}

/** The rim at the mouth, and of a hole right through that where it comes out. */
function rimsOf({
  at,
  direction,
  stages,
  through,
  slot,
}: Hole): readonly { readonly points: readonly Vec[]; readonly out: Vec }[] {
  const [first, last] = [stages[0], stages.at(-1)];
  if (!first || !last) return [];
  const into = times(direction, 1 / norm(direction));
  const long = slot ? toNumber(slot.length) : 0;
  // Across the hole: along the slot, else any way.
  const flattest = ([0, 1, 2] as const).reduce((a, b) => (Math.abs(into[b]) < Math.abs(into[a]) ? b : a));
  const along = slot?.along ?? [0, 1, 2].map((i) => (i === flattest ? 1 : 0));
  const v = cross(into, along as unknown as Vec);
  const w = times(v, 1 / norm(v));
  const u = cross(w, into);
  const rim = (middle: Vec, diameter: number): readonly Vec[] =>
    Array.from({ length: SIDES }, (_, i) => {
      const [x, y] = circlePoint(2 * i + 1, 2 * SIDES);
      const aside = (Math.sign(x) * Math.max(0, long - diameter)) / 2;
      return plus(middle, plus(times(u, (x * diameter) / 2 + aside), times(w, (y * diameter) / 2)));
    });
  const deepest = Math.max(...stages.map(({ depth }) => toNumber(depth)));
  return [
    { points: rim(toVec(at), toNumber(first.diameter)), out: times(into, -1) },
    ...(through ? [{ points: rim(plus(toVec(at), times(into, deepest)), toNumber(last.diameter)), out: into }] : []),
  ];
}
