/** A joint, or hardware, that a step's picture shows too small: the same picture around it, some times larger, in a circle beside it. */
import { realEdges, type Stage, type View } from "../../../geometry/picture/index.ts";
import type { Edge, Vec, VisibleFace } from "../../../geometry/types.ts";
import type { Build, BuiltPart } from "../../../solve/build.ts";
import { subtract, toNumber } from "../../../units/index.ts";
import type { Spot } from "../drawing.ts";
import { extentOfItems, type Fit, heightOf, widthOf } from "../fit.ts";
import { heading } from "../ink.ts";
import type { Plate, Segment } from "../plate.ts";
import { shareSeen } from "../visibility.ts";
import { within } from "./circle.ts";
import { freePlace } from "./free-place.ts";
import { edgesFor, seenOf } from "./joint-edges.ts";
import { BODY, isShape } from "./recognised.ts";
import type { Scene } from "./scene.ts";
import { shareOf } from "./share.ts";

export interface Detail {
  /** Joints of one method, and hardware of one kind, are shown close once in a plan. */
  readonly method: string;
  /** What is shown close, and the middle of the circle that shows it. */
  readonly at: Spot;
  readonly centre: Spot;
  readonly radius: number;
  readonly times: number;
}

/** In points: what is thinner on paper is not seen well, and is drawn at least so thick. */
const THIN = 7;
const CLEAR = 16;
/** Hardware no larger than this on paper is drawn so large. */
const SMALL = 18;
const FULL = 44;
const MOST_TIMES = 8;
/** Hardware that something hides more of is not known again. */
const MOSTLY = 0.6;
const RADII = [42, 34, 28] as const;

/** The picture so far. */
export interface Shown {
  readonly view: View;
  readonly fit: Fit;
  readonly plate: Plate;
  readonly stage: Stage;
  readonly ground: (spot: Spot) => number;
  readonly faces: readonly VisibleFace[];
}

interface Candidate {
  readonly method: string;
  /** What has to be seen in the circle, the new first. */
  readonly parts: readonly string[];
  /** The edges by which it is known, as they are seen on the page. */
  readonly edges: readonly Segment[];
  /** Smallest first. */
  readonly size: number;
  readonly times: number;
}

/** Hardware first, then the thinnest joint that is put together here for the first time, where it is seen and there is room; else null. */
export function detailOf(build: Build, scene: Scene, shown: Shown, told: ReadonlySet<string>): Detail | null {
  const all = [...hardwareOf(scene, shown), ...jointsOf(build, scene, shown)].filter(({ method }) => !told.has(method));
  for (const { method, parts, edges, times } of all) {
    for (const radius of RADII) {
      const at = clearest(edges, parts, radius / times, shown);
      const centre = at && freePlace(at, radius, times, shown);
      if (centre) return { method, at, centre, radius, times };
    }
  }
  return null;
}

function hardwareOf({ items, hardware }: Scene, { view, fit, stage }: Shown): readonly Candidate[] {
  return items
    .filter(({ id }) => hardware.has(id))
    .flatMap(({ id, mark, solid, shift = [0, 0, 0] }): readonly Candidate[] => {
      const extent = extentOfItems([{ id, solid, shift }], view);
      const size = Math.max(widthOf(extent), heightOf(extent)) * fit.scale;
      if (size > SMALL || shareSeen({ id, solid, shift }, stage) < MOSTLY) return [];
      const edges = seenOf(realEdges(solid), shift, stage, fit);
      return [{ method: mark, parts: [id], edges, size, times: Math.min(MOST_TIMES, Math.ceil(FULL / size)) }];
    });
}

function jointsOf(
  build: Build,
  { fresh, shifts, items, screws, groups }: Scene,
  { fit, stage }: Shown,
): readonly Candidate[] {
  const here = new Set(items.map(({ id }) => id));
  const shiftOf = (id: string): Vec => shifts.get(id) ?? STILL;
  const pegs = new Map(screws.map((screw) => [screw.id, screw]));
  return build.joints
    .flatMap((joint): readonly Candidate[] => {
      const { parts, method, kind, fasteners } = joint;
      const [a, b] = parts;
      if ((kind !== "fixed" && kind !== "floating") || !here.has(a) || !here.has(b) || fresh.has(a) === fresh.has(b))
        return [];
      // What travels together is joined already.
      if (groups.some(({ parts: moving }) => moving.includes(a) && moving.includes(b))) return [];
      const built = parts.map((each) => build.parts.find((part) => part.id === each));
      const rods = fasteners.flatMap((each): readonly Edge[] => {
        const peg = pegs.get(each);
        return peg?.isDowel ? [{ from: peg.head, to: peg.point }] : [];
      });
      const edges = [
        ...built.flatMap((part) => (part ? seenOf(edgesFor(joint, part), shiftOf(part.id), stage, fit) : [])),
        ...seenOf(rods, STILL, stage, fit),
      ];
      const size = Math.min(...built.map(thicknessOf)) * fit.scale;
      if (edges.length === 0 || size >= THIN) return [];
      return [
        {
          method,
          parts: fresh.has(a) ? [a, b] : [b, a],
          edges,
          size,
          times: Math.min(MOST_TIMES, Math.ceil(CLEAR / size)),
        },
      ];
    })
    .sort((p, q) => p.size - q.size);
}

const STILL: Vec = [0, 0, 0];

const thicknessOf = (part: BuiltPart | undefined): number =>
  part
    ? Math.min(...([0, 1, 2] as const).map((i) => toNumber(subtract(part.body.high[i], part.body.low[i]))))
    : Number.POSITIVE_INFINITY;

/** What is seen in the circle of the parts together, and of what is new alone; and at least so much of the joint's edges, in radii: less shows no joint. */
const BOTH = 0.3;
const ALONE = 0.12;
const EDGES = 1.5;
/** And so much of each direction of the edges. */
const EACH = 0.2;
/** So many edges are looked at, the longest. */
const MOST = 40;

/** The spot round which most of the joint is seen; null where it is seen nowhere. */
function clearest(
  edges: readonly Segment[],
  parts: readonly string[],
  radius: number,
  { faces, fit }: Shown,
): Spot | null {
  const some = [...edges].sort((p, q) => heading(...q).distance - heading(...p).distance).slice(0, MOST);
  const spots = some.flatMap(([p, q]): readonly Spot[] => [p, [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2], q]);
  let best: { readonly spot: Spot; readonly worth: number } | null = null;
  for (const spot of spots) {
    const inside = edges.flatMap((edge) => within(edge, spot, radius));
    const seen = inside.reduce((sum, run) => sum + heading(...run).distance, 0);
    if (seen < EDGES * radius || !isShape(inside, BODY, EACH * radius)) continue;
    const shares = parts.map((id) => shareOf(id, faces, fit, spot, radius));
    const together = shares.reduce((sum, share) => sum + share, 0);
    const hasNew = (shares[0] ?? 0) >= ALONE;
    if (parts.length > 1 ? together < BOTH : !hasNew) continue;
    // Of what was there before less is known again: it has no tone.
    const worth = seen + (hasNew ? edges.length * 4 * radius : 0);
    if (!best || worth > best.worth + 1e-9) best = { spot, worth };
  }
  return best?.spot ?? null;
}
