/** A joint cut through: wood, hardware and bores in section, as large as it goes in, with a letter at each size. */
import { picturePoint, type View } from "../../../geometry/picture/index.ts";
import type { Point2, Vec } from "../../../geometry/types.ts";
import { dot } from "../../../geometry/vec.ts";
import type { CutThrough, Rod } from "../../../solve/build/model/cut-through.ts";
import { panesOf } from "../../../solve/build/order/glazing.ts";
import type { Build } from "../../../solve/build.ts";
import type { Point } from "../../../solve/design.ts";
import { type Length, toNumber, UNITS_PER_INCH } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { GLASS, METAL, TINT, WHITE } from "../../palette.ts";
import { circle } from "../../shapes.ts";
import { TYPE } from "../../style.ts";
import { type Drawing, NOT_TO_SCALE, type Pen } from "../drawing.ts";
import { toVec } from "../feature-box.ts";
import { type Extent, extentOf, fitAt, heightOf, widthOf } from "../fit.ts";
import { centred, fills, strokes } from "../ink.ts";
import { outlineOf } from "../outline.ts";
import { placeBalloons } from "../place-balloons.ts";
import { type Box, Plate, type Segment } from "../plate.ts";
import { polygonIn, segmentIn } from "../step/close-up.ts";
import { FINE, OUTLINE } from "../strokes.ts";
import { cutFaces, lies, viewOf } from "./faces.ts";
import { type Beside, LETTERS, type Lettered, letterLines, roomFor, rowsOf } from "./letters.ts";
import { ENOUGH, mostRoom } from "./room.ts";

type Polygons = readonly (readonly Point2[])[];

/** Round what is measured. */
const MARGIN = 0.3 * UNITS_PER_INCH;
/** No larger, in points for each unit. */
const LARGEST = 150 / UNITS_PER_INCH;

/** `shown`: ids of what stands there. */
export function cutDrawing(
  build: Build,
  cut: CutThrough,
  shown: ReadonlySet<string>,
  {
    width,
    height,
    pen,
    ceiling,
    letters: letter = LETTERS,
  }: {
    readonly width: number;
    readonly height: number;
    readonly pen: Pen;
    readonly ceiling: Vec;
    readonly letters?: string;
  },
): Drawing & { readonly height: number } {
  const view = viewOf(cut, ceiling);
  const flat = (p: Point): Point2 => picturePoint(view, toVec(p));
  const metal = build.hardware.filter(({ id }) => cut.hardware.includes(id));
  const pieces = metal.map(({ solid }) => cutFaces(solid, cut, view));
  const rods = cut.rods.map((rod) => ({
    ...rod,
    parts: partsOf(rod, cut.axis).map((each) => each.map((p) => picturePoint(view, p))),
  }));
  const bores = cut.bores.flatMap(({ at, direction, stages }) =>
    stages.map(({ diameter, depth }) => {
      const to = at.map((c, i) => toNumber(c) + (direction[i] ?? 0) * toNumber(depth));
      return barOf(at.map(toNumber), to, toNumber(diameter), cut.axis).map((p) => picturePoint(view, p));
    }),
  );
  const rounds = cut.rounds.map(({ at, diameter }) => ({ at: flat(at), radius: toNumber(diameter) / 2 }));
  const spans = cut.sizes.flatMap(({ spans: all }, i) =>
    all.map(({ from, to, off }) => ({
      ...{ letter: letter[i] ?? "", from: flat(from), to: flat(to) },
      beside: besideOf(off, view),
    })),
  );
  const points = [
    ...[...pieces.flat(), ...rods.flatMap(({ parts }) => parts), ...bores].flat(),
    ...spans.flatMap(({ from, to }) => [from, to]),
    ...rounds.flatMap(({ at: [u, v], radius: r }): Point2[] => [
      [u - r, v - r],
      [u + r, v + r],
    ]),
  ];
  const around = extentOf(points);
  const extent: Extent = {
    low: [around.low[0] - MARGIN, around.low[1] - MARGIN],
    high: [around.high[0] + MARGIN, around.high[1] + MARGIN],
  };
  const room = (side: Beside): number => roomFor(rowsOf(spans, side).length);
  const [left, right, above, below] = (["left", "right", "above", "below"] as const).map(room) as [
    number,
    number,
    number,
    number,
  ];
  const scale = Math.min(
    LARGEST,
    (width - left - right) / widthOf(extent),
    (height - above - below) / heightOf(extent),
  );
  const [wide, high] = [widthOf(extent) * scale, heightOf(extent) * scale];
  const x = left + (width - left - right - wide) / 2;
  const section: Box = { left: x, right: x + wide, top: above, bottom: above + high };
  const fit = fitAt(extent, scale, x, above);
  const plate = new Plate({ x: 0, y: 0, width, height: above + high + below });
  const window: Extent = { low: [section.left, section.top], high: [section.right, section.bottom] };
  const edges = (polygons: Polygons): readonly Segment[] =>
    outlineOf(polygons.map((each) => each.map(fit.page))).flatMap((each) => segmentIn(window, each));
  const inside = (polygons: Polygons): Polygons =>
    polygons.map((each) => polygonIn(window, each.map(fit.page))).filter(({ length }) => length > 2);
  const solids = build.parts
    .filter(({ id }) => shown.has(id))
    .map(({ id, mark, solid }) => ({ id, mark, faces: cutFaces(solid, cut, view) }))
    .map((each) => ({ ...each, inside: inside(each.faces), edges: edges(each.faces) }))
    .filter((each) => each.inside.length > 0);
  const lined = [
    ...solids.flatMap((each) => each.edges),
    ...edges(bores),
    ...rods.flatMap(({ parts }) => edges(parts)),
  ];
  for (const each of lined) plate.addLine(each);
  const [hung] = cut.parts;
  const glass = panesOf(build.design);
  const drawn: readonly Item[] = [
    ...solids.flatMap((each) => [
      ...fills(each.inside, glass.has(each.id) ? GLASS : each.id === hung ? TINT.middle : TINT.light),
      ...strokes(each.edges, OUTLINE),
    ]),
    ...bores.flatMap((bore) => [...fills(inside([bore]), WHITE), ...strokes(edges([bore]), FINE)]),
    ...rods.flatMap(({ parts }) =>
      parts.flatMap((part) => [...fills(inside([part]), METAL.light), ...strokes(edges([part]), FINE)]),
    ),
    ...pieces.flatMap((faces) => [...fills(inside(faces), METAL.dark), ...strokes(edges(faces), FINE)]),
    ...rounds.map(({ at, radius }) => {
      const [cx, cy] = fit.page(at);
      return circle(cx, cy, radius * scale, { fill: METAL.dark, stroke: FINE });
    }),
  ];
  const placed = spans.map((each): Lettered => ({ ...each, from: fit.page(each.from), to: fit.page(each.to) }));
  const letters = letterLines(placed, section, plate, pen);
  const covered = inside([...bores, ...rods.flatMap(({ parts }) => parts), ...pieces.flat()]);
  const found = solids.map((each) => ({ ...each, at: mostRoom(each.inside, covered, plate, section) }));
  const marks = found.flatMap(({ mark, at }) => {
    if (!at || at.room < ENOUGH) return [];
    const { item, box } = centred(pen, mark, at.spot, { size: TYPE.body.size, font: "bold" });
    plate.addBox(box);
    return [item];
  });
  // What has no room for its mark has it beside it; of what is only seen there it is not asked.
  const beside = found.flatMap(({ id, mark, at }) =>
    at && at.room < ENOUGH && cut.parts.includes(id) ? [{ mark, targets: [at.spot], hidden: false }] : [],
  );
  const names = rods.flatMap(({ name, parts: [bar] }) => {
    const targets = [0.5, 0.3, 0.7].map((t) => onBar(bar ?? [], t)).map(fit.page);
    return name && bar ? [{ mark: name, targets, hidden: false }] : [];
  });
  return {
    items: [...drawn, ...letters, ...marks, ...placeBalloons([...names, ...beside], plate, pen, () => 0)],
    alt: `Cut through ${cut.what}, seen from ${view.name}${lies(cut, ceiling)}.`,
    scale: NOT_TO_SCALE,
    height: plate.frame.height,
  };
}

