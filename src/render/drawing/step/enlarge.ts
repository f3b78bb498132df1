/** What is inside a circle of a picture, drawn again some times larger inside another circle. */
import type { Ink, Item, Stroke } from "../../document.ts";
import { BLACK, WHITE } from "../../palette.ts";
import { circle, line } from "../../shapes.ts";
import { TYPE } from "../../style.ts";
import type { Pen, Spot } from "../drawing.ts";
import { ahead, centred, fills, heading, strokes } from "../ink.ts";
import { boxAround, type Plate, type Segment } from "../plate.ts";
import { NARROW } from "../strokes.ts";
import { insideCircle, NORMALS, within } from "./circle.ts";
import type { Detail } from "./detail.ts";
import { wordsAt } from "./free-place.ts";

/** Lines and filled faces of the picture as they stand on the page. */
export interface Drawn {
  readonly strokes: readonly { readonly lines: readonly Segment[]; readonly stroke: Stroke }[];
  readonly fills: readonly { readonly polygons: readonly (readonly Spot[])[]; readonly ink: Ink }[];
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
  plate.addBox(boxAround(centre[0], centre[1], 2 * radius, 2 * radius));
  plate.addBox(words.box);
  plate.addBox(boxAround(at[0], at[1], 2 * small, 2 * small));
  if (tied) plate.addLeader([at, centre]);
  return [
    ...fills([NORMALS.map(([x, y]): Spot => [centre[0] + x * radius, centre[1] + y * radius])], WHITE),
    ...drawn.fills.flatMap(({ polygons, ink }) =>
      fills(
        polygons.map((polygon) => insideCircle(polygon.map(place), centre, radius)).filter(({ length }) => length > 2),
        ink,
      ),
    ),
    ...drawn.strokes.flatMap(({ lines, stroke }) =>
      strokes(
        lines.flatMap(([a, b]) => within([place(a), place(b)], centre, radius)),
        stroke,
      ),
    ),
    circle(...centre, radius, { stroke: ring }),
    circle(...at, small, { stroke: NARROW }),
    ...(tied ? [line(...ahead(at, along, small), ...ahead(centre, along, -radius), NARROW)] : []),
    words.item,
  ];
}

/** From the circle to the middle of its words. */
const TO_WORDS = 7;
