/**
 * A piece cut open, seen from the front and from the right, where that tells what the outside does not: with dimensions of what
 * only shows inside. Cut faces are tinted (ISO 128-50).
 */
import { FRONT, RIGHT, type View, visibleFaces } from "../../../geometry/picture/index.ts";
import type { VisibleFace } from "../../../geometry/types.ts";
import { panesOf } from "../../../solve/build/order/glazing.ts";
import type { Build } from "../../../solve/build.ts";
import { equal, type Length, subtract, toNumber } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { GLASS, TINT } from "../../palette.ts";
import type { Frame } from "../../style.ts";
import { BAR_HEIGHT, scaleBar } from "../bar.ts";
import { bodiesOf } from "../dimension/bodies.ts";
import type { SideName } from "../dimension/side.ts";
import type { Drawing, Pen } from "../drawing.ts";
import { heightOf, widthOf } from "../fit.ts";
import { centred, fills } from "../ink.ts";
import { openHoles } from "../open-holes.ts";
import { outsideOf } from "../outside.ts";
import { Plate } from "../plate.ts";
import { type Scale, usualScales } from "../scale.ts";
import { Sight } from "../sight.ts";
import { type Aspect, aspectsOf, edgeLines, type Laid, laid, linedOut, type Outside } from "../three-views/aspect.ts";
import { dimensioning, type Measured, type Rows, shownIn, type Wanted } from "../three-views/dimensioning.ts";
import { beside } from "../three-views/three-views.ts";
import { type Clear, clearHeights, drawClear } from "./clear-heights.ts";
import { cutOpen } from "./cut-open.ts";

const GAP = 40;
const CAPTION = 18;
const ANYWHERE: Frame = { x: -1e5, y: -1e5, width: 2e5, height: 2e5 };

/** What is told beside the sections: places that the views from outside do not show. */
const WANTED: readonly Wanted[] = [
  { view: 0, side: "left", overall: false },
  { view: 0, side: "below", overall: false },
  { view: 1, side: "right", overall: false },
  { view: 1, side: "below", overall: false },
];

/** So many places that only show inside are worth a drawing. */
const WORTH = 2;

interface Section extends Aspect {
  /** The faces that the cut has made. */
  readonly cut: readonly VisibleFace[];
  /** Ids of what is glass. */
  readonly clear: ReadonlySet<string>;
}

/** Null where there is next to nothing inside to measure, or the sections do not go into the frame. */
export function sections(build: Build, { frame, pen }: { readonly frame: Frame; readonly pen: Pen }): Drawing | null {
  const outside = outsideOf(build.parts);
  if (!outside) return null;
  const around = aspectsOf(build, outside);
  const before = shownIn(bodiesOf(build), around);
  const cuts = [sectionOf(build, outside, 1, pen), sectionOf(build, outside, 0, pen)] as const;
  for (const scale of usualScales(build.design.units)) {
    const set = arranged(build, cuts, outside, before, scale, frame, pen);
    if (set === null) continue;
    const fresh = set.rows.flatMap(({ view, side, stops }) => {
      const axis = cuts[view]?.axes[side === "below" ? 0 : 1] ?? 0;
      return stops.filter(({ at }) => !before[axis].some((other) => equal(other, at)));
    });
    if (fresh.length < WORTH) return null;
    const bar = scaleBar(scale, build.design.units, pen, [frame.x, set.bottom + BAR_HEIGHT + 4]);
    return {
      items: [...drawn(set, cuts, outside, frame, pen, heightsIn(build, cuts[0])), ...bar],
      alt: `${build.design.title} cut open: ${cuts.map(({ caption }) => caption).join("; ")}.`,
      scale: scale.text,
    };
  }
  return null;
}

/** Across the depth, seen from the front (`axis` 1), or across the width, seen from the right. */
function sectionOf({ parts, holes, design }: Build, outside: Outside, axis: 0 | 1, pen: Pen): Section {
  const view = axis === 1 ? FRONT : RIGHT;
  const away = axis === 1 ? -1 : 1;
  const opened = cutOpen(parts, outside, axis, away);
  const axes: Aspect["axes"] = axis === 1 ? [0, 2] : [1, 2];
  const corner = (of: Outside["low"]) => [toNumber(of[axes[0]]), toNumber(of[axes[1]])] as const;
  const distance = axis === 1 ? subtract(opened.at, outside.low[1]) : subtract(opened.at, outside.low[0]);
  const clear = panesOf(design);
  const sight = new Sight(opened.parts, view, clear);
  // Of a hole that is cut in two or off there is no whole rim.
  const there = new Set(opened.parts.map(({ id }) => id));
  const whole = holes.filter(({ part, at, stages: [widest] }) => {
    const reach = widest ? (away * toNumber(widest.diameter)) / 2 : 0;
    return there.has(part) && (toNumber(at[axis]) + reach - toNumber(opened.at)) * away <= 0;
  });
  const unit = design.units === "mm" ? "mm" : "in";
  const [name, off] = axis === 1 ? ["Front", "front"] : ["Side", "left"];
  return {
    caption: `${name} section, ${pen.print(distance)}\u202f${unit} from the ${off}`,
    axes,
    extent: { low: corner(outside.low), high: corner(outside.high) },
    lines: sight.lines(),
    panes: sight.panes(),
    rims: openHoles(whole, sight.stage, () => [0, 0, 0]),
    clear,
    cut: facesAt(opened.parts, view, opened.at, axis),
  };
}

