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
import { BODY, CORNER, isShape } from "./recognised.ts";
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
  /** Ids of the parts whose marks stand in the circle, where there is room; absent: none. */
  readonly parts?: readonly string[];
}

/** In points: what is thinner on paper is not seen well, and is drawn at least so thick. */
const THIN = 7;
const CLEAR = 16;
/** Where more of a joint goes into the circle so, it is drawn at least so thick, and so many times as large. */
const LEAST = { thick: 9, times: 2 } as const;
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
  /** Those of them that are cut on each part, where some are: of each a corner is seen. */
  readonly own: readonly (readonly Segment[])[];
  /** Smallest first. */
  readonly size: number;
  /** The most first. */
  readonly times: readonly number[];
}

/** Hardware first, then the thinnest joint that is put together here for the first time, where it is seen and there is room; else null. */
export function detailOf(build: Build, scene: Scene, shown: Shown, told: ReadonlySet<string>): Detail | null {
  const all = [...hardwareOf(scene, shown), ...jointsOf(build, scene, shown)].filter(({ method }) => !told.has(method));
  for (const candidate of all) {
    for (const whole of WHOLE) {
      for (const times of candidate.times) {
        for (const radius of RADII) {
          const at = clearest(candidate, whole, radius / times, shown);
          const centre = at && freePlace(at, radius, times, shown);
          if (centre) return { method: candidate.method, at, centre, radius, times, parts: named(candidate) };
        }
      }
    }
  }
  return null;
}

/** How much of what is cut on each part is in the circle: most of mortise and tenon where that can be; of what is long, an end. */
const WHOLE = [0.75, 0] as const;

/** What is joined has its marks; hardware is told by its name beside the picture. */
const named = ({ parts }: Candidate): readonly string[] => (parts.length > 1 ? parts : []);

function hardwareOf({ items, hardware }: Scene, { view, fit, stage }: Shown): readonly Candidate[] {
  return items
    .filter(({ id }) => hardware.has(id))
    .flatMap(({ id, mark, solid, shift = [0, 0, 0] }): readonly Candidate[] => {
      const extent = extentOfItems([{ id, solid, shift }], view);
      const size = Math.max(widthOf(extent), heightOf(extent)) * fit.scale;
      if (size > SMALL || shareSeen({ id, solid, shift }, stage) < MOSTLY) return [];
      const edges = seenOf(realEdges(solid), shift, stage, fit);
      const times = [Math.min(MOST_TIMES, Math.ceil(FULL / size))];
      return [{ method: mark, parts: [id], edges, own: [], size, times }];
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
      const own = built.flatMap((part) => {
        const cut = part ? edgesFor(joint, part) : [];
        return part && cut.length > 0 ? [seenOf(cut, shiftOf(part.id), stage, fit)] : [];
      });
      const edges = [...own.flat(), ...seenOf(rods, STILL, stage, fit)];
      const size = Math.min(...built.map(thicknessOf)) * fit.scale;
      if (edges.length === 0 || size >= THIN) return [];
      return [
        {
          method,
          parts: fresh.has(a) ? [a, b] : [b, a],
          ...{ edges, own, size },
          times: timesFor(size),
        },
      ];
    })
    .sort((p, q) => p.size - q.size);
}

const STILL: Vec = [0, 0, 0];

/** For what is so thick on paper. */
function timesFor(size: number): readonly number[] {
  const most = Math.min(MOST_TIMES, Math.ceil(CLEAR / size));
  const least = Math.min(most, Math.max(LEAST.times, Math.ceil(LEAST.thick / size)));
  return Array.from({ length: most - least + 1 }, (_, i) => most - i);
}

const thicknessOf = (part: BuiltPart | undefined): number =>
  part
    ? Math.min(...([0, 1, 2] as const).map((i) => toNumber(subtract(part.body.high[i], part.body.low[i]))))
    : Number.POSITIVE_INFINITY;

/** So much of the circle is covered by each part, and at least so much of the joint's edges is in it, in radii: less shows no joint. */
const ALONE = 0.12;
const EDGES = 1.5;
/** And so much of each direction of the edges. */
const EACH = 0.2;
/** So many edges are looked at, the longest. */
const MOST = 40;

/** The spot round which most of the joint is seen, of each of its parts enough; null where that is nowhere. */
function clearest({ edges, own, parts }: Candidate, whole: number, radius: number, { faces, fit }: Shown): Spot | null {
  const some = [...edges].sort((p, q) => heading(...q).distance - heading(...p).distance).slice(0, MOST);
  const spots = some.flatMap(([p, q]): readonly Spot[] => [p, [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2], q]);
  let best: { readonly spot: Spot; readonly seen: number } | null = null;
  for (const spot of [...spots, ...between(own)]) {
    const inCircle = (all: readonly Segment[]): readonly Segment[] => all.flatMap((edge) => within(edge, spot, radius));
    const inside = inCircle(edges);
    const seen = lengthOf(inside);
    if (seen < EDGES * radius || (best && seen <= best.seen + 1e-9)) continue;
    if (!isShape(inside, BODY, EACH * radius)) continue;
    const tells = (each: readonly Segment[]): boolean => {
      const here = inCircle(each);
      return isShape(here, CORNER, EACH * radius) && lengthOf(here) >= whole * lengthOf(each);
    };
    if (!own.every(tells)) continue;
    if (parts.some((id) => shareOf(id, faces, fit, spot, radius) < ALONE)) continue;
    best = { spot, seen };
  }
  return best?.spot ?? null;
}

const lengthOf = (all: readonly Segment[]): number => all.reduce((sum, run) => sum + heading(...run).distance, 0);

/** Half way from what is cut on one part to what is cut on the other, where these stand apart. */
function between(own: readonly (readonly Segment[])[]): readonly Spot[] {
  const [one = [], other = []] = own.map((edges) => edges.flat().slice(0, MOST));
  return one.flatMap((p) => {
    const near = other.reduce<Spot | null>(
      (best, q) => (best && heading(p, best).distance <= heading(p, q).distance ? best : q),
      null,
    );
    return near ? [[(p[0] + near[0]) / 2, (p[1] + near[1]) / 2] as const] : [];
  });
}
