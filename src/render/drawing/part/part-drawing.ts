/**
 * One part, to scale: its face with the most work in it, the edge below it as seen from below, and an end beside it where
 * that tells more. Every place is measured along the part from one end and across it from one edge.
 */
import { hiddenLines, type View } from "../../../geometry/picture/index.ts";
import type { Point2, Vec } from "../../../geometry/types.ts";
import { times } from "../../../geometry/vec.ts";
import type { Build, BuiltPart } from "../../../solve/build.ts";
import type { Length } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import type { Frame } from "../../style.ts";
import { BAR_HEIGHT, scaleBar } from "../bar.ts";
import type { Drawing, Pen, Spot } from "../drawing.ts";
import { type Extent, extentOfItems, heightOf } from "../fit.ts";
import { strokes } from "../ink.ts";
import { boxAround, Plate, type Segment } from "../plate.ts";
import { type Scale, usualScales } from "../scale.ts";
import { HIDDEN, OUTLINE, PRESENT } from "../strokes.ts";
import { type Bore, boresOf, drawBores, letters } from "./bores.ts";
import { BREAK, broken } from "./broken.ts";
import { apartFromEarlier } from "./earlier.ts";
import { type Lying, lying, sideWord } from "./lying.ts";
import {
  apart,
  LEADER,
  leaderFor,
  type Numbers,
  ordinates,
  ordinatesAbove,
  ordinatesLeft,
  PITCH,
  SIZE,
  type Told,
  told,
  widest,
} from "./ordinates.ts";
import { framed, placesOf } from "./places.ts";
import { type Squeezed, squeezed, whole } from "./squeeze.ts";

export interface PartDrawing extends Drawing {
  readonly bores: readonly Bore[];
  /** How it lies, in words of the finished piece. */
  readonly lies: string;
}

/** Between the views: above the edge, and beside the end. */
const GAP = 22;
const ASIDE = 16;
/** Parts that fit only smaller than this are drawn broken at a larger scale. */
const SMALL = 1 / 4;
const POINTS_PER_UNIT = 72 / 406_400;

export interface PartDrawingOptions {
  readonly frame: Frame;
  readonly pen: Pen;
  /** Whether a rule has marks for such steps, one after the other. */
  readonly marked?: (pitch: Length) => boolean;
  /** No smaller than this, on paper for each in the room. */
  readonly least?: number;
}

/** At the largest usual scale that goes into the frame; null where its numbers do not go in at any. */
export function partDrawing(
  build: Build,
  built: BuiltPart,
  { frame, pen, marked = () => true, least = 0 }: PartDrawingOptions,
): PartDrawing | null {
  const lies = lying(built, build.holes);
  const { units } = build.design;
  const bores = boresOf(lies);
  const sheet = measured(lies, bores, { print: pen.print, marked });
  for (const scale of usualScales(units).filter(({ points }) => points >= least * POINTS_PER_UNIT)) {
    const plan = arranged(sheet, scale, frame, pen);
    if (plan === null) continue;
    const items = drawn(sheet, plan, bores, frame, pen);
    const bar = scaleBar(scale, units, pen, [frame.x, plan.bottom + BAR_HEIGHT + 2]);
    return { items: [...items, ...bar], alt: altOf(built, lies, bores), scale: scale.text, bores, lies: inWords(lies) };
  }
  return null;
}

/** What does not depend on the scale. */
function measured(lies: Lying, bores: readonly Bore[], how: Numbers) {
  const { part, zero } = lies;
  const item = { id: part.id, solid: part.solid };
  const aspect = (view: View) => ({ view, extent: extentOfItems([item], view), lines: linesOf(part, view) });
  const [face, edge] = [aspect(lies.face), aspect(lies.edge)];
  const places = placesOf(
    lies,
    bores.map(({ holes }) => holes),
  );
  const numbers = {
    along: told(places.along, places.rows.along, face.extent[zero.along][0], how),
    across: told(places.across, places.rows.across, face.extent[zero.across][1], how),
    through: told(places.through, places.rows.through, edge.extent.low[1], how),
  };
  return { lies, numbers, kept: places.kept, face, edge, end: lies.end && aspect(lies.end.view) };
}
type Sheet = ReturnType<typeof measured>;

const linesOf = ({ id, solid }: BuiltPart, view: View) => {
  const [lines] = hiddenLines([{ id, solid }], view, { hidden: true });
  return lines ?? { id, visible: [], hidden: [] };
};

interface Arranged {
  readonly scale: Scale;
  readonly along: Squeezed;
  readonly left: number;
  readonly top: number;
  /** Left edge of the end view, top of the edge view, and what is lowest. */
  readonly endLeft: number;
  readonly edgeTop: number;
  /** Down the page, where the numbers beside the face and beside the edge are set, and how long their leaders are. */
  readonly face: readonly number[];
  readonly edge: readonly number[];
  readonly long: number;
  readonly bottom: number;
}

