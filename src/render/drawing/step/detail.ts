/** A joint that a step's picture shows too small: the same picture around it, some times larger, in a circle beside it. */
import { nearness, type View } from "../../../geometry/picture/index.ts";
import type { Vec, VisibleFace } from "../../../geometry/types.ts";
import { plus, times } from "../../../geometry/vec.ts";
import type { Build } from "../../../solve/build.ts";
import { subtract, toNumber } from "../../../units/index.ts";
import type { Spot } from "../drawing.ts";
import type { Fit } from "../fit.ts";
import { boxAround, grown, type Plate } from "../plate.ts";
import type { Scene } from "./scene.ts";
import { shareOf } from "./share.ts";

export interface Detail {
  /** Joints of one method are shown close once in a plan. */
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
const MOST_TIMES = 8;
const RADII = [42, 34] as const;

/** The picture so far. */
export interface Shown {
  readonly view: View;
  readonly fit: Fit;
  readonly plate: Plate;
  readonly ground: (spot: Spot) => number;
  readonly faces: readonly VisibleFace[];
}

interface Candidate {
  readonly method: string;
  readonly parts: readonly [string, string];
  /** Places of the joint, the nearest to the eye first. */
  readonly places: readonly Vec[];
  readonly thick: number;
}

/** The thinnest joint that is put together here for the first time, where there is room for it; else null. */
export function detailOf(
  build: Build,
  { fresh, shifts, items }: Scene,
  { view, fit, plate, ground, faces }: Shown,
  told: ReadonlySet<string>,
): Detail | null {
  const here = new Set(items.map(({ id }) => id));
  const candidates = build.joints.flatMap(({ parts, method, contact, insertion, kind }): readonly Candidate[] => {
    const [a, b] = parts;
    if (
      (kind !== "fixed" && kind !== "floating") ||
      insertion === null ||
      told.has(method) ||
      !here.has(a) ||
      !here.has(b) ||
      fresh.has(a) === fresh.has(b)
    )
      return [];
    const [first, second] = [shifts.get(a) ?? STILL, shifts.get(b) ?? STILL];
    const ways = [times(plus(first, second), 0.5), first, second];
    const corners = contact.flatMap(({ polygons }) => polygons.flat());
    const nearest = [...corners].sort((p, q) => nearness(view, q) - nearness(view, p)).slice(0, CORNERS);
    const places = nearest.flatMap((corner) => ways.map((way) => plus(corner, way)));
    return [{ method, parts, places, thick: Math.min(thicknessOf(build, a), thicknessOf(build, b)) }];
  });
  for (const { method, parts, places, thick } of [...candidates].sort((p, q) => p.thick - q.thick)) {
    if (thick * fit.scale >= THIN) return null;
    const larger = Math.min(MOST_TIMES, Math.ceil(CLEAR / (thick * fit.scale)));
    const spots = places.map((place) => fit.spot(view, place));
    for (const radius of RADII) {
      const at = clearest(spots, (spot) => parts.map((id) => shareOf(id, faces, fit, spot, radius / larger)));
      const centre = at && freePlace(at, radius, larger, plate, ground);
      if (centre) return { method, at, centre, radius, times: larger };
    }
  }
  return null;
}

/** So many corners of a joint are looked at. */
const CORNERS = 12;
/** What is seen of each of the two parts in the circle, and of both: less shows no joint. */
const EACH = 0.1;
const BOTH = 0.4;

/** The spot round which most is seen of the part that shows less; null where no joint is seen anywhere. */
function clearest(spots: readonly Spot[], shares: (spot: Spot) => readonly number[]): Spot | null {
  let best: { readonly spot: Spot; readonly least: number } | null = null;
  for (const spot of spots) {
    const [a = 0, b = 0] = shares(spot);
    const least = Math.min(a, b);
    if (least < EACH || a + b < BOTH || (best && least <= best.least + 1e-9)) continue;
    best = { spot, least };
  }
  return best?.spot ?? null;
}

const STILL: Vec = [0, 0, 0];

const thicknessOf = ({ parts }: Build, id: string): number => {
  const body = parts.find((part) => part.id === id)?.body;
  return body ? Math.min(...([0, 1, 2] as const).map((i) => toNumber(subtract(body.high[i], body.low[i])))) : Infinity;
};

const STEP = 6;

/** The nearest place for a circle that covers nothing. */
function freePlace(
  at: Spot,
  radius: number,
  larger: number,
  plate: Plate,
  ground: (spot: Spot) => number,
): Spot | null {
  const { x, y, width, height } = plate.frame;
  let best: { readonly spot: Spot; readonly far: number } | null = null;
  for (let cx = x + radius + 1; cx <= x + width - radius - 1; cx += STEP)
    for (let cy = y + radius + 1; cy <= y + height - radius - 12; cy += STEP) {
      const far = Math.sqrt((cx - at[0]) * (cx - at[0]) + (cy - at[1]) * (cy - at[1]));
      if (far < radius * (1 + 1 / larger) + 6 || (best && far >= best.far)) continue;
      const box = { ...boxAround(cx, cy, 2 * radius, 2 * radius), bottom: cy + radius + 11 };
      if (!plate.isFree(grown(box, 0.5)) || plate.linesThrough(box) > 0) continue;
      if (SAMPLES.some(([dx, dy]) => ground([cx + dx * radius, cy + dy * radius]) > 0)) continue;
      best = { spot: [cx, cy], far };
    }
  return best?.spot ?? null;
}

const SAMPLES: readonly Spot[] = [-1, -0.5, 0, 0.5, 1].flatMap((dx) =>
  [-1, -0.5, 0, 0.5, 1].map((dy): Spot => [dx, dy]),
);
