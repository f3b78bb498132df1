/**
 * The picture of a step: the unit in hand only. What is there in thin lines and unfilled, what is new in thick lines with a
 * tint, arrows of travel, screws where they go, marks of the new parts.
 */
import { picturePoint, stretch, type View } from "../../../geometry/picture/index.ts";
import type { Solid, Vec } from "../../../geometry/types.ts";
import { minus, plus, times } from "../../../geometry/vec.ts";
import { panesOf } from "../../../solve/build/order/glazing.ts";
import type { Build, Step } from "../../../solve/build.ts";
import { BLACK, METAL } from "../../palette.ts";
import type { Frame } from "../../style.ts";
import { type Drawing, NOT_TO_SCALE, type Pen } from "../drawing.ts";
import { fitInto } from "../fit.ts";
import { glassTint, sheen, sheenLines } from "../glass.ts";
import { groundOf } from "../ground.ts";
import { fills, heading, onPage, strokes } from "../ink.ts";
import { linesOf, SPECK, takePicture, tones } from "../picture.ts";
import { placeBalloons } from "../place-balloons.ts";
import { Plate } from "../plate.ts";
import { CHAIN, FINE, FRESH, PRESENT } from "../strokes.ts";
import { travelRuns } from "../travel-lines.ts";
import { listed, stepInWords } from "../words.ts";
import { type Mover, travelArrow } from "./arrows.ts";
import type { StepPicture, StepPictureOptions } from "./asked.ts";
import { captioned, captionUnder } from "./captions.ts";
import { isInside, segmentIn } from "./close-up.ts";
import { type Detail, detailOf } from "./detail.ts";
import { enlarged } from "./enlarge.ts";
import { located } from "./locator.ts";
import { marksOf } from "./marks.ts";
import { mouthsOf } from "./mouths.ts";
import { type Scene, sceneOf } from "./scene.ts";
import { drawDriven, rodsOf } from "./screws.ts";
import { highestFor, sceneExtent, shotOf, sizeFor, type Taken } from "./shot.ts";
import { sideSeen } from "./side-seen.ts";
import { chooseView } from "./views.ts";
import { wallFixing } from "./wall/fixing.ts";
import { wallPicture } from "./wall/wall-picture.ts";

const NOTHING: ReadonlySet<string> = new Set();

/** The arm of a lid support, its outline. */
const ARM = { width: 2.4, ink: BLACK, cap: "round" } as const;

/** In points: lines this close together, of what is new, are finer. */
const CLOSE = 4;