/** Where the views stand at a scale; null where they do not go in. */
function arranged(sheet: Sheet, scale: Scale, frame: Frame, pen: Pen): Arranged | null {
  const { lies, numbers, face, edge } = sheet;
  const { low, high } = face.extent;
  const k = scale.points;
  const deep = heightOf(edge.extent) * k;
  const beside = lies.end ? deep + ASIDE : 0;
  const above = LEADER + widest(numbers.along, pen) + 4;
  const top = frame.y + above;
  const across = ups(numbers.across, face.extent, top, k);
  const besideFace = apart(across, frame.y + SIZE / 2);
  // The edge stands where its numbers, which are set around it, keep a line off those of the face.
  const foot = top + heightOf(face.extent) * k;
  const through = ups(numbers.through, edge.extent, 0, k);
  const around = apart(through, Number.NEGATIVE_INFINITY);
  const edgeTop = Math.max(foot + GAP, Math.max(foot, (besideFace.at(-1) ?? 0) + PITCH) + PITCH - (around[0] ?? 0));
  const besideEdge = around.map((at) => edgeTop + at);
  const long = Math.max(leaderFor(across, besideFace), leaderFor(through, around));
  const margin = long + widest([...numbers.across, ...numbers.through], pen) + 2;
  const room = frame.width - margin - beside - 4;
  const plain = whole(low[0], high[0], k);
  const along =
    plain.width <= room
      ? plain
      : k <= SMALL * POINTS_PER_UNIT * 1.001
        ? squeezed(low[0], high[0], high[1] - low[1], k, sheet.kept, room)
        : plain;
  const left = frame.x + margin + (lies.end?.at === "left" ? beside : 0);
  const last = apart(
    numbers.along.map(({ value }) => left + along.place(value)),
    left,
  ).at(-1);
  const bottom = Math.max(edgeTop + deep, (besideEdge.at(-1) ?? 0) + SIZE / 2) + 4;
  if (along.width > room || (last ?? 0) + SIZE / 2 > frame.x + frame.width) return null;
  if (bottom + BAR_HEIGHT + 4 > frame.y + frame.height) return null;
  const endLeft = lies.end?.at === "left" ? frame.x + margin : left + along.width + ASIDE;
  return { scale, along, left, top, endLeft, edgeTop, bottom, face: besideFace, edge: besideEdge, long };
}

/** Places up a view, down the page. */
const ups = (all: readonly Told[], { high }: Extent, top: number, k: number): number[] =>
  all.map(({ value }) => top + (high[1] - value) * k).reverse();

function drawn(sheet: Sheet, set: Arranged, bores: readonly Bore[], frame: Frame, pen: Pen): readonly Item[] {
  const { lies, numbers, face, edge, end } = sheet;
  const { along, left, top, edgeTop, endLeft } = set;
  const k = set.scale.points;
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
    endLeft + (u - (end?.extent.low[0] ?? 0)) * k,
    top + ((end?.extent.high[1] ?? 0) - v) * k,
  ];
  const views = [
    { aspect: face, spot: onFace },
    { aspect: edge, spot: onEdge },
    ...(end ? [{ aspect: end, spot: onEnd }] : []),
  ];
  const items: Item[] = [];
  for (const { aspect, spot } of views) {
    const runs = (all: readonly (readonly [Point2, Point2])[]): Segment[] => all.map(([a, b]) => [spot(a), spot(b)]);
    const [now, before] = apartFromEarlier(lies.part, aspect.view, aspect.lines.visible);
    const [seen, old, hidden] = [runs(now), runs(before), runs(aspect.lines.hidden)];
    for (const line of [...seen, ...old, ...hidden]) plate.addLine(line);
    items.push(...strokes(hidden, HIDDEN), ...strokes(old, PRESENT), ...strokes(seen, OUTLINE));
  }
  const inFace = (p: Vec): Spot => onFace([frameOf(p)[0], frameOf(p)[1]]);
  const inEdge = (p: Vec): Spot => onEdge([frameOf(p)[0], frameOf(p)[2]]);
  const shownFace = { spot: inFace, towards: face.view.towards, scale: k };
  const shownEdge = { spot: inEdge, towards: edge.view.towards, scale: k };
  items.push(...drawBores(bores, shownFace, plate), ...drawBores(bores, shownEdge, plate));
  for (const x of along.breaks)
    for (const [from, extent] of [[top, face.extent] as const, [edgeTop, edge.extent] as const]) {
      const deep = heightOf(extent) * k;
      items.push(...broken(left + x, from, from + deep));
      plate.addBox(boxAround(left + x, from + deep / 2, 2 * BREAK, deep + 6));
    }
  const up = (all: readonly Told[], extent: Extent, from: number) =>
    [...ordinates(all, (v) => from + (extent.high[1] - v) * k)].reverse();
  const start = lies.end?.at === "left" ? endLeft : left;
  items.push(
    ...ordinatesAbove(
      ordinates(numbers.along, (u) => left + along.place(u)),
      top,
      left,
      plate,
      pen,
    ),
    ...ordinatesLeft(up(numbers.across, face.extent, top), { left: start, bent: set.face, long: set.long }, plate, pen),
    ...ordinatesLeft(up(numbers.through, edge.extent, edgeTop), { left, bent: set.edge, long: set.long }, plate, pen),
  );
  const onEdges = bores.filter(({ side }) => side.endsWith("edge"));
  const others = bores.filter(({ side }) => !side.endsWith("edge"));
  items.push(...letters(others, shownFace, plate, pen), ...letters(onEdges, shownEdge, plate, pen));
  return items;
}

function inWords({ face, edge, part }: Lying): string {
  const left = sideWord(times(face.right, -1));
  const below = sideWord(edge.towards);
  const turned = part.turned ? "Drawn square, before it leans. " : "";
  return `${turned}Seen from ${face.name}; its ${left} end lies at the left, its ${below} edge below.`;
}

const altOf = ({ mark, name }: BuiltPart, lies: Lying, bores: readonly Bore[]): string => {
  const kinds = [...new Set(lies.part.features.map(({ kind }) => kind))];
  const cuts = kinds.length > 0 ? ` Cuts and joints: ${kinds.join(", ")}.` : "";
  const holes = bores.map(({ holes, side }) => `${holes.length} ${holes[0]?.kind} in the ${side}`);
  return `Part ${mark}, ${name}. ${inWords(lies)}${cuts}${holes.length > 0 ? ` Holes: ${holes.join(", ")}.` : ""}`;
};
