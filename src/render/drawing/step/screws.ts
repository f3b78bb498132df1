/** Screws, nails and dowels, drawn where they go: pulled out along their axis, with a ring at the mouth of the hole. */
import { type Stage, stretch } from "../../../geometry/picture/index.ts";
import type { Point2, Solid, Vec } from "../../../geometry/types.ts";
import { dot, minus, plus, times } from "../../../geometry/vec.ts";
import type { Fastener } from "../../../solve/build.ts";
import { NAILS } from "../../../solve/design/fastening/catalogue.ts";
import type { Hole } from "../../../solve/design.ts";
import { toNumber } from "../../../units/index.ts";
import type { Item, Stroke } from "../../document.ts";
import { BLACK, TINT, WHITE } from "../../palette.ts";
import { circle } from "../../shapes.ts";
import type { Fit } from "../fit.ts";
import { heading, onPage, strokes } from "../ink.ts";
import { boxAround, type Plate, type Segment } from "../plate.ts";
import { CHAIN, HIDDEN } from "../strokes.ts";

/** A fastener in space as the picture shows it; units of 1/16 µm. */
export interface Driven {
  readonly id: string;
  /** Where the axis leaves the wood on the head's side. */
  readonly mouth: Vec;
  /** Unit vector, head to point. */
  readonly direction: Vec;
  readonly head: Vec;
  readonly point: Vec;
  readonly rod: number;
  readonly headWidth: number;
  readonly isDowel: boolean;
  /** Round wood that is driven in: it has no head and no point. */
  readonly isPeg?: boolean;
  /** One of many nails: only where it goes in is drawn. */
  readonly isOneOfMany?: boolean;
  /** It is no round rod, and drawn as what it is, so far from its place. */
  readonly off?: Vec;
}

/** More nails than this would hide what they are driven into. */
const FEW = 8;

/** Ids of the nails of a step, where there are many. */
export function manyNails(fasteners: readonly Fastener[]): ReadonlySet<string> {
  const nails = fasteners.filter(({ kind }) => NAILS.has(kind));
  return new Set(nails.length > FEW ? nails.map(({ id }) => id) : []);
}

/** Screws nearer to one another on the page than this, and beside one another than that, in points, are a tangle where there are many: every other is only a ring. */
const TANGLED = 16;
const BESIDE = 9;

/** Ids of those of which only the mouth is drawn, a ring: each stands near to one that is drawn whole. */
export function onlyRings(all: readonly Driven[], spot: (p: Vec) => Point2): ReadonlySet<string> {
  const screws = all.filter(({ isDowel, isOneOfMany, off }) => !isDowel && !isOneOfMany && !off);
  if (screws.length <= FEW) return new Set();
  const whole: Point2[] = [];
  const rings = new Set<string>();
  for (const { id, mouth, head } of screws) {
    const at = spot(mouth);
    const { along: way } = heading(spot(head), at);
    const isNear = (each: Point2): boolean => {
      const { along, distance } = heading(each, at);
      return distance < TANGLED && distance * Math.abs(along[0] * way[1] - along[1] * way[0]) < BESIDE;
    };
    if (whole.some(isNear)) rings.add(id);
    else whole.push(at);
  }
  return rings;
}

/** `solidOf` and `shiftOf` tell of the parts of the picture; `gap` is between the point and the hole. */
export function driven(
  fastener: Fastener,
  solidOf: (id: string) => Solid | undefined,
  shiftOf: (id: string) => Vec,
  gap: number,
): Driven {
  const { id, kind, direction, travelsWith, through, body } = fastener;
  const carrier = travelsWith ?? through[0] ?? fastener.into;
  const at: Vec = [toNumber(fastener.head.at[0]), toNumber(fastener.head.at[1]), toNumber(fastener.head.at[2])];
  const isDowel = kind !== "key" && travelsWith !== null;
  const out = isDowel ? 0 : wayOut(solidOf(carrier), at, times(direction, -1));
  const mouth = plus(plus(at, times(direction, -out)), shiftOf(carrier));
  const length = toNumber(fastener.length);
  const head = isDowel ? mouth : plus(mouth, times(direction, -(gap + length)));
  return {
    id,
    mouth,
    direction,
    head,
    point: plus(head, times(direction, length)),
    rod: toNumber(fastener.rod),
    headWidth: toNumber(fastener.head.diameter),
    isDowel,
    ...(kind === "peg" && { isPeg: true }),
    ...(body && travelsWith === null && { off: minus(head, at) }),
  };
}

