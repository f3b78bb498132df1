/** A wooden button in its groove, cut along its tongue and drawn in a circle beside the picture: the groove hides what it does. */
import { exactBounds } from "../../../geometry/bounds.ts";
import { picturePoint, type View, viewFrom, visibleFaces } from "../../../geometry/picture/index.ts";
import { axisPlane } from "../../../geometry/plane.ts";
import { cut, isEmpty } from "../../../geometry/solid.ts";
import type { Solid, Vec } from "../../../geometry/types.ts";
import { dot, minus, norm, plus, times } from "../../../geometry/vec.ts";
import { sitsAt } from "../../../solve/build/drilling/sits-at.ts";
import type { Build, Fastener } from "../../../solve/build.ts";
import { add, divide, rational, subtract, toNumber } from "../../../units/index.ts";
import type { Ink, Item, Stroke } from "../../document.ts";
import { BLACK, TINT, WHITE } from "../../palette.ts";
import { circle, line } from "../../shapes.ts";
import { TYPE } from "../../style.ts";
import type { Pen, Spot } from "../drawing.ts";
import { type Fit, fitAt } from "../fit.ts";
import { ahead, centred, fills, heading, strokes } from "../ink.ts";
import { outlineOf } from "../outline.ts";
import { boxAround, type Segment } from "../plate.ts";
import { NARROW, OUTLINE } from "../strokes.ts";
import { insideCircle, NORMALS, within } from "./circle.ts";
import type { Shown } from "./detail.ts";
import { freePlace, wordsAt } from "./free-place.ts";
import type { Scene } from "./scene.ts";
import { holds } from "./share.ts";

/** As a method that is shown close once in a plan. */
export const BUTTON_CUT = "wooden button, cut along its tongue";
const WORDS = "Cut along a button";
/** So much room is left for it beside the picture, the least first. */
export const BESIDE = [0, 24, 48, 72, 98] as const;
const RADIUS = 42;
/** Its middle lies so far from that of the button, towards the rail and towards what it holds; and so much is seen round that. As shares of its length. */
const [RAILWARD, HOLDWARD, AROUND] = [0.18, 0.08, 0.74];
/** So thick a slice is looked at for the faces of the cut, in units of 1/16 µm. */
const SLICE = rational(16);
const SHANK: Stroke = { width: 1.2, ink: BLACK };
const HEAD: Stroke = { width: 2.2, ink: BLACK };
/** From the middle of a mark to any line, at least. */
const ROOM = 5;

type Axis = 0 | 1 | 2;

export interface Seat {
  readonly fastener: Fastener;
  readonly solid: Solid;
  readonly middle: Vec;
  /** By which all of it is drawn off its place. */
  readonly shift: Vec;
  /** Of the rail in which the tongue sits, and what is held; along which axis the rail runs. */
  readonly rail: string;
  readonly along: Axis;
  /** Unit vector from the button to the rail. */
  readonly railward: Vec;
  readonly long: number;
}

/** The buttons of a step that can be shown so: none where they stand askew. */
export function seatsOf({ fasteners, joints, parts }: Build, { items, shifts, screws }: Scene): readonly Seat[] {
  const here = new Set(items.map(({ id }) => id));
  const driven = new Set(screws.map(({ id }) => id));
  return fasteners.flatMap((fastener): readonly Seat[] => {
    const { id, into, button, direction } = fastener;
    const [rail = ""] = sitsAt(joints, fastener);
    const wood = parts.find((part) => part.id === rail);
    if (!button || !driven.has(id) || !wood || !here.has(into)) return [];
    const shift = shifts.get(rail) ?? [0, 0, 0];
    if (norm(minus(shift, shifts.get(into) ?? [0, 0, 0])) > 1) return [];
    const { low, high } = button.solid;
    const [size, long] = [minus(high, low), toNumber(button.long)];
    const axes = ([0, 1, 2] as const).filter((i) => Math.abs(direction[i]) < 0.5);
    const tongue = axes.find((i) => Math.abs(size[i] - long) < 1);
    const along = axes.find((i) => i !== tongue && Math.abs(size[i] - toNumber(button.wide)) < 1);
    if (axes.length !== 2 || tongue === undefined || along === undefined) return [];
    const middle = times(plus(low, high), 0.5);
    const railward: [number, number, number] = [0, 0, 0];
    const other = (wood.solid.low[tongue] + wood.solid.high[tongue]) / 2;
    railward[tongue] = other < middle[tongue] ? -1 : 1;
    return [{ fastener, solid: button.solid, middle, rail, along, railward, long, shift }];
  });
}

/** With a line to one of them; null where there is no room. */
export function buttonCut(
  build: Build,
  seats: readonly Seat[],
  ceiling: Vec,
  shown: Shown,
  pen: Pen,
): readonly Item[] | null {
  for (const seat of seats) {
    const at = shown.fit.spot(shown.view, plus(seat.middle, seat.shift));
    const larger = RADIUS / Math.max(1, AROUND * seat.long * shown.fit.scale);
    const centre = freePlace(at, RADIUS, larger, shown);
    if (centre) return drawn(build, seat, ceiling, { at, centre, small: RADIUS / larger }, shown, pen);
  }
  return null;
}

