/**
 * The picture of a step: the unit in hand only. What is there in thin lines and unfilled, what is new in thick lines with a
 * tint, arrows of travel, screws where they go, marks of the new parts.
 */
import { picturePoint, type View, visibleFaces } from "../../../geometry/picture/index.ts";
import type { VisibleFace } from "../../../geometry/types.ts";
import { plus, times } from "../../../geometry/vec.ts";
import type { Build, Step } from "../../../solve/build.ts";
import { UNITS_PER_INCH } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { METAL } from "../../palette.ts";
import { type Frame, TYPE } from "../../style.ts";
import { type Drawing, NOT_TO_SCALE, type Pen, type Spot } from "../drawing.ts";
import { type Extent, extentOf, extentOfItems, fitInto, inset, scaleInto } from "../fit.ts";
import { groundOf } from "../ground.ts";
import { centred, fills, onPage, strokes } from "../ink.ts";
import { labels } from "../labels.ts";
import { linesOf, type Picture, SPECK, takePicture, tones } from "../picture.ts";
import { placeBalloons } from "../place-balloons.ts";
import { boxAround, Plate } from "../plate.ts";
import { FRESH, PRESENT } from "../strokes.ts";
import { seenArea } from "../targets.ts";
import { travelLines } from "../travel-lines.ts";
import { listed, stepInWords } from "../words.ts";
import { type Mover, travelArrow } from "./arrows.ts";
import { type Detail, detailOf } from "./detail.ts";
import { enlarged } from "./enlarge.ts";
import { mouthsOf } from "./mouths.ts";
import { type Scene, sceneOf } from "./scene.ts";
import { drawDriven, reachOf, rodsOf } from "./screws.ts";
import { sideSeen } from "./side-seen.ts";
import { chooseView } from "./views.ts";

/** From where and how large a picture was taken, so that the next may be taken alike. */
export interface Take {
  readonly unit: string;
  readonly view: View;
  /** Points for each unit of 1/16 µm. */
  readonly scale: number;
}

export interface StepPictureOptions {
  readonly frame: Frame;
  readonly pen: Pen;
  /** How the step before was taken: view and size stay while they serve. */
  readonly before?: Take | null;
  /** Methods of joining that steps before have shown close. */
  readonly told?: ReadonlySet<string>;
}

export interface StepPicture extends Drawing {
  readonly take: Take | null;
  /** The method of joining that is shown close here. */
  readonly close: string | null;
  /** The same for all pictures that show the same. */
  readonly key: string;
  /** The same in a lower frame; null where it would not show the same. */
  readonly lower: (height: number) => Drawing | null;
}

const NOTHING: ReadonlySet<string> = new Set();

/** Room for balloons round the picture. */
const MARGIN = 27;
/** Small units are not blown up beyond half their size. */
const LARGEST = 36 / UNITS_PER_INCH;

export function stepPicture(build: Build, step: Step, options: StepPictureOptions): StepPicture {
  const { frame, pen, told = NOTHING } = options;
  const before = options.before?.unit === step.unit ? options.before : null;
  const scene = sceneOf(build, step);
  if (scene.items.length === 0) return EMPTY;
  const { items, fresh, screws } = scene;
  // Where screws are driven they count; the holes that they go into lie inside the joint.
  const driveways = screws.flatMap(({ mouth, direction, isDowel }) => (isDowel ? [] : [{ at: mouth, direction }]));
  const mouths = driveways.length > 0 || step.shows.as ? driveways : mouthsOf(build, step);
  // Where parts are new they are looked at; else what is put on them.
  const parts = new Set([...fresh].filter((id) => !scene.hardware.has(id)));
  const view = chooseView({ items, fresh: parts.size > 0 ? parts : fresh, mouths }, step.up, before?.view ?? null);
  const extent = sceneExtent(scene, view);
  const scale = sizeFor(extent, inset(frame, MARGIN), before?.scale ?? null);
  const picture = takePicture(items, view, fitInto(extent, frame, scale), SPECK.step);
  const taken: Taken = { build, step, scene, view, extent, picture, faces: visibleFaces(items, view, picture.stage) };
  const { detail, ...drawing } = drawn(taken, frame, scale, pen, told);
  return {
    ...drawing,
    close: detail?.method ?? null,
    key: keyOf(scene, view, build, step),
    take: { unit: step.unit, view, scale },
    lower: (height) => {
      const low = { ...frame, height };
      const found = drawn(taken, low, sizeFor(extent, inset(low, MARGIN), scale), pen, told);
      return found.detail?.method === detail?.method ? found : null;
    },
  };
}

const EMPTY: StepPicture = {
  items: [],
  alt: "",
  scale: NOT_TO_SCALE,
  take: null,
  close: null,
  key: "",
  lower: () => null,
};

/** Parts alike count as the same where they stand alone. */
function keyOf(
  { items, fresh, open, screws, groups }: Scene,
  { name }: View,
  { parts }: Build,
  { shows: { as } }: Step,
): string {
  const alone = items.length === 1 && !as;
  const shown = items.map(({ id, mark, shift }) => [alone ? mark : id, fresh.has(id), shift]);
  const sizes = alone ? parts.find(({ id }) => id === items[0]?.id)?.features.length : 0;
  return JSON.stringify([name, shown, sizes, open, screws.map(({ id }) => id), groups.map(({ along }) => along)]);
}

