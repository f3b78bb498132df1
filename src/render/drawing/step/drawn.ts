/** One picture of a step as it stands on the page: lines, tones, screws, arrows, what is drawn larger, words and marks. */
import { picturePoint, stretch } from "../../../geometry/picture/index.ts";
import type { Solid, Vec } from "../../../geometry/types.ts";
import { dot, minus, norm, plus, times } from "../../../geometry/vec.ts";
import { panesOf } from "../../../solve/build/order/glazing.ts";
import { BLACK, METAL } from "../../palette.ts";
import type { Frame } from "../../style.ts";
import { type Drawing, NOT_TO_SCALE, type Pen } from "../drawing.ts";
import { glassTint, sheen, sheenLines } from "../glass.ts";
import { groundOf } from "../ground.ts";
import { fills, heading, onPage, strokes } from "../ink.ts";
import { linesOf, tones } from "../picture.ts";
import { placeBalloons } from "../place-balloons.ts";
import { Plate } from "../plate.ts";
import { CHAIN, FINE, FRESH, HIDDEN, PRESENT } from "../strokes.ts";
import { travelRuns } from "../travel-lines.ts";
import { listed, stepInWords } from "../words.ts";
import { type Mover, travelArrow } from "./arrows.ts";
import { BESIDE, BUTTON_CUT, buttonCut, type Seat, seatsOf } from "./button-cut.ts";
import { captioned, captionUnder, offTheLine, UNDER } from "./captions.ts";
import { isInside, segmentIn } from "./close-up.ts";
import { type Detail, detailOf } from "./detail.ts";
import { cutsEdges, edgeDetail } from "./edge-detail.ts";
import { enlarged } from "./enlarge.ts";
import { located } from "./locator.ts";
import { marksOf } from "./marks.ts";
import { ceilingOf } from "./scene.ts";
import { drawDriven, onlyRings, rodsOf } from "./screws.ts";
import { shotOf, sizeFor, type Taken } from "./shot.ts";
import { sideSeen } from "./side-seen.ts";

/** The arm of a lid support, its outline. */
const ARM = { width: 2.4, ink: BLACK, cap: "round" } as const;

/** In points: lines this close together, of what is new, are finer. */
const CLOSE = 4;

/** How it is put on the page. */
export interface OnPage {
  readonly frame: Frame;
  /** Points for each unit of 1/16 µm in the picture before, where this one is to be as large. */
  readonly before: number | null;
  readonly pen: Pen;
  /** Methods of joining that are shown close already. */
  readonly told: ReadonlySet<string>;
  /** It is one of two pictures, which shows the whole; its words stand below it. */
  readonly isOneOfTwo?: boolean;
}

export interface Painted extends Drawing {
  readonly detail: Pick<Detail, "method"> | null;
  /** Only what is around something is drawn. */
  readonly isCloseUp: boolean;
  /** Points for each unit. */
  readonly size: number;
}

export function drawnOnce(taken: Taken, page: OnPage): Painted {
  const seats = page.told.has(BUTTON_CUT) || page.isOneOfTwo ? [] : seatsOf(taken.build, taken.scene);
  // As large as it can be with the circle beside it.
  for (const beside of seats.length === 0 ? [] : BESIDE) {
    const found = paint(taken, page, seats, beside);
    if (found.detail?.method === BUTTON_CUT) return found;
  }
  const plain = paint(taken, page, [], 0);
  if (plain.detail || !cutsEdges(taken.scene)) return plain;
  for (const beside of BESIDE) {
    const found = paint(taken, page, [], beside);
    if (found.detail) return found;
  }
  return plain;
}

