/** The place of a fixing cut upright, seen along the wall: wood and wall in section, and what holds in the wall. */
import { picturePoint, type View, viewFrom } from "../../../../geometry/picture/index.ts";
import type { Solid, Vec } from "../../../../geometry/types.ts";
import { plus, times } from "../../../../geometry/vec.ts";
import type { Build } from "../../../../solve/build.ts";
import { toNumber, UNITS_PER_INCH } from "../../../../units/index.ts";
import type { Item, Stroke } from "../../../document.ts";
import { BLACK, METAL, TINT } from "../../../palette.ts";
import { rectangle } from "../../../shapes.ts";
import type { Frame } from "../../../style.ts";
import type { Label } from "../../balloon-places.ts";
import type { Pen, Spot } from "../../drawing.ts";
import { type Extent, extentOf, fitInto, widthOf } from "../../fit.ts";
import { fills, heading, onPage, strokes } from "../../ink.ts";
import { labels } from "../../labels.ts";
import { linesOf, tints } from "../../picture.ts";
import { placeBalloons } from "../../place-balloons.ts";
import { type Box, Plate, type Segment } from "../../plate.ts";
import { CHAIN, FINE, NARROW, OUTLINE } from "../../strokes.ts";
import { captionUnder, UNDER } from "../captions.ts";
import { segmentIn } from "../close-up.ts";
import type { Scene } from "../scene.ts";
import { cutOpen, outlinesOf } from "./cut-open.ts";
import { cutWall, namesInWall, uprights, type WallInSection } from "./cut-wall.ts";
import { around, intoWall, placeAt, STUD, type WallFixing } from "./fixing.ts";
import { packingIn } from "./packing.ts";
import { STRAP, type Strap, strapOf } from "./strap.ts";

/** Round what is to be seen: above and below, before it, and behind it. */
const AROUND = 2.2 * UNITS_PER_INCH;
const [BEFORE, BEHIND] = [2.6 * UNITS_PER_INCH, 0.3 * UNITS_PER_INCH];
/** More of what is hung there is seen. */
const HUNG = 4.5 * UNITS_PER_INCH;
const LARGEST = 20 / UNITS_PER_INCH;
/** In a lower picture there is room for the name of one bracket; in points. */
const LOW = 130;
const SHANK: Stroke = { width: 1.2, ink: BLACK };
const SMALL_SHANK: Stroke = { width: 0.8, ink: BLACK };
const HEAD: Stroke = { width: 2, ink: BLACK };
/** Half of a screw's head at least; in points, and in space. */
const [LEAST, HALF] = [2.6, 0.2 * UNITS_PER_INCH];

export function cutPicture(build: Build, scene: Scene, fixing: WallFixing, whole: Frame, pen: Pen): readonly Item[] {
  const frame = { ...whole, height: whole.height - UNDER };
  const { one, to, sign, along, wall, studs, kind } = fixing;
  const [own] = one.hardware;
  const { length, lining } = intoWall(fixing);
  const view = viewFrom("along the wall", placeAt(fixing, 1, 0, 0));
  const strap = kind === "strap" ? strapOf(fixing, one, around(build.parts).high[2]) : null;
  const at = vec(own.at.map(toNumber));
  const head = strap?.screwed ?? at;
  const tip = plus(head, placeAt(fixing, 0, sign * length, 0));
  const deep = studs === null ? Math.max(STUD.deep, (tip[to] - wall) * sign + AROUND / 2) : lining + STUD.deep;
  const end = placeAt(fixing, at[along], wall + sign * deep, head[2]);
  const extent = windowFor(view, [at, head, tip], end, strap ? BEFORE : HUNG, frame);
  const fit = fitInto(extent, frame, frame.width / widthOf(extent));
  const spot = (p: Vec): Spot => fit.spot(view, p);
  const { picture, faces, wood, later, metal } = cutOpen(build, scene, fixing, strap, { view, extent, fit });
  const band = (from: number, until: number): Box => {
    const [a, b] = [from, until].map((out) => spot(placeAt(fixing, at[along], wall + sign * out, 0))[0]);
    const [left, right] = [Math.min(a ?? 0, b ?? 0), Math.max(a ?? 0, b ?? 0)];
    return { left, right, top: frame.y, bottom: frame.y + frame.height };
  };
  const section: WallInSection = { lining: band(0, lining), behind: band(lining, deep), masonry: studs === null };
  const plate = new Plate(frame);
  const lines = linesOf(picture, fit, plate, () => true);
  const hung = onPage(fit, outlinesOf(later));
  const run = runOf(strap, view).flatMap((each) => onPage(fit, segmentIn(extent, each)));
  const bores = strap
    ? one.holes.map(({ at: mouth, direction, stages }): Segment => {
        const from = vec(mouth.map(toNumber));
        return [
          spot(from),
          spot(plus(from, times(direction, Math.max(...stages.map(({ depth }) => toNumber(depth)))))),
        ];
      })
    : [];
  const shank: Segment = [spot(head), spot(tip)];
  for (const each of [...run, ...bores, ...hung, shank]) plate.addLine(each);
  for (const each of [...uprights(section.lining), ...uprights(section.behind)]) plate.addLine(each);
  const names = namesInWall(section, shank, plate, pen);
  const fixed = scene.items.filter(({ id }) => id === one.part || one.through.includes(id));
  const packing = packingIn(fixing, fixed, plate, spot);
  return [
    ...cutWall(section),
    ...fills(
      wood.flatMap(({ polygons }) => polygons.map((polygon) => polygon.map(fit.page))),
      TINT.dark,
    ),
    ...tints(
      faces.filter(({ id }) => metal.has(id)),
      fit,
      view,
      METAL,
    ),
    ...strokes(hung, CHAIN),
    ...strokes(lines, FINE),
    ...strokes(onPage(fit, outlinesOf(wood)), OUTLINE),
    ...packing.items,
    ...strokes(bores, SMALL_SHANK),
    ...strokes([shank], SHANK),
    ...strokes([across(shank, Math.max(LEAST, HALF * fit.scale))], HEAD),
    ...strokes(run, STRAP),
    ...names,
    ...placeBalloons(
      [
        ...labels(fixed, faces, view, fit),
        ...packing.names,
        ...plasterName(kind, section.lining),
        ...(strap ? strapNames(strap, frame.height < LOW ? [] : [own.solid], run, spot) : []),
      ],
      plate,
      pen,
      () => 0,
    ),
    rectangle(frame.x, frame.y, frame.width, frame.height, { stroke: NARROW }),
    ...captionUnder([`Cut through ${fixing.fittings.length > 1 ? "a" : "the"} ${kind}`], frame, pen),
  ];
}