export function stepPicture(build: Build, step: Step, options: StepPictureOptions): StepPicture {
  const { frame, pen, told = NOTHING } = options;
  const before = options.before?.unit === step.unit ? options.before : null;
  const scene = sceneOf(build, step);
  if (scene.items.length === 0) return EMPTY;
  const tied = wallFixing(build, step);
  if (tied) return wallPicture(build, step, scene, tied, options);
  const { items, fresh, screws } = scene;
  // Where screws are driven they count; the holes that they go into lie inside the joint.
  const driveways = screws.flatMap(({ mouth, direction, isDowel }) => (isDowel ? [] : [{ at: mouth, direction }]));
  const mouths = driveways.length > 0 || step.shows.as ? driveways : mouthsOf(build, step);
  // Where parts are new they are looked at; else what is put on them.
  const parts = new Set([...fresh].filter((id) => !scene.hardware.has(id)));
  const subject = { items, mouths, ...(parts.size > 0 ? { fresh: parts, hardware: halvesOf(scene) } : { fresh }) };
  const view = chooseView(subject, step.up, before?.view ?? null);
  const extent = sceneExtent(scene, view);
  const scale = sizeFor(extent, frame, before?.scale ?? null);
  const clear = panesOf(build.design);
  const picture = takePicture(items, view, fitInto(extent, frame, scale), { clear, speck: SPECK.step });
  const taken: Taken = { build, step, scene, view, extent, picture, faces: picture.sight.faces() };
  const { detail, isCloseUp, ...drawing } = drawn(taken, frame, scale, pen, told);
  return {
    ...drawing,
    close: detail?.method ?? null,
    key: keyOf(scene, view, build, step),
    take: { unit: step.unit, view, scale },
    highest: isCloseUp ? 0 : highestFor(extent, frame.width),
    within: (size) => {
      const other = { ...frame, ...size };
      const larger = other.width > frame.width || other.height > frame.height;
      const found = drawn(taken, other, sizeFor(extent, other, larger ? null : scale), pen, told);
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
  highest: 0,
  within: () => null,
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

function drawn(
  taken: Taken,
  frame: Frame,
  scale: number,
  pen: Pen,
  told: ReadonlySet<string>,
): Drawing & { readonly detail: Detail | null; readonly isCloseUp: boolean } {
  const { build, step, scene, view } = taken;
  const { items, fresh, hardware, shifts, groups, pencil } = scene;
  const shot = shotOf(taken, frame, scale);
  const { fit, picture, faces, window } = shot;
  const { stage } = picture;
  const plate = new Plate(shot.frame);
  const ground = groundOf(faces, fit, shot.frame);
  const isIn = (p: Vec): boolean => window === null || isInside(window, picturePoint(view, p));
  const screws = scene.screws.filter(({ head, mouth, point }) => [head, mouth, point].every(isIn));
  const clear = panesOf(build.design);
  const panes = faces.filter(({ id }) => clear.has(id));
  for (const line of sheenLines(panes, fit)) plate.addLine(line);
  const isNew = (id: string) => fresh.has(id);
  const tint = [
    ...tones(
      faces.filter(({ id }) => isNew(id) && !hardware.has(id) && !clear.has(id)),
      fit,
      view,
    ),
    ...tones(
      faces.filter(({ id }) => hardware.has(id)),
      ...[fit, view, METAL],
    ),
  ];
  const slender = new Set(items.filter(({ solid }) => thinnest(solid) * fit.scale < CLOSE).map(({ id }) => id));
  const thin = linesOf(picture, fit, plate, (id) => !isNew(id));
  const sturdy = linesOf(picture, fit, plate, (id) => isNew(id) && !slender.has(id));
  const [thick, short] = [true, false].map((long) =>
    sturdy.filter((line) => heading(...line).distance >= CLOSE === long),
  );
  const fine = [...(short ?? []), ...linesOf(picture, fit, plate, (id) => isNew(id) && slender.has(id))];
  const runs = travelRuns(build.joints, shifts, stage).flatMap((run) => (window ? segmentIn(window, run) : [run]));
  const driven = screws.flatMap((screw) => drawDriven(screw, stage, fit, plate));
  const arms = scene.arms.flatMap(([from, to]) =>
    stage
      .look(from, to)
      .seen.map((run) => stretch(view, from, to, run))
      .flatMap((run) => onPage(fit, window ? segmentIn(window, run) : [run])),
  );
  for (const arm of arms) plate.addLine(arm);
  const movers = items.map(
    ({ id, solid, shift = [0, 0, 0] }): Mover => ({
      id,
      middle: fit.spot(view, plus(times(plus(solid.low, solid.high), 0.5), shift)),
      edges: picture.lines.flatMap((line) => (line.id === id ? onPage(fit, line.visible) : [])),
    }),
  );
  const arrows = groups.flatMap((group) => travelArrow(group, movers, view, plate, ground));
  const joins = step.kind === "join" || step.kind === "glue-up" || hardware.size > 0;
  const shown = { view, fit, plate, stage, ground, faces };
  const detail = joins && !window ? detailOf(build, scene, shown, told) : null;
  const rods = screws.flatMap((screw) => (screw.isDowel ? rodsOf(screw, stage, fit, detail?.times ?? 1) : []));
  const lines = [
    { lines: thin, stroke: PRESENT },
    { lines: thick ?? [], stroke: FRESH },
    { lines: fine, stroke: FINE },
  ];
  const close = detail ? enlarged(detail, { fills: tint, strokes: [...lines, ...rods] }, plate, pen) : [];
  const aside = step.shows.as ? null : sideSeen(view, step.up);
  const words =
    aside === null
      ? []
      : window
        ? [captionUnder(aside, shot.frame, pen)]
        : captioned(aside, fit.page(taken.extent.low)[1], plate, pen);
  const marks = marksOf(step, scene, { faces, view, fit, isCloseUp: window !== null });
  return {
    items: [
      ...tint.flatMap(({ ink, polygons }) => fills(polygons, ink)),
      ...glassTint(
        panes.filter(({ id }) => isNew(id)),
        fit,
      ),
      ...sheen(panes, fit),
      ...strokes(onPage(fit, runs), CHAIN),
      ...lines.flatMap((each) => strokes(each.lines, each.stroke)),
      ...strokes(
        pencil.map(([from, to]) => [fit.spot(view, from), fit.spot(view, to)]),
        PRESENT,
      ),
      ...strokes(arms, ARM),
      ...strokes(arms, { ...ARM, width: ARM.width - 1, ink: METAL.light }),
      ...driven,
      ...arrows,
      ...close,
      ...words,
      ...placeBalloons(marks, plate, pen, ground),
      ...(window ? located(shot.frame, window, taken, scene, view) : []),
    ],
    alt:
      stepInWords(build, step, view) +
      (step.shows.as ? " Side by side on the bench." : "") +
      (scene.open.length > 0
        ? ` Drawn open: ${listed(scene.open.map((name) => name.replaceAll(/[-.]/g, " ")))}.`
        : "") +
      (window ? " Only what is around it is drawn." : "") +
      (detail ? ` Shown ${detail.times} times larger: ${detail.method}.` : ""),
    scale: NOT_TO_SCALE,
    detail,
    isCloseUp: window !== null,
  };
}

const thinnest = ({ low, high }: Solid): number => Math.min(...minus(high, low));

/** The ids of what is put on, those of one piece of hardware together. */
const halvesOf = ({ hardware }: Scene): readonly (readonly string[])[] =>
  [...new Set(hardware.values())].map((whole) => [...hardware].flatMap(([id, of]) => (of === whole ? [id] : [])));