/** `lowered`: the frame is lower already by the line of words under it. */
function paint(taken: Taken, place: OnPage, seats: readonly Seat[], beside: number, lowered = false): Painted {
  const { frame, before, pen, told, isOneOfTwo = false } = place;
  const { build, step, scene, view, behind } = taken;
  const room = { ...frame, width: frame.width - beside };
  const scale = sizeFor(taken.extent, room, before);
  const { items, fresh, hardware, shifts, groups, pencil } = scene;
  const shot = shotOf(taken, room, scale, isOneOfTwo || seats.length > 0);
  const { fit, picture, faces, window } = shot;
  const { stage } = picture;
  const page = beside === 0 ? shot.frame : frame;
  const plate = new Plate(page);
  const ground = groundOf(faces, fit, page);
  const isIn = (p: Vec): boolean => window === null || isInside(window, picturePoint(view, p));
  const screws = scene.screws.filter(({ head, mouth, point }) => [head, mouth, point].every(isIn));
  const clear = panesOf(build.design);
  const panes = faces.filter(({ id }) => clear.has(id));
  for (const line of sheenLines(panes, fit)) plate.addLine(line);
  const isNew = (id: string) => fresh.has(id);
  const isBanded = ({ id, normal }: (typeof faces)[number]): boolean =>
    scene.done?.some((each) => each.id === id && each.banded.some((side) => dot(side, normal) > 0.99 * norm(normal))) ??
    false;
  const isPutOn = (face: (typeof faces)[number]): boolean => hardware.has(face.id) || isBanded(face);
  const tint = [
    ...tones(
      faces.filter((face) => isNew(face.id) && !isPutOn(face) && !clear.has(face.id)),
      fit,
      view,
    ),
    ...tones(faces.filter(isPutOn), ...[fit, view, METAL]),
  ];
  const slender = new Set(items.filter(({ solid }) => thinnest(solid) * fit.scale < CLOSE).map(({ id }) => id));
  const thin = linesOf(picture, fit, plate, (id) => !isNew(id));
  const sturdy = linesOf(picture, fit, plate, (id) => isNew(id) && !slender.has(id));
  const [thick, short] = [true, false].map((long) =>
    sturdy.filter((line) => heading(...line).distance >= CLOSE === long),
  );
  const fine = [...(short ?? []), ...linesOf(picture, fit, plate, (id) => isNew(id) && slender.has(id))];
  const runs = travelRuns(
    build.joints,
    shifts,
    stage,
    groups.map(({ along }) => along),
  ).flatMap((run) => (window ? segmentIn(window, run) : [run]));
  const rings = onlyRings(screws, (p) => fit.spot(view, p));
  const driven = screws.flatMap((screw) => drawDriven(screw, stage, fit, plate, rings.has(screw.id)));
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
  const button = seats.length === 0 ? null : buttonCut(build, seats, ceilingOf(step), shown, pen);
  const detail = window || button ? null : joins ? detailOf(build, scene, shown, told) : edgeDetail(scene, shown);
  const rods = screws.flatMap((screw) => (screw.isDowel ? rodsOf(screw, stage, fit, detail?.times ?? 1) : []));
  const lines = [
    { lines: thin, stroke: PRESENT },
    { lines: thick ?? [], stroke: FRESH },
    { lines: fine, stroke: FINE },
  ];
  const named = (detail?.parts ?? []).flatMap((id) => {
    const mark = build.parts.find((part) => part.id === id)?.mark;
    const own = faces.filter((face) => face.id === id);
    return mark ? [{ mark, polygons: own.flatMap(({ polygons }) => polygons.map((each) => each.map(fit.page))) }] : [];
  });
  const close =
    button ?? (detail ? enlarged(detail, { fills: tint, strokes: [...lines, ...rods], named }, plate, pen) : []);
  const says = scene.done?.[0]?.says ?? null;
  const aside = step.shows.as || isOneOfTwo ? says : sideSeen(view, ceilingOf(step));
  const words = taken.close
    ? { items: captionUnder(taken.close.words, shot.frame, pen), box: null }
    : aside === null
      ? { items: [], box: null }
      : window
        ? { items: captionUnder([aside], shot.frame, pen), box: null }
        : captioned(aside, fit.page(taken.extent.low)[1], plate, pen);
  if (words.isUnder && !lowered)
    return paint(taken, { ...place, frame: { ...frame, height: frame.height - UNDER } }, seats, beside, true);
  const unseen = picture.lines.filter(({ id }) => behind.has(id)).flatMap((each) => onPage(fit, each.hidden));
  const marks = marksOf(step, scene, { faces, view, fit, behind, isCloseUp: window !== null || isOneOfTwo });
  return {
    items: [
      ...tint.flatMap(({ ink, polygons }) => fills(polygons, ink)),
      ...glassTint(
        panes.filter(({ id }) => isNew(id)),
        fit,
      ),
      ...sheen(panes, fit),
      ...strokes(onPage(fit, runs), CHAIN),
      ...strokes(unseen, HIDDEN),
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
      ...words.items,
      ...placeBalloons(marks, plate, pen, ground, { toll: offTheLine(words, pen) }),
      ...(window ? located(shot.frame, window, taken.close?.whole ?? taken, scene, view, scene.arms) : []),
    ],
    alt:
      stepInWords(build, step, view) +
      (step.shows.as ? " Side by side on the bench." : "") +
      (scene.open.length > 0
        ? ` Drawn open: ${listed(scene.open.map((name) => name.replaceAll(/[-.]/g, " ")))}.`
        : "") +
      (window ? ` ${taken.close?.words.join(". ") ?? "Only what is around it is drawn"}.` : "") +
      (detail ? ` Shown ${detail.times} times larger: ${detail.method}.` : "") +
      (button ? ` Beside it: ${BUTTON_CUT}.` : ""),
    scale: NOT_TO_SCALE,
    detail: button ? { method: BUTTON_CUT } : detail,
    size: scale,
    isCloseUp: window !== null,
  };
}

const thinnest = ({ low, high }: Solid): number => Math.min(...minus(high, low));
