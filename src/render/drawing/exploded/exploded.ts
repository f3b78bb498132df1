/** The exploded drawing: every part off its neighbours, with its mark, and chain lines along which it goes home. */
import { panesOf } from "../../../solve/build/order/glazing.ts";
import type { Build } from "../../../solve/build.ts";
import type { Frame } from "../../style.ts";
import { type Drawing, NOT_TO_SCALE, type Pen } from "../drawing.ts";
import { fitInto, inset, scaleInto } from "../fit.ts";
import { glassTint, sheen } from "../glass.ts";
import { partAt } from "../ground.ts";
import { onPage, strokes } from "../ink.ts";
import { labels } from "../labels.ts";
import { openHoles } from "../open-holes.ts";
import { edgesOf, takePicture, tints } from "../picture.ts";
import { placeBalloons } from "../place-balloons.ts";
import { Plate } from "../plate.ts";
import { FINE, OUTLINE } from "../strokes.ts";
import { tollOf } from "../toll.ts";
import { travelLines } from "../travel-lines.ts";
import { partsInWords } from "../words.ts";
import { type TakenApart, takeApart, toFill } from "./take-apart.ts";

export interface ExplodedOptions {
  readonly frame: Frame;
  readonly pen: Pen;
  /** Some parts, or all of them taken apart before. */
  readonly taken?: TakenApart | null;
}

/** Room for balloons round the picture. */
export const MARGIN = 24;

/** More marks than this in one picture hide what they point at: parts alike then have one, wherever they are. */
const MANY = 14;

export function explodedView(build: Build, { frame, pen, taken = takeApart(build) }: ExplodedOptions): Drawing {
  const { design, joints } = build;
  if (!taken) return { items: [], alt: "", scale: NOT_TO_SCALE };
  const room = inset(frame, MARGIN);
  const { items, view, shifts, extent } = toFill(taken, room);
  const fit = fitInto(extent, room, scaleInto(extent, room));
  const clear = panesOf(design);
  const picture = takePicture(items, view, fit, { clear });
  const faces = picture.sight.faces();
  const panes = faces.filter(({ id }) => clear.has(id));
  const wood = faces.filter(({ id }) => !clear.has(id));
  const plate = new Plate(frame);
  const edges = edgesOf(picture, fit, plate, OUTLINE, () => true);
  const shifted = new Map(items.map(({ id, shift }) => [id, shift ?? ([0, 0, 0] as const)]));
  const open = openHoles(build.holes, picture.stage, (id) => shifted.get(id) ?? null);
  const rims = strokes(onPage(fit, open), FINE);
  const ways = travelLines(joints, shifts, picture.stage, fit);
  const toll = tollOf(partAt(faces, fit, frame));
  // Of several alike the one is pointed at that lies best for its mark.
  const each = labels(items, faces, view, fit);
  const all = each.length > MANY ? labels(items, faces, view, fit, undefined, true) : each;
  const marks = all.map(({ any, ...each }) => (any ? { ...each, targets: any } : each));
  const balloons = placeBalloons(marks, plate, pen, () => 0, { toll });
  const there = new Set(items.map(({ id }) => id));
  return {
    items: [
      ...tints(wood, fit, view),
      ...glassTint(panes, fit),
      ...sheen(panes, fit),
      ...ways,
      ...edges,
      ...rims,
      ...balloons,
    ],
    alt: `${design.title} taken apart: ${partsInWords(build.parts.filter(({ id }) => there.has(id)))}.`,
    scale: NOT_TO_SCALE,
  };
}