const vec = (values: readonly number[]): Vec => values as unknown as Vec;

/** The rectangle round these points, in the shape of the frame: `before` is room in front of them, `end` where the wall ends. */
function windowFor(view: View, points: readonly Vec[], end: Vec, before: number, frame: Frame): Extent {
  const last = picturePoint(view, end);
  const { low, high } = extentOf([last, ...points.map((p) => picturePoint(view, p))]);
  const tall = high[1] - low[1] + 2 * AROUND;
  const scale = Math.min(LARGEST, frame.width / (high[0] - low[0] + before + BEHIND), frame.height / tall);
  const [wide, half] = [frame.width / scale, frame.height / scale / 2];
  const left = last[0] > low[0] ? high[0] + BEHIND - wide : low[0] - BEHIND;
  const middle = (low[1] + high[1]) / 2;
  return { low: [left, middle - half], high: [left + wide, middle + half] };
}

const runOf = (strap: Strap | null, view: View) => {
  const points = (strap?.run ?? []).map((p) => picturePoint(view, p));
  return points.slice(1).map((p, i) => [points[i] ?? p, p] as const);
};

/** What lies on a wall that screws are chosen for; before one that a strap is tied to, there may be none. */
function plasterName(kind: WallFixing["kind"], { left, right, top, bottom }: Box): readonly Label[] {
  if (kind !== "screw" || right - left < 1) return [];
  const targets = [0.8, 0.9, 0.7].map((t): Spot => [(left + right) / 2, top + t * (bottom - top)]);
  return [{ mark: "plaster", targets, hidden: false }];
}

/** Of the strap and of its brackets; `own`: the one on the piece, where it is named. */
function strapNames(
  strap: Strap,
  own: readonly Solid[],
  run: readonly Segment[],
  spot: (p: Vec) => Spot,
): readonly Label[] {
  const brackets = [...own, strap.bracket.solid].map(({ low, high }): Label => {
    const middle = times(plus(low, high), 0.5);
    return {
      mark: "bracket",
      targets: [middle, [middle[0], middle[1], high[2]], [middle[0], middle[1], low[2]]].map((p) => spot(vec(p))),
      hidden: false,
    };
  });
  const along = [0.5, 0.65, 0.35].flatMap((t): readonly Spot[] => {
    const piece = run[Math.floor(t * run.length)];
    return piece ? [piece[0]] : [];
  });
  return [...brackets, { mark: "strap", targets: along, hidden: false }];
}

/** A stroke across the beginning of a line. */
function across([from, to]: Segment, half: number): Segment {
  const { along } = heading(from, to);
  return [
    [from[0] - along[1] * half, from[1] + along[0] * half],
    [from[0] + along[1] * half, from[1] - along[0] * half],
  ];
}
