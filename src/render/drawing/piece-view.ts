/** The finished piece, or some of its parts, seen from one side to a usual scale. */
import { ISOMETRIC, type Placed, type View } from "../../geometry/picture/index.ts";
import { isEmpty } from "../../geometry/solid.ts";
import { dot } from "../../geometry/vec.ts";
import { panesOf } from "../../solve/build/order/glazing.ts";
import type { Build } from "../../solve/build.ts";
import type { Frame } from "../style.ts";
import { BAR_HEIGHT, scaleBar } from "./bar.ts";
import { type Drawing, NOT_TO_SCALE, type Pen } from "./drawing.ts";
import { extentOfItems, fitInto, heightOf, scaleInto, widthOf } from "./fit.ts";
import { glassTint, sheen } from "./glass.ts";
import { onPage, strokes } from "./ink.ts";
import { openHoles } from "./open-holes.ts";
import { edgesOf, takePicture, tints } from "./picture.ts";
import { Plate } from "./plate.ts";
import { type Scale, usualScale } from "./scale.ts";
import { FINE, HIDDEN, OUTLINE } from "./strokes.ts";
import { outsideInWords, partsInWords } from "./words.ts";

export interface PieceViewOptions {
  readonly frame: Frame;
  readonly pen: Pen;
  readonly view?: View;
  /** Ids; all parts when nothing is said. */
  readonly parts?: readonly string[];
  /** Faces tinted by how they lie to the light. */
  readonly shaded?: boolean;
  /** Hidden edges dashed. */
  readonly hidden?: boolean;
  /** "usual": to one of the usual ratios, with a bar. "fit": as large as the frame allows. */
  readonly scale?: "usual" | "fit";
}

export function pieceView(build: Build, options: PieceViewOptions): Drawing {
  const { frame, pen, view = ISOMETRIC, scale: how = "usual" } = options;
  const wanted = options.parts ? new Set(options.parts) : null;
  const parts = build.parts.filter(({ id }) => wanted === null || wanted.has(id));
  const shown = new Set(parts.map(({ id }) => id));
  const outside = build.hardware.filter(({ carriedBy, solid }) => shown.has(carriedBy) && !isEmpty(solid));
  const items: Placed[] = [...parts, ...outside].map(({ id, solid }) => ({ id, solid }));
  const alt = `${partsInWords(parts)}, seen from ${view.name}. ${outsideInWords(parts, build.design.units, pen)}`;
  if (items.length === 0) return { items: [], alt: "", scale: NOT_TO_SCALE };
  const extent = extentOfItems(items, view);
  const axis = axisScale(view);
  const units = build.design.units;
  const room = how === "usual" ? { ...frame, height: frame.height - BAR_HEIGHT - 8 } : frame;
  const usual: Scale | null =
    how === "usual" && axis !== null
      ? usualScale(units, ({ points }) => {
          const k = points / axis;
          return widthOf(extent) * k <= room.width - 2 && heightOf(extent) * k <= room.height - 2;
        })
      : null;
  const fit = fitInto(extent, room, usual && axis ? usual.points / axis : scaleInto(extent, room) * 0.99);
  const clear = panesOf(build.design);
  const picture = takePicture(items, view, fit, { clear, hidden: options.hidden ?? false });
  const faces = options.shaded || clear.size > 0 ? picture.sight.faces() : [];
  const panes = faces.filter(({ id }) => clear.has(id));
  const wood = faces.filter(({ id }) => !clear.has(id));
  const rims = openHoles(build.holes, picture.stage, (id) => (shown.has(id) ? [0, 0, 0] : null));
  return {
    items: [
      ...(options.shaded ? [...tints(wood, fit, view), ...glassTint(panes, fit)] : []),
      ...sheen(panes, fit),
      ...strokes(
        picture.lines.flatMap(({ hidden }) => onPage(fit, hidden)),
        HIDDEN,
      ),
      ...edgesOf(picture, fit, new Plate(frame), OUTLINE, () => true),
      ...strokes(onPage(fit, rims), FINE),
      ...(usual ? scaleBar(usual, units, pen, [frame.x, frame.y + frame.height - 3]) : []),
    ],
    alt,
    scale: usual?.text ?? NOT_TO_SCALE,
  };
}

/**
 * How long a unit along an axis of the piece is drawn, where all axes that show are drawn equally long; null where they are
 * not. An isometric drawing is true to scale along the axes, by custom, so that a rule can be laid on it.
 */
export function axisScale({ towards }: View): number | null {
  const long = dot(towards, towards);
  const seen = ([0, 1, 2] as const).map((i) => 1 - (towards[i] * towards[i]) / long).filter((s) => s > 1e-9);
  const [first = 1] = seen;
  return seen.every((s) => Math.abs(s - first) < 1e-9) ? Math.sqrt(first) : null;
}