/** Hardware of which only a hole is known: a screw that goes in there. */
export function sunkIn({ for: id, at, direction, stages }: Hole, shift: Vec, gap: number): Driven {
  const mouth = plus([toNumber(at[0]), toNumber(at[1]), toNumber(at[2])], shift);
  const [wide, deep] = (["diameter", "depth"] as const).map((of) => stages.map((stage) => toNumber(stage[of])));
  const length = Math.max(...(deep ?? []));
  const head = plus(mouth, times(direction, -(gap + length)));
  return {
    ...{ id: id ?? "", mouth, direction, head, point: plus(head, times(direction, length)) },
    ...{ rod: Math.min(...(wide ?? [])), headWidth: Math.max(...(wide ?? [])), isDowel: false },
  };
}

/** How far a ray that starts in the solid, or on it, runs through wood. */
function wayOut(solid: Solid | undefined, from: Vec, along: Vec): number {
  const runs = (solid?.pieces ?? []).flatMap(({ faces }): (readonly [number, number])[] => {
    let [enter, leave] = [-Infinity, Infinity];
    for (const { plane } of faces) {
      const rate = dot([plane.a, plane.b, plane.c], along);
      const inside = plane.d - dot([plane.a, plane.b, plane.c], from);
      if (Math.abs(rate) < 1e-9 * plane.norm) {
        if (inside < 0) return [];
      } else if (rate > 0) leave = Math.min(leave, inside / rate);
      else enter = Math.max(enter, inside / rate);
    }
    return enter < leave ? [[enter, leave]] : [];
  });
  let out = 0;
  for (const [enter, leave] of runs.sort((a, b) => a[0] - b[0])) if (enter <= out + 16) out = Math.max(out, leave);
  return out;
}

/** Points that the picture must leave room for. */
export const reachOf = ({ head, mouth, point, isDowel, isOneOfMany }: Driven): readonly Vec[] =>
  isOneOfMany ? [mouth] : [head, isDowel ? point : mouth];

/** Half the size of the cross for one of many nails, in points. */
const CROSS = 1.6;
const NAIL: Stroke = { width: 0.6, ink: BLACK };

/** A cross in the face that it is driven into; nothing where that is not seen. */
function crossed({ mouth, direction }: Driven, stage: Stage, fit: Fit, plate: Plate): readonly Item[] {
  if (stage.hides(plus(mouth, times(direction, -32)))) return [];
  const [x, y] = fit.spot(stage.view, mouth);
  plate.addBox(boxAround(x, y, 2 * CROSS, 2 * CROSS));
  const arm = (side: number): Segment => [
    [x - CROSS, y - side * CROSS],
    [x + CROSS, y + side * CROSS],
  ];
  return strokes([arm(1), arm(-1)], NAIL);
}

/** Nothing where the mouth is not seen. */
function ringed({ mouth, direction }: Driven, stage: Stage, fit: Fit, plate: Plate): readonly Item[] {
  if (stage.hides(plus(mouth, times(direction, -32)))) return [];
  const [x, y] = fit.spot(stage.view, mouth);
  plate.addBox(boxAround(x, y, 2 * CROSS, 2 * CROSS));
  return [circle(x, y, CROSS, { stroke: NAIL, fill: WHITE })];
}