/** What does not depend on the frame. */
interface Taken {
  readonly build: Build;
  readonly step: Step;
  readonly scene: Scene;
  readonly view: View;
  readonly extent: Extent;
  readonly picture: Picture;
  readonly faces: readonly VisibleFace[];
}

function drawn(
  { build, step, scene, view, extent, picture, faces }: Taken,
  frame: Frame,
  scale: number,
  pen: Pen,
  told: ReadonlySet<string>,
): Drawing & { readonly detail: Detail | null } {
  const { items, fresh, hardware, shifts, screws, groups, pencil } = scene;
  const fit = fitInto(extent, inset(frame, MARGIN), scale);
  const plate = new Plate(frame);
  const ground = groundOf(faces, fit, frame);
  const isNew = (id: string) => fresh.has(id);
  const tint = [
    ...tones(
      faces.filter(({ id }) => isNew(id) && !hardware.has(id)),
      fit,
      view,
    ),
    ...tones(
      faces.filter(({ id }) => hardware.has(id)),
      ...[fit, view, METAL],
    ),
  ];
  const thin = linesOf(picture, fit, plate, (id) => !isNew(id));
  const thick = linesOf(picture, fit, plate, isNew);
  const ways = travelLines(build.joints, shifts, picture.stage, fit);
  const driven = screws.flatMap((screw) => drawDriven(screw, picture.stage, fit, plate));
  const movers = items.map(
    ({ id, solid, shift = [0, 0, 0] }): Mover => ({
      id,
      middle: fit.spot(view, plus(times(plus(solid.low, solid.high), 0.5), shift)),
      edges: picture.lines.flatMap((line) => (line.id === id ? onPage(fit, line.visible) : [])),
    }),
  );
  const arrows = groups.flatMap((group) => travelArrow(group, movers, view, plate, ground));
  const joins = step.kind === "join" || step.kind === "glue-up" || hardware.size > 0;
  const { stage } = picture;
  const detail = joins ? detailOf(build, scene, { view, fit, plate, stage, ground, faces }, told) : null;
  const rods = screws.flatMap((screw) => (screw.isDowel ? rodsOf(screw, stage, fit, detail?.times ?? 1) : []));
  const lines = [{ lines: thin, stroke: PRESENT }, { lines: thick, stroke: FRESH }, ...rods];
  const close = detail ? enlarged(detail, { fills: tint, strokes: lines }, plate, pen) : [];
  // Of a body that comes off or goes on again only the part in front.
  const marked = new Set(step.shows.fresh);
  const named = clearerHalves(hardware, (id) => seenArea(faces, id, fit.scale));
  const aside = step.shows.as ? null : sideSeen(view, step.up);
  const words = aside === null ? [] : captioned(aside, plate, pen);
  const marks = labels(
    items.filter(({ id }) => step.shows.as || marked.has(id) || named.has(id)),
    faces,
    view,
    fit,
  );
  return {
    items: [
      ...tint.flatMap(({ ink, polygons }) => fills(polygons, ink)),
      ...ways,
      ...strokes(thin, PRESENT),
      ...strokes(thick, FRESH),
      ...strokes(
        pencil.map(([from, to]) => [fit.spot(view, from), fit.spot(view, to)]),
        PRESENT,
      ),
      ...driven,
      ...arrows,
      ...close,
      ...words,
      ...placeBalloons(marks, plate, pen, ground),
    ],
    alt:
      stepInWords(build, step, view) +
      (step.shows.as ? " Side by side on the bench." : "") +
      (scene.open.length > 0
        ? ` Drawn open: ${listed(scene.open.map((name) => name.replaceAll(/[-.]/g, " ")))}.`
        : "") +
      (detail ? ` Shown ${detail.times} times larger: ${detail.method}.` : ""),
    scale: NOT_TO_SCALE,
    detail,
  };
}

/** Of what is bought as one, the half that is seen better. */
function clearerHalves(hardware: ReadonlyMap<string, string>, seen: (id: string) => number): ReadonlySet<string> {
  const best = new Map<string, string>();
  for (const [id, whole] of hardware) {
    const other = best.get(whole);
    if (other === undefined || seen(id) > seen(other)) best.set(whole, id);
  }
  return new Set(best.values());
}

/** In the first corner where there is room for it, the lower left one at last. */
function captioned(words: string, plate: Plate, pen: Pen): readonly Item[] {
  const { x, y, width, height } = plate.frame;
  const { font, size, ink } = TYPE.caption;
  const half = pen.measure(words, font, size) / 2 + 1;
  const corners = [x + half, x + width - half].flatMap((cx) => [y + height - 7, y + 7].map((cy): Spot => [cx, cy]));
  const free = ([cx, cy]: Spot): boolean => {
    const box = boxAround(cx, cy, 2 * half, 12);
    return plate.isFree(box) && plate.linesThrough(box) === 0;
  };
  const { item, box } = centred(pen, words, corners.find(free) ?? (corners[0] as Spot), { font, size, ink });
  plate.addBox(box);
  return [item];
}

function sceneExtent({ items, screws }: Scene, view: View): Extent {
  const { low, high } = extentOfItems(items, view);
  return extentOf([low, high, ...screws.flatMap(reachOf).map((p) => picturePoint(view, p))]);
}

/** The size of the picture before, while it goes in and fills half of what it could. */
function sizeFor(extent: Extent, room: Frame, before: number | null): number {
  const most = Math.min(LARGEST, scaleInto(extent, room));
  return before !== null && before <= most && before >= most / 2 ? before : most;
}
