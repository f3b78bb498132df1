import { picturePoint, type View } from "../../../geometry/picture/index.ts";
import type { Point2, Vec } from "../../../geometry/types.ts";
import { dot } from "../../../geometry/vec.ts";
import type { Build, BuiltPart } from "../../../solve/build.ts";
import type { Hole } from "../../../solve/design.ts";
import { type Length, toNumber, ZERO } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { bounds, leaves } from "../../shapes.ts";
import type { Frame } from "../../style.ts";
import { BAR_HEIGHT, scaleBar } from "../bar.ts";
import type { Drawing, Pen, Spot } from "../drawing.ts";
import { toVec } from "../feature-box.ts";
import { type Extent, heightOf } from "../fit.ts";
import { strokes } from "../ink.ts";
import { type Box, boxAround, Plate, passes, type Segment } from "../plate.ts";
import { type Scale, usualScales } from "../scale.ts";
import { HIDDEN, OUTLINE, PRESENT } from "../strokes.ts";
import { type Arranged, arranged, POINTS_PER_UNIT } from "./arrange.ts";
import { letters } from "./bore-letters.ts";
import { type Bore, boresOf, drawBores } from "./bores.ts";
import { BREAK, broken } from "./broken.ts";
import { closeOn } from "./close.ts";
import { drawEnd } from "./close-end.ts";
import { apartFromEarlier } from "./earlier.ts";
import { altOf, inWords } from "./in-words.ts";
import { leastApart } from "./least-apart.ts";
import { lying } from "./lying.ts";
import { ordinates, ordinatesAlong, ordinatesLeft, type Told } from "./ordinates.ts";
import { framed } from "./places.ts";
import { rowLines } from "./row-lines.ts";
import { measured, type Sheet, tellsOf } from "./sheet.ts";
import { seenOf, thicker } from "./thin.ts";
import { wholeAt } from "./whole-at.ts";

export interface PartDrawing extends Drawing {
  readonly bores: readonly Bore[];
  /** Points on paper for each unit. */
  readonly points: number;
  /** Whether it is drawn with a gap where nothing changes. */
  readonly broken: boolean;
  /** How far along the part a number stands from its place at most, in points. */
  readonly bent: number;
  /** From one hole of its face to the nearest other, in points. */
  readonly near: number;
  /** How many numbers stand around it, a row of holes as one. */
  readonly tells: number;
  /** How it lies, in words of the finished piece. */
  readonly lies: string;
}

export interface PartDrawingOptions {
  readonly frame: Frame;
  readonly pen: Pen;
  /** Whether a rule has marks for such steps, one after the other. */
  readonly marked?: (pitch: Length) => boolean;
  /** No smaller than this, on paper for each in the room; and smaller than so many points for each unit. */
  readonly least?: number;
  readonly below?: number;
}

/** At the largest usual scale that goes into the frame; null where its numbers do not go in at any. */
export function partDrawing(
  build: Build,
  built: BuiltPart,
  { frame, pen, marked = () => true, least = 0, below = Infinity }: PartDrawingOptions,
): PartDrawing | null {
  const lies = lying(built, build.holes);
  const { units } = build.design;
  const { bores, ladders } = boresOf(lies);
  const sheet = measured(lies, ladders, { print: pen.print, marked });
  const all = usualScales(units);
  const scales = all.filter(({ points }) => points >= least * POINTS_PER_UNIT && points < below);
  const fits = (scale: Scale, shown = sheet): Arranged | null => arranged(shown, scale, frame, pen, all);
  const isLong = ({ along, scale }: Arranged): boolean =>
    along.breaks.length === 0 || along.width >= LONG * heightOf(sheet.face.extent) * scale.points;
  const first = (good: (set: Arranged) => boolean): Arranged | null => {
    for (const scale of scales) {
      const set = fits(scale);
      if (set && good(set)) return set;
    }
    return null;
  };
  // A long part that a break makes look short is taken for another.
  const largest = first(isLong) ?? first(() => true);
  if (!largest) return null;
  const smaller = scales.slice(scales.indexOf(largest.scale) + 1);
  const usual = largest.along.breaks.length > 0 ? (wholeAt(sheet, smaller, largest, fits) ?? largest) : largest;
  const plan = thicker(sheet, usual, scales, (broken, scale) => fits(scale, broken));
  const bar = scaleBar(plan.scale, units, pen, [frame.x, plan.bottom + BAR_HEIGHT + 2]);
  const items = drawn(sheet, plan, seenOf(bores, sheet, plan), { frame, pen, bar });
  const alt = altOf(built, lies, bores);
  return {
    items: [...items, ...bar],
    alt,
    scale: plan.scale.text,
    points: plan.scale.points,
    broken: plan.along.breaks.length > 0,
    bores,
    bent: plan.bent,
    near: leastApart(bores, lies.face, plan.scale.points),
    tells: tellsOf(sheet),
    lies: inWords(lies),
  };
}