/** `isRing`: only where it goes in. */
export function drawDriven(one: Driven, stage: Stage, fit: Fit, plate: Plate, isRing = false): readonly Item[] {
  if (isRing) return ringed(one, stage, fit, plate);
  if (one.isOneOfMany) return crossed(one, stage, fit, plate);
  const spot = (p: Vec) => fit.spot(stage.view, p);
  const [head, point, mouth] = [spot(one.head), spot(one.point), spot(one.mouth)];
  const shank: Stroke = { width: Math.max(1.1, one.rod * fit.scale), ink: BLACK };
  const body = looked(stage, one.head, one.point, fit);
  if (one.isDowel) {
    for (const segment of body.seen) plate.addLine(segment);
    return rodsOf(one, stage, fit).flatMap(({ lines, stroke }) => strokes(lines, stroke));
  }
  if (one.off) return slipped(one, stage, fit, plate);
  for (const segment of [...body.seen, [point, mouth] as const]) plate.addLine(segment);
  plate.addBox(boxAround(mouth[0], mouth[1], 5, 5));
  plate.addBox(boxAround(head[0], head[1], 6, 6));
  const { along } = heading(head, point);
  const half = Math.max(2.4, (one.headWidth / 2) * fit.scale);
  const bar: Segment = [
    [head[0] - along[1] * half, head[1] + along[0] * half],
    [head[0] + along[1] * half, head[1] - along[0] * half],
  ];
  const headSeen = !stage.hides(one.head);
  const ring = Math.max(1.6, half * 0.75);
  const axis = looked(stage, one.point, one.mouth, fit);
  return [
    ...(stage.hides(plus(one.mouth, times(one.direction, -32)))
      ? []
      : [circle(mouth[0], mouth[1], ring, { stroke: { width: 0.6, ink: BLACK }, fill: WHITE })]),
    ...strokes(axis.seen, CHAIN),
    ...(one.isPeg ? rodsOf(one, stage, fit).flatMap(({ lines, stroke }) => strokes(lines, stroke)) : []),
    ...(one.isPeg ? [] : shankOf(body, headSeen ? [bar] : [], shank)),
  ];
}

/** A dash of a screw of which nothing is seen, too short to tell what it is; in points. */
const STRAY = 14;

const isStray = ({
  seen,
  hidden,
}: {
  readonly seen: readonly Segment[];
  readonly hidden: readonly Segment[];
}): boolean => seen.length === 0 && hidden.reduce((sum, [a, b]) => sum + heading(a, b).distance, 0) < STRAY;

/** A shank with its head; white round it, so that it stands before what it crosses. */
function shankOf(
  body: { readonly seen: readonly Segment[]; readonly hidden: readonly Segment[] },
  head: readonly Segment[],
  shank: Stroke,
): readonly Item[] {
  return [
    ...strokes(body.seen, { width: shank.width + 1.6, ink: WHITE }),
    ...strokes(body.seen, shank),
    ...strokes(isStray(body) ? [] : body.hidden, HIDDEN),
    ...strokes(head, { width: 1.5, ink: BLACK }),
  ];
}

/** The way of a slip of wood into its slot; the slip is among what is drawn. */
function slipped({ point, mouth }: Driven, stage: Stage, fit: Fit, plate: Plate): readonly Item[] {
  const { seen } = looked(stage, point, mouth, fit);
  for (const segment of seen) plate.addLine(segment);
  return strokes(seen, CHAIN);
}

/** What is seen of a dowel: round wood that stands out of a part; in a picture so many times larger the lines are drawn where they are in this one. */
export function rodsOf(
  one: Driven,
  stage: Stage,
  fit: Fit,
  larger = 1,
): readonly { readonly lines: readonly Segment[]; readonly stroke: Stroke }[] {
  const { seen } = looked(stage, one.head, one.point, fit);
  const thick = Math.max(2, one.rod * fit.scale * larger);
  return [
    { lines: seen, stroke: { width: thick, ink: BLACK } },
    { lines: seen, stroke: { width: thick - 1, ink: TINT.light } },
  ];
}

function looked(stage: Stage, from: Vec, to: Vec, fit: Fit): { seen: Segment[]; hidden: Segment[] } {
  const { seen, hidden } = stage.look(from, to);
  const place = (run: readonly [number, number]): readonly [Point2, Point2] => stretch(stage.view, from, to, run);
  return { seen: onPage(fit, seen.map(place)), hidden: onPage(fit, hidden.map(place)) };
}
