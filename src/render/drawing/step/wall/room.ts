/** A piece before its wall: the wall, its studs in broken lines, the floor line, and how the piece is tied to it. */

import { type Stage, stretch, viewFrom } from "../../../../geometry/picture/index.ts";
import type { Vec } from "../../../../geometry/types.ts";
import { panesOf } from "../../../../solve/build/order/glazing.ts";
import type { Build } from "../../../../solve/build.ts";
import { toNumber, UNITS_PER_INCH } from "../../../../units/index.ts";
import type { Item, Stroke } from "../../../document.ts";
import { BLACK, METAL, WALL } from "../../../palette.ts";
import { circle } from "../../../shapes.ts";
import type { Frame } from "../../../style.ts";
import type { Label } from "../../balloon-places.ts";
import type { Pen } from "../../drawing.ts";
import { extentOfItems, type Fit, fitInto, inset, scaleInto } from "../../fit.ts";
import { groundOf } from "../../ground.ts";
import { fills, onPage, strokes } from "../../ink.ts";
import { labels, type Marked } from "../../labels.ts";
import { linesOf, SPECK, takePicture, tints } from "../../picture.ts";
import { placeBalloons } from "../../place-balloons.ts";
import { Plate } from "../../plate.ts";
import { CHAIN, FINE, HIDDEN, PRESENT } from "../../strokes.ts";
import type { Scene } from "../scene.ts";
import { around, boxBetween, comingLater, intoWall, placeAt, STUD, type WallFixing } from "./fixing.ts";
import { STRAP, strapOf } from "./strap.ts";

/** Room for labels round it. */
const MARGIN = 10;
const LARGEST = 12 / UNITS_PER_INCH;
/** The wall goes on so far beside the piece and above it, as a share of the piece's width; at least so far. */
const BESIDE = 0.22;
const LEAST = 5 * UNITS_PER_INCH;
/** Where a leader may end on a stud, as shares of its height. */
const ALONG_STUD = [0.95, 0.05, 0.88, 0.12] as const;
const HEAD = 1.3;
const FLOOR: Stroke = { width: 0.8, ink: BLACK };
/** In front of the wall by so little that its own face hides nothing. */
const HAIR = 32;

