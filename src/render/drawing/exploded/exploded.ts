/** The exploded drawing: every part off its neighbours, with its mark, and chain lines along which it goes home. */
import { ISOMETRIC, ISOMETRIC_LEFT, Stage, type View } from "../../../geometry/picture/index.ts";
import { minus, norm } from "../../../geometry/vec.ts";
import { panesOf } from "../../../solve/build/order/glazing.ts";
import type { Build, BuiltPart } from "../../../solve/build.ts";
import type { Frame } from "../../style.ts";
import { type Drawing, NOT_TO_SCALE, type Pen } from "../drawing.ts";
import { extentOfItems, fitInto, inset, scaleInto } from "../fit.ts";
import { glassTint, sheen } from "../glass.ts";
import { groundOf } from "../ground.ts";
import { onPage, strokes } from "../ink.ts";
import { labels, type Marked } from "../labels.ts";
import { openHoles } from "../open-holes.ts";
import { outsideOf } from "../outside.ts";
import { edgesOf, takePicture, tints } from "../picture.ts";
import { placeBalloons } from "../place-balloons.ts";
import { Plate } from "../plate.ts";
import { FINE, OUTLINE } from "../strokes.ts";
import { travelLines } from "../travel-lines.ts";
import { shareSeen } from "../visibility.ts";
import { partsInWords } from "../words.ts";
import { type Move, movesOf } from "./moves.ts";
import { outwards, type Shifts, spread } from "./spread.ts";

export interface ExplodedOptions {
  readonly frame: Frame;
  readonly pen: Pen;
  /** Only these parts, by their ids; absent: all. */
  readonly only?: ReadonlySet<string>;
}

/** Room for balloons round the picture. */
const MARGIN = 26;
/** Gaps tried, as shares of the piece's largest size, until enough of every part shows. */
const GAPS: readonly number[] = [0.09, 0.15, 0.24];
/** Share of a part that must show. */
const ENOUGH = 0.3;

export function explodedView(build: Build, { frame, pen, only }: ExplodedOptions): Drawing {
  const { design, joints } = build;
  const parts = only ? build.parts.filter(({ id }) => only.has(id)) : build.parts;
  if (!outsideOf(parts)) return { items: [], alt: "", scale: NOT_TO_SCALE };
  const { items, view, shifts } = bestTake(parts, movesAmong(build, parts));
  const room = inset(frame, MARGIN);
  const extent = extentOfItems(items, view);
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
  const balloons = placeBalloons(labels(items, faces, view, fit), plate, pen, groundOf(faces, fit, frame));
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
    alt: `${design.title} taken apart: ${partsInWords(parts)}.`,
    scale: NOT_TO_SCALE,
  };
}

interface Take {
  readonly items: readonly Marked[];
  readonly view: View;
  readonly shifts: Shifts;
}

/** Of some parts, without the others. */
function movesAmong(build: Build, parts: readonly BuiltPart[]): readonly Move[] {
  const there = new Set(parts.map(({ id }) => id));
  return movesOf(build).flatMap(({ parts: moving, into, along }): Move[] => {
    const [here, met] = [moving, into].map((ids) => ids.filter((id) => there.has(id)));
    return here && met && here.length > 0 && met.length > 0 ? [{ parts: here, into: met, along }] : [];
  });
}

/** The smallest gap and the usual view in which enough of every part shows; else those in which most does. */
function bestTake(parts: readonly BuiltPart[], known: readonly Move[]): Take {
  const moves = known.length > 0 ? known : outwards(parts);
  const size = Math.max(...parts.map(({ solid }) => norm(minus(solid.high, solid.low))));
  const takes = GAPS.flatMap((gap) => {
    const shifts = spread(parts, moves, gap * size);
    const items = parts.map(({ id, mark, solid }): Marked => ({ id, mark, solid, shift: shifts.get(id) ?? [0, 0, 0] }));
    return [ISOMETRIC, ISOMETRIC_LEFT].map((view): Take => ({ items, view, shifts }));
  });
  let best: { take: Take; shown: number } | null = null;
  for (const take of takes) {
    const stage = new Stage(take.items, take.view);
    const shown = take.items.reduce((sum, item) => sum + Math.min(1, shareSeen(item, stage) / ENOUGH), 0);
    if (shown >= parts.length) return take;
    if (!best || shown > best.shown + 1e-6) best = { take, shown };
  }
  return best?.take ?? { items: [], view: ISOMETRIC, shifts: new Map() };
}