function drawn(
  build: Build,
  seat: Seat,
  ceiling: Vec,
  { at, centre, small }: { readonly at: Spot; readonly centre: Spot; readonly small: number },
  { plate }: Shown,
  pen: Pen,
): readonly Item[] {
  const { fastener, middle, along, railward, long } = seat;
  const { direction, head, length } = fastener;
  const towards: [number, number, number] = [0, 0, 0];
  towards[along] = 1;
  const view = viewFrom("along the rail", towards, ceiling);
  const focus = plus(plus(middle, times(railward, RAILWARD * long)), times(direction, HOLDWARD * long));
  const scale = RADIUS / (AROUND * long);
  const [u, v] = picturePoint(view, focus);
  const fit = fitAt({ low: [u, v], high: [u, v] }, scale, ...centre);
  const wood = [
    { id: seat.rail, ink: TINT.middle },
    { id: fastener.into, ink: TINT.light },
  ].flatMap(({ id, ink }) => {
    const part = build.parts.find((each) => each.id === id);
    return part ? [{ solid: part.solid, ink, mark: part.mark }] : [];
  });
  const bodies = [...wood, { solid: seat.solid, ink: TINT.dark, mark: "" }];
  const cuts = bodies.map((body) => ({ ...body, polygons: facesOf(body.solid, seat, view, fit, centre) }));
  const from: Vec = [toNumber(head.at[0]), toNumber(head.at[1]), toNumber(head.at[2])];
  const shank: Segment = [fit.spot(view, from), fit.spot(view, plus(from, times(direction, toNumber(length))))];
  const across = times(railward, toNumber(head.diameter) / 2);
  const cap: Segment = [fit.spot(view, plus(from, across)), fit.spot(view, minus(from, across))];
  const words = wordsAt(at, centre, RADIUS, true);
  const under = centred(pen, WORDS, [centre[0], (words.top + words.bottom) / 2], TYPE.caption);
  plate.addBox(boxAround(...centre, 2 * RADIUS, 2 * RADIUS));
  plate.addBox(under.box);
  plate.addBox(boxAround(...at, 2 * small, 2 * small));
  plate.addLeader([at, centre]);
  const { along: way } = heading(at, centre);
  const clip = (lines: readonly Segment[]): readonly Segment[] => lines.flatMap((each) => within(each, centre, RADIUS));
  return [
    ...fills([NORMALS.map(([x, y]): Spot => [centre[0] + x * RADIUS, centre[1] + y * RADIUS])], WHITE),
    ...cuts.flatMap(({ polygons, ink }) => woodCut(polygons, ink, clip)),
    ...strokes(clip([shank]), SHANK),
    ...strokes(clip([cap]), HEAD),
    ...cuts.flatMap(({ polygons, mark }) => marked(polygons, [shank], mark, centre, pen)),
    circle(...centre, RADIUS, { stroke: { width: 0.7, ink: BLACK } }),
    circle(...at, small, { stroke: NARROW }),
    line(...ahead(at, way, small), ...ahead(centre, way, -RADIUS), NARROW),
    under.item,
  ];
}

/** The faces of a cut through the middle of the button, on the page, inside the circle and as they are. */
function facesOf(solid: Solid, { solid: button, along }: Seat, view: View, fit: Fit, centre: Spot) {
  const { low, high } = exactBounds(button);
  const at = divide(add(low[along], high[along]), rational(2));
  const slice = cut(cut(solid, axisPlane(along, 1, at)), axisPlane(along, -1, subtract(at, SLICE)));
  if (isEmpty(slice)) return { inside: [], edges: [] };
  const whole = visibleFaces([{ id: "", solid: slice }], view)
    .filter(({ normal }) => dot(normal, view.towards) > 0.5 * norm(normal) * norm(view.towards))
    .flatMap(({ polygons }) => polygons.map((polygon) => polygon.map(fit.page)));
  return {
    inside: whole.map((each) => insideCircle(each, centre, RADIUS)).filter(({ length }) => length > 2),
    edges: outlineOf(whole),
  };
}

type Cut = ReturnType<typeof facesOf>;

const woodCut = ({ inside, edges }: Cut, ink: Ink, clip: (lines: readonly Segment[]) => readonly Segment[]) => [
  ...fills(inside, ink),
  ...strokes(clip(edges), OUTLINE),
];

/** A mark where most room is round it, in what is seen of it. */
function marked(
  { inside, edges }: Cut,
  others: readonly Segment[],
  mark: string,
  centre: Spot,
  pen: Pen,
): readonly Item[] {
  const lines = [...edges, ...others];
  if (mark === "") return [];
  let best: { readonly spot: Spot; readonly room: number } | null = null;
  for (let dx = -RADIUS; dx <= RADIUS; dx += 2)
    for (let dy = -RADIUS; dy <= RADIUS; dy += 2) {
      const spot: Spot = [centre[0] + dx, centre[1] + dy];
      const rim = RADIUS - Math.sqrt(dx * dx + dy * dy);
      if (rim < ROOM || (best && rim <= best.room) || !inside.some((each) => holds(each, spot))) continue;
      const room = Math.min(rim, ...lines.map((each) => awayFrom(spot, each)));
      if (room >= ROOM && (!best || room > best.room)) best = { spot, room };
    }
  return best ? [centred(pen, mark, best.spot, TYPE.caption).item] : [];
}

function awayFrom(spot: Spot, [a, b]: Segment): number {
  const { along, distance } = heading(a, b);
  const t = (spot[0] - a[0]) * along[0] + (spot[1] - a[1]) * along[1];
  return heading(spot, ahead(a, along, Math.max(0, Math.min(distance, t)))).distance;
}