/** What the mouth of a hole takes up in a view. */
function mouthBox(hole: Hole, view: View, spot: (p: Point2) => Spot, scale: number): Box {
  const [x, y] = spot(picturePoint(view, toVec(hole.at)));
  const wide = toNumber(hole.stages[0]?.diameter ?? ZERO) * scale;
  return boxAround(x, y, wide, wide);
}

/** From the first of some numbers that stand one below the other to the last. */
const rowsDown = (all: readonly number[]) => ({ top: Math.min(...all), bottom: Math.max(...all) });

/** Of what is broken, so many times as long as wide at least. */
const LONG = 1.4;
function drawn(
  sheet: Sheet,
  set: Arranged,
  bores: readonly Bore[],
  { frame, pen, bar }: { readonly frame: Frame; readonly pen: Pen; readonly bar: readonly Item[] },
): readonly Item[] {
  const { lies, numbers, face, edge, end } = sheet;
  const { along, left, top, edgeTop, endLeft, close } = set;
  const k = set.scale.points;
  const endScale = close?.set.scale.points ?? k;
  const endTop = close ? close.at[1] + close.set.top : top;
  const plate = new Plate(frame);
  const frameOf = framed(lies);
  const onFace = ([u, v]: readonly [number, number]): Spot => [
    left + along.place(u),
    top + (face.extent.high[1] - v) * k,
  ];
  const onEdge = ([u, v]: readonly [number, number]): Spot => [
    left + along.place(u),
    edgeTop + (edge.extent.high[1] - v) * k,
  ];
  const onEnd = ([u, v]: readonly [number, number]): Spot => [
    endLeft + (u - (end?.extent.low[0] ?? 0)) * endScale,
    endTop + ((end?.extent.high[1] ?? 0) - v) * endScale,
  ];
  const views = [
    { aspect: face, spot: onFace },
    { aspect: edge, spot: onEdge },
    ...(end ? [{ aspect: end, spot: onEnd }] : []),
  ];
  const intoEnd = bores.filter(({ on }) => on === `${lies.end?.at} end`);
  const mouths = end
    ? intoEnd.flatMap(({ holes }) => holes.map((hole) => mouthBox(hole, end.view, onEnd, endScale)))
    : [];
  const items: Item[] = [];
  const seenOnFace: Segment[] = [];
  for (const { aspect, spot } of views) {
    const runs = (all: readonly (readonly [Point2, Point2])[]): Segment[] => all.map(([a, b]) => [spot(a), spot(b)]);
    const [now, before] = apartFromEarlier(lies.part, aspect.view, aspect.lines.visible);
    const [seen, old] = [runs(now), runs(before)];
    // What lies behind the holes of an end would be one blot with them; the other views tell it.
    const behind = runs(aspect.lines.hidden);
    const hidden = aspect === end && behind.some((line) => mouths.some((box) => passes(line, box))) ? [] : behind;
    for (const line of [...seen, ...old, ...hidden]) plate.addLine(line);
    if (aspect === face) seenOnFace.push(...seen, ...old);
    items.push(...strokes(hidden, HIDDEN), ...strokes(old, PRESENT), ...strokes(seen, OUTLINE));
  }
  const inFace = (p: Vec): Spot => onFace([frameOf(p)[0], frameOf(p)[1]]);
  const inEdge = (p: Vec): Spot => onEdge([frameOf(p)[0], frameOf(p)[2]]);
  const shownFace = { spot: inFace, towards: face.view.towards, scale: k };
  const shownEdge = { spot: inEdge, towards: edge.view.towards, scale: k };
  items.push(...drawBores(bores, shownFace, plate), ...drawBores(bores, shownEdge, plate));
  const shownEnd = end && {
    spot: (p: Vec): Spot => onEnd(picturePoint(end.view, p)),
    towards: end.view.towards,
    scale: endScale,
  };
  if (shownEnd) items.push(...drawBores(intoEnd, shownEnd, plate));
  for (const x of along.breaks)
    for (const [from, extent] of [[top, face.extent] as const, [edgeTop, edge.extent] as const]) {
      const deep = heightOf(extent) * k;
      items.push(...broken(left + x, from, from + deep));
      plate.addBox(boxAround(left + x, from + deep / 2, 2 * BREAK, deep + 6));
    }
  const up = (all: readonly Told[], extent: Extent, from: number) =>
    [...ordinates(all, (v) => from + (extent.high[1] - v) * k)].reverse();
  const start = lies.end?.at === "left" && !close ? endLeft : left;
  items.push(
    ...ordinatesAlong(
      ordinates(numbers.along, (u) => left + along.place(u)),
      ...(["above", top, left, plate, pen] as const),
    ),
    ...ordinatesAlong(
      ordinates(numbers.below, (u) => left + along.place(u)),
      ...(["below", edgeTop + heightOf(edge.extent) * k, left, plate, pen] as const),
    ),
    ...rowLines(
      sheet,
      set,
      (p) => onFace([p[0], p[1]]),
      (p) => onEdge([p[0], p[2]]),
      plate,
    ),
    ...ordinatesLeft(up(numbers.across, face.extent, top), { left: start, bent: set.face, long: set.long }, plate, pen),
    ...ordinatesLeft(up(numbers.through, edge.extent, edgeTop), { left, bent: set.edge, long: set.long }, plate, pen),
  );
  if (close && end) {
    // The thickness runs to the eye of the face, which is left or right of the end.
    const way = dot(end.view.right, face.view.towards) < 0 ? -1 : 1;
    const spots = { x: (w: number) => onEnd([way * w, 0])[0], y: (v: number) => onEnd([0, v])[1] };
    items.push(...drawEnd(close.set, close.at, spots, plate, pen));
  }
  const onEdges = bores.filter(({ on }) => on === "lower edge");
  const others = bores.filter((bore) => !onEdges.includes(bore) && !(shownEnd && intoEnd.includes(bore)));
  const columns = [
    { left: start - set.long, right: start, ...rowsDown(set.face) },
    { left: left - set.long, right: left, ...rowsDown(set.edge) },
  ];
  const around = { plate, pen, columns };
  const span = { left, right: left + along.width };
  const [inFaceView, inEdgeView] = [
    { ...span, top, bottom: top + heightOf(face.extent) * k },
    { ...span, top: edgeTop, bottom: edgeTop + heightOf(edge.extent) * k },
  ];
  items.push(
    ...letters(others, shownFace, { ...around, view: inFaceView }),
    ...letters(onEdges, shownEdge, { ...around, view: inEdgeView }),
  );
  if (shownEnd) items.push(...letters(intoEnd, shownEnd, around));
  const [barLeft, barTop, barRight, barBottom] = bounds(leaves(bar));
  plate.addBox({ left: barLeft, top: barTop, right: barRight, bottom: barBottom });
  const boxes = views.map(({ aspect: { extent }, spot }) => [
    spot([extent.low[0], extent.high[1]]),
    spot([extent.high[0], extent.low[1]]),
  ]) as readonly (readonly [Spot, Spot])[];
  const ground = ([x, y]: Spot): number =>
    boxes.some(([from, to]) => x > from[0] && x < to[0] && y > from[1] && y < to[1]) ? 1 : 0;
  items.push(...closeOn(seenOnFace, plate, pen, ground));
  return items;
}