/** Which way on the page a direction goes. */
function besideOf(off: readonly number[], { right, up }: View): Beside {
  const way = off as unknown as Parameters<typeof dot>[0];
  const [u, v] = [dot(way, right), dot(way, up)];
  return Math.abs(u) > Math.abs(v) ? (u > 0 ? "right" : "left") : v > 0 ? "above" : "below";
}

/** Shank and head, each as the rectangle in which the plane cuts it. */
function partsOf({ from, to, diameter, head }: Rod, axis: 0 | 1 | 2) {
  const [a, b] = [from.map(toNumber), to.map(toNumber)] as [number[], number[]];
  const shank = barOf(a, b, toNumber(diameter), axis);
  if (!head) return [shank];
  const long = Math.max(1, ...a.map((_, i) => off(a, b, i)));
  if (head.sunk) return [shank, taperOf(a, b, { ...head, shank: toNumber(diameter) }, axis)];
  const out = a.map((c, i) => c + ((c - (b[i] ?? c)) / long) * toNumber(head.height));
  return [shank, barOf(out, a, toNumber(head.diameter), axis)];
}

/** Corners of a rectangle along an axis, so wide in the plane that is square to the other axis. */
function barOf(from: readonly number[], to: readonly number[], wide: number, axis: 0 | 1 | 2): readonly Vec[] {
  const along = ([0, 1, 2] as const).reduce((best, i) => (off(from, to, i) > off(from, to, best) ? i : best));
  const across = 3 - along - axis;
  const corner = (p: readonly number[], side: number): Vec =>
    p.map((c, i) => (i === across ? c + (side * wide) / 2 : c)) as unknown as Vec;
  return [corner(from, 1), corner(to, 1), corner(to, -1), corner(from, -1)];
}

/** A head that is sunk, widest at the face that it is flush with: as deep as it is wider than the shank on each side, 90° in all. */
function taperOf(
  from: readonly number[],
  to: readonly number[],
  { diameter, shank }: { readonly diameter: Length; readonly shank: number },
  axis: 0 | 1 | 2,
): readonly Vec[] {
  const wide = toNumber(diameter);
  const long = Math.max(1, ...from.map((_, i) => off(from, to, i)));
  const deep = Math.max(0, wide - shank) / 2;
  const foot = from.map((c, i) => c + (((to[i] ?? c) - c) / long) * deep);
  const [a, , , d] = barOf(from, foot, wide, axis);
  const [, b, c] = barOf(from, foot, shank, axis);
  return [a, b, c, d] as readonly Vec[];
}

const off = (from: readonly number[], to: readonly number[], i: number): number =>
  Math.abs((to[i] ?? 0) - (from[i] ?? 0));

/** A point on the middle line of a rectangle, a share of the way along it. */
const onBar = ([a, b, c, d]: readonly Point2[], t: number): Point2 => {
  const mix = (i: 0 | 1): number => {
    const [from, to] = [((a?.[i] ?? 0) + (d?.[i] ?? 0)) / 2, ((b?.[i] ?? 0) + (c?.[i] ?? 0)) / 2];
    return from + (to - from) * t;
  };
  return [mix(0), mix(1)];
};
