/** What is inside a circle of a picture, drawn again some times larger inside another circle. */
import type { Ink, Item, Stroke } from "../../document.ts";
import { BLACK, WHITE } from "../../palette.ts";
import { circle, line } from "../../shapes.ts";
import { TYPE } from "../../style.ts";
import { mostRoom } from "../cut-through/room.ts";
import type { Pen, Spot } from "../drawing.ts";
import { ahead, centred, fills, heading, strokes } from "../ink.ts";
import { outlineOf } from "../outline.ts";
import { boxAround, Plate, type Segment } from "../plate.ts";
import { NARROW } from "../strokes.ts";
import { insideCircle, NORMALS, within } from "./circle.ts";
import type { Detail } from "./detail.ts";
import { wordsAt } from "./free-place.ts";

/** Lines and filled faces of the picture as they stand on the page. */
export interface Drawn {
  readonly strokes: readonly { readonly lines: readonly Segment[]; readonly stroke: Stroke }[];
  readonly fills: readonly { readonly polygons: readonly (readonly Spot[])[]; readonly ink: Ink }[];
  /** What is seen of parts that have their marks in the circle; absent: none. */
  readonly named?: readonly { readonly mark: string; readonly polygons: readonly (readonly Spot[])[] }[];
}

/** `tied`: with a line from one circle to the other, where it is not told else which they are. */
export function enlarged(
  { at, centre, radius, times }: Omit<Detail, "method">,
  drawn: Drawn,
  plate: Plate,
  pen: Pen,
  tied = true,
): readonly Item[] {
  const place = ([x, y]: Spot): Spot => [centre[0] + (x - at[0]) * times, centre[1] + (y - at[1]) * times];
  const small = radius / times;
  const { along } = heading(at, centre);
  const { top, bottom } = wordsAt(at, centre, radius, tied);
  const below = top >= centre[1];
  const level = below ? top + TO_WORDS : bottom - TO_WORDS;
  const words = centred(pen, `Detail, ${times} × as large`, [centre[0], level], TYPE.caption);
  const ring: Stroke = { width: 0.7, ink: BLACK };
  const inRing = (polygons: readonly (readonly Spot[])[]) =>
    polygons.map((polygon) => insideCircle(polygon.map(place), centre, radius)).filter(({ length }) => length > 2);
  const runs = drawn.strokes.map(({ lines, stroke }) => ({
    stroke,
    lines: lines.flatMap(([a, b]) => within([place(a), place(b)], centre, radius)),
  }));
  plate.addBox(boxAround(centre[0], centre[1], 2 * radius, 2 * radius));
  plate.addBox(words.box);
  plate.addBox(boxAround(at[0], at[1], 2 * small, 2 * small));
  if (tied) plate.addLeader([at, centre]);
  return [
    ...fills([NORMALS.map(([x, y]): Spot => [centre[0] + x * radius, centre[1] + y * radius])], WHITE),
    ...drawn.fills.flatMap(({ polygons, ink }) => fills(inRing(polygons), ink)),
    ...runs.flatMap(({ lines, stroke }) => strokes(lines, stroke)),
    circle(...centre, radius, { stroke: ring }),
    circle(...at, small, { stroke: NARROW }),
    ...(tied ? [line(...ahead(at, along, small), ...ahead(centre, along, -radius), NARROW)] : []),
    words.item,
    ...marksIn(
      (drawn.named ?? []).map(({ mark, polygons }) => ({ mark, polygons: inRing(polygons) })),
      runs.flatMap(({ lines }) => lines),
      { centre, radius, pen },
    ),
  ];
}

/** On the wood itself, clear of its lines. */
function marksIn(
  named: NonNullable<Drawn["named"]>,
  lines: readonly Segment[],
  { centre: [x, y], radius, pen }: { readonly centre: Spot; readonly radius: number; readonly pen: Pen },
): readonly Item[] {
  const box = boxAround(x, y, 2 * radius, 2 * radius);
  const plate = new Plate({ x: box.left, y: box.top, width: 2 * radius, height: 2 * radius });
  const rim = NORMALS.map(([dx, dy]): Spot => [x + dx * radius, y + dy * radius]);
  for (const [i, spot] of rim.entries()) plate.addLine([spot, rim[(i + 1) % rim.length] as Spot]);
  for (const each of [...lines, ...named.flatMap(({ polygons }) => outlineOf(polygons))]) plate.addLine(each);
  return named.flatMap(({ mark, polygons }) => {
    const at = mostRoom(polygons, [], plate, box);
    if (!at || at.room < LETTER) return [];
    const { item, box: taken } = centred(pen, mark, at.spot, { size: TYPE.caption.size, font: "bold" });
    plate.addBox(taken);
    return [item];
  });
}

/** Half of what a mark takes up. */
const LETTER = 5;

/** From the circle to the middle of its words. */
const TO_WORDS = 7;