/** Cut faces are the visible ones that lie in the plane of the cut. */
function facesAt(
  parts: ReturnType<typeof cutOpen>["parts"],
  view: View,
  at: Length,
  axis: 0 | 1,
): readonly VisibleFace[] {
  const place = toNumber(at);
  const touching = parts.filter(({ solid }) => Math.abs(solid[axis === 1 ? "low" : "high"][axis] - place) < 1e-6);
  const slices = touching.map(({ id, solid }) => ({
    id,
    solid: {
      ...solid,
      pieces: solid.pieces.filter((piece) => Math.abs(piece[axis === 1 ? "low" : "high"][axis] - place) < 1e-6),
    },
  }));
  const square = (face: VisibleFace) => Math.abs(Math.abs(face.normal[axis]) - 1) < 1e-9;
  return visibleFaces(slices, view).filter(square);
}

interface Set {
  readonly views: readonly [Laid, Laid];
  readonly rows: readonly Rows[];
  readonly captions: number;
  readonly bottom: number;
}

function arranged(
  build: Build,
  cuts: readonly [Section, Section],
  outside: Outside,
  before: Measured,
  { points }: Scale,
  frame: Frame,
  pen: Pen,
): Set | null {
  const [front, side] = cuts;
  const [wide, deep, high] = [
    widthOf(front.extent) * points,
    widthOf(side.extent) * points,
    heightOf(front.extent) * points,
  ];
  if (wide + deep + GAP > frame.width || high + 2 * CAPTION > frame.height) return null;
  const rows = dimensioning(bodiesOf(build), cuts, WANTED, outside, { scale: points, before });
  const depth = (view: 0 | 1, name: SideName): number => {
    const here = rows.find((r) => r.view === view && r.side === name);
    return here ? beside(here, laid(cuts[view], points, 0, 0), outside, new Plate(ANYWHERE), pen).depth : 0;
  };
  const [left, right] = [depth(0, "left"), depth(1, "right")];
  const below = Math.max(depth(0, "below"), depth(1, "below"));
  const [one, other] = cuts.map(({ caption }) => pen.measure(caption, "bold", 10)) as [number, number];
  const gap = Math.max(GAP, (one + other - wide - deep) / 2 + GAP / 2);
  const spare =
    frame.width - Math.max(left, (one - wide) / 2) - wide - gap - deep - Math.max(right, (other - deep) / 2);
  const bottom = frame.y + high + below + CAPTION;
  if (spare < 0 || bottom + BAR_HEIGHT + 8 > frame.y + frame.height) return null;
  const x = frame.x + spare / 2 + Math.max(left, (one - wide) / 2);
  return {
    views: [laid(front, points, x, frame.y + 2), laid(side, points, x + wide + gap, frame.y + 2)],
    rows,
    captions: frame.y + high + below + CAPTION / 2 + 2,
    bottom,
  };
}

/** The clear heights that the front section shows. */
function heightsIn({ parts, motions }: Build, { cut }: Section): readonly Clear[] {
  const met = new Set(cut.map(({ id }) => id));
  return clearHeights(
    parts.filter(({ id }) => met.has(id)),
    new Set(motions.flatMap(({ moves }) => moves)),
  );
}

function drawn(
  set: Set,
  cuts: readonly [Section, Section],
  outside: Outside,
  frame: Frame,
  pen: Pen,
  clear: readonly Clear[],
): readonly Item[] {
  const plate = new Plate(frame);
  const views = set.views.flatMap(({ aspect, fit, box }, i): readonly Item[] => {
    const lines = edgeLines(aspect, fit);
    for (const line of lines) plate.addLine(line);
    const middle = (box.left + box.right) / 2;
    const caption = centred(pen, aspect.caption, [middle, set.captions], { font: "bold" });
    plate.addBox(caption.box);
    const polygons = (glass: boolean) =>
      (cuts[i]?.cut ?? [])
        .filter(({ id }) => cuts[i]?.clear.has(id) === glass)
        .flatMap((face) => face.polygons.map((polygon) => polygon.map(fit.page)));
    return [
      ...fills(polygons(false), TINT.dark),
      ...fills(polygons(true), GLASS),
      ...linedOut(aspect, lines, fit),
      caption.item,
    ];
  });
  const rows = set.rows.flatMap((row) => beside(row, set.views[row.view] as Laid, outside, plate, pen).items);
  return [...views, ...rows, ...drawClear(clear, set.views[0].fit, plate, pen)];
}