export function roomPicture(build: Build, scene: Scene, fixing: WallFixing, frame: Frame, pen: Pen): readonly Item[] {
  const { to, sign, along, wall, floor } = fixing;
  const bounds = around(build.parts);
  const wide = Math.max(LEAST, BESIDE * (bounds.high[along] - bounds.low[along]));
  const [left, right] = [bounds.low[along] - wide, bounds.high[along] + wide];
  const [low, high] = [floor ?? bounds.low[2] - wide, bounds.high[2] + wide];
  const view = viewFrom(
    to === 1 ? (sign === 1 ? FROM_FRONT : FROM_BACK) : "the side",
    placeAt(fixing, 1, -sign, 1).map(Math.sign) as unknown as Vec,
  );
  const behind = wall + sign * intoWall(fixing).lining;
  const panel = boxBetween(
    placeAt(fixing, left, Math.min(wall, behind), low),
    placeAt(fixing, right, Math.max(wall, behind), high),
  );
  const straps =
    fixing.kind === "strap" ? fixing.fittings.flatMap((each) => strapOf(fixing, each, bounds.high[2]) ?? []) : [];
  const things: readonly Marked[] = [...scene.items, ...straps.map(({ bracket }) => bracket)];
  const items: readonly Marked[] = [...things, { id: WALL_ID, mark: "wall", solid: panel }];
  const extent = extentOfItems(items, view);
  const scale = Math.min(LARGEST, scaleInto(extent, inset(frame, MARGIN)));
  const fit = fitInto(extent, inset(frame, MARGIN), scale);
  const picture = takePicture(items, view, fit, { clear: panesOf(build.design), speck: SPECK.step, hidden: true });
  const { stage } = picture;
  const faces = picture.sight.faces();
  const plate = new Plate(frame);
  const onWall = (a: number, b: number): Vec => placeAt(fixing, a, wall - sign * HAIR, b);
  const seen = (from: Vec, until: Vec) =>
    seenOf(stage, from, until).map(([p, q]) => [fit.page(p), fit.page(q)] as const);
  const middles = studsBetween(fixing, left + STUD.wide, right - STUD.wide);
  const studs = middles.flatMap((middle) =>
    [-1, 1].flatMap((side) =>
      seen(onWall(middle + (side * STUD.wide) / 2, low), onWall(middle + (side * STUD.wide) / 2, high)),
    ),
  );
  const outline = comingLater(build, scene, fixing).length > 0 ? outlineOf(bounds, along) : [];
  const isMetal = (id: string): boolean => scene.hardware.has(id) || straps.some(({ bracket }) => bracket.id === id);
  const front = faces.filter(({ id, normal }) => id === WALL_ID && normal[to] * sign < -0.5);
  const shownAt = middles
    .flatMap((middle) => ALONG_STUD.map((t) => onWall(middle, low + t * (high - low))))
    .filter((p) => !stage.hides(p));
  const stud: readonly Label[] =
    shownAt.length === 0 ? [] : [{ mark: "stud", targets: shownAt.map((p) => fit.spot(view, p)), hidden: false }];
  const wood = linesOf(picture, fit, plate, (id) => id !== WALL_ID && !isMetal(id));
  const metal = linesOf(picture, fit, plate, isMetal);
  const hidden = picture.lines.filter(({ id }) => isMetal(id)).flatMap((each) => onPage(fit, each.hidden));
  const runs = straps.flatMap(({ run }) => run.slice(1).flatMap((p, i) => seen(run[i] as Vec, p)));
  const ground = floor === null ? [] : seen(onWall(left, low), onWall(right, low));
  const later = outline.flatMap(([p, q]) => seen(onWall(...p), onWall(...q)));
  for (const line of [...studs, ...ground, ...later, ...hidden, ...runs]) plate.addLine(line);
  const named = scene.items.filter(
    ({ id }) => scene.hardware.has(id) || fixing.fittings.some(({ part }) => part === id),
  );
  return [
    ...fills(
      front.flatMap(({ polygons }) => polygons.map((polygon) => polygon.map(fit.page))),
      WALL,
    ),
    ...tints(
      faces.filter(({ id }) => isMetal(id)),
      fit,
      view,
      METAL,
    ),
    ...strokes(studs, HIDDEN),
    ...strokes(ground, FLOOR),
    ...strokes(later, CHAIN),
    ...strokes(wood, PRESENT),
    ...strokes(hidden, HIDDEN),
    ...strokes(metal, FINE),
    ...strokes(runs, STRAP),
    ...(fixing.kind === "screw" ? screwHeads(fixing, stage, fit) : []),
    ...placeBalloons(
      [
        ...labels(
          [...named, { id: WALL_ID, mark: "wall", solid: panel }],
          [...front, ...faces.filter(({ id }) => id !== WALL_ID)],
          view,
          fit,
        ),
        ...stud,
      ],
      plate,
      pen,
      groundOf(
        faces.filter(({ id }) => id !== WALL_ID),
        fit,
        frame,
      ),
    ),
  ];
}

const WALL_ID = "the wall";
const [FROM_FRONT, FROM_BACK] = ["the front right and above", "the back and above"];

/** Where studs are, with one at the first place that is fixed. */
function studsBetween({ studs, one, along }: WallFixing, left: number, right: number): readonly number[] {
  if (studs === null) return [];
  const at = toNumber(one.hardware[0].at[along]);
  const first = Math.ceil((left - at) / studs);
  const last = Math.floor((right - at) / studs);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => at + (first + i) * studs);
}

/** Where screws go in. */
const screwHeads = ({ fittings, to, sign }: WallFixing, stage: Stage, fit: Fit): readonly Item[] =>
  fittings.flatMap(({ hardware }) =>
    hardware.flatMap(({ at: exactly }) => {
      const at = exactly.map(toNumber) as [number, number, number];
      at[to] -= sign * HAIR;
      return stage.hides(at) ? [] : [circle(...fit.spot(stage.view, at), HEAD, { stroke: FINE, fill: BLACK })];
    }),
  );

function seenOf(stage: Stage, from: Vec, to: Vec) {
  return stage.look(from, to).seen.map((run) => stretch(stage.view, from, to, run));
}

function outlineOf({ low, high }: ReturnType<typeof around>, along: 0 | 1) {
  const corners = [
    [low[along], low[2]],
    [high[along], low[2]],
    [high[along], high[2]],
    [low[along], high[2]],
  ] as const;
  return corners.map((corner, i) => [corner, corners[(i + 1) % 4] ?? corner] as const);
}
