/**
 * A piece cut open, seen from the front and from the right, where that tells what the outside does not: with dimensions of what
 * only shows inside, and the marks of what is cut. Cut faces are tinted (ISO 128-50).
 */
import type { Build } from "../../../solve/build.ts";
import { equal, type Length } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { GLASS, TINT } from "../../palette.ts";
import type { Frame } from "../../style.ts";
import { SMALL } from "../balloon.ts";
import type { Label } from "../balloon-places.ts";
import { barBeside, scaleBar } from "../bar.ts";
import { bodiesOf } from "../dimension/bodies.ts";
import { MATTERS } from "../dimension/stations.ts";
import type { Drawing, Pen } from "../drawing.ts";
import { partAt } from "../ground.ts";
import { centred, fills } from "../ink.ts";
import { outsideOf } from "../outside.ts";
import { placeBalloons } from "../place-balloons.ts";
import { type Box, Plate } from "../plate.ts";
import { closeScales, type Scale, wholeOf } from "../scale.ts";
import { seenArea, targetsOn } from "../targets.ts";
import { type Aspect, aspectsOf, edgeLines, type Laid, linedOut } from "../three-views/aspect.ts";
import { type Measured, shownIn } from "../three-views/dimensioning.ts";
import { beside } from "../three-views/room-beside.ts";
import { tollOf } from "../toll.ts";
import { type Clear, clearHeights, drawClear, isTold } from "./clear-heights.ts";
import { type Section, sectionOf } from "./section.ts";
import { type SetOut, setOut } from "./setting-out.ts";

/** So many places, or marks of parts, that only show inside are worth a drawing. */
const WORTH = { places: 2, marks: 4 } as const;

/** Null where there is next to nothing inside to measure, or the sections do not go into the frame. */
export function sections(build: Build, { frame, pen }: { readonly frame: Frame; readonly pen: Pen }): Drawing | null {
  const outside = outsideOf(build.parts);
  if (!outside) return null;
  const around = aspectsOf(build, outside);
  const shown = shownIn(bodiesOf(build), around);
  const cuts = [sectionOf(build, outside, 1, pen), sectionOf(build, outside, 0, pen)] as const;
  const clear = heightsIn(build, cuts[0]);
  const at = function* (scale: Scale): Generator<Tried> {
    const told = clear.filter((each) => isTold(each, scale.points));
    const ends = told.flatMap(({ from, to }) => [from, to]);
    const before: Measured = [shown[0], shown[1], [...shown[2], ...ends]];
    for (const stacked of [false, true]) {
      const found = setOut(build, cuts, scale.points, { frame, pen, stacked, before });
      if (found) yield { found, scale, ends, ...drawn(build, found, cuts, { frame, pen, scale }, told) };
    }
  };
  const best = wholeOf(closeScales(build.design.units), at);
  if (!best) return null;
  const places = freshIn(best.found, cuts, shown) + best.ends.filter((end) => !isIn(shown[2], end)).length;
  if (places < WORTH.places && unseen(build, cuts, around) < WORTH.marks) return null;
  return {
    items: best.items(),
    alt: `${build.design.title} cut open: ${cuts.map(({ caption }) => caption).join("; ")}.`,
    scale: best.scale.text,
  };
}

interface Tried {
  readonly found: SetOut;
  readonly scale: Scale;
  /** Of the clear heights that are told. */
  readonly ends: readonly Length[];
  /** The marks are placed for the one that is taken. */
  readonly items: () => readonly Item[];
  readonly lost: number;
}

const isIn = (places: readonly Length[], place: Length): boolean => places.some((other) => equal(other, place));

/** How many places are measured that only show inside, and show well: what is told for where it stands alone is not worth a page. */
function freshIn({ rows }: SetOut, cuts: readonly Section[], shown: Measured): number {
  return rows.flatMap(({ view, side, chains }) => {
    const axis = cuts[view]?.axes[side === "below" || side === "above" ? 0 : 1] ?? 0;
    return chains.flatMap(({ stops }) => stops).filter(({ at, weight }) => weight > MATTERS && !isIn(shown[axis], at));
  }).length;
}

/** How many marks are cut of which nothing can be seen from outside. */
function unseen({ parts }: Build, cuts: readonly Section[], around: readonly Aspect[]): number {
  const seen = new Set(
    around.flatMap(({ lines }) => lines.flatMap(({ id, visible }) => (visible.length > 0 ? [id] : []))),
  );
  const cut = new Set(cuts.flatMap((section) => section.cut.map(({ id }) => id)));
  return new Set(parts.filter(({ id }) => cut.has(id) && !seen.has(id)).map(({ mark }) => mark)).size;
}

/** The clear heights that the front section shows. */
function heightsIn({ parts, motions }: Build, { cut }: Section): readonly Clear[] {
  const met = new Set(cut.map(({ id }) => id));
  return clearHeights(
    parts.filter(({ id }) => met.has(id)),
    new Set(motions.flatMap(({ moves }) => moves)),
  );
}

interface Sheet {
  readonly frame: Frame;
  readonly pen: Pen;
  readonly scale: Scale;
}

function drawn(
  build: Build,
  set: SetOut,
  cuts: readonly [Section, Section],
  { frame, pen, scale }: Sheet,
  clear: readonly Clear[],
): Pick<Tried, "items" | "lost"> {
  const plate = new Plate(frame);
  const captions: Box[] = [];
  const views = set.views.flatMap(({ aspect, fit, box }, i): readonly Item[] => {
    const lines = edgeLines(aspect, fit);
    for (const line of lines) plate.addLine(line);
    const middle = (box.left + box.right) / 2;
    const caption = centred(pen, aspect.caption, [middle, set.captions[i] ?? box.bottom], { font: "bold" });
    plate.addBox(caption.box);
    captions.push({ ...caption.box, left: box.left, right: box.right });
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
  const rows = set.rows.map((row) => beside(row, set.views[row.view] as Laid, plate, pen));
  const heights = clear.map((each) => drawClear([each], set.views[0].fit, plate, pen));
  const tolls = set.views.map(({ fit }, i) => tollOf(partAt(cuts[i]?.cut ?? [], fit, frame), SMALL));
  const labels = set.views.flatMap(({ fit }, i) => labelsOf(build, cuts[i] as Section, fit));
  const bar = barBeside(Math.max(...set.captions), plate, (spot) => scaleBar(scale, build.design.units, pen, spot));
  // A mark in the line of a caption would be read as a word of it.
  for (const line of captions) plate.addBox(line);
  return {
    items: () => [
      ...views,
      ...rows.flatMap(({ items }) => items),
      ...heights.flat(),
      ...bar,
      ...placeBalloons(labels, plate, pen, () => 0, {
        look: SMALL,
        toll: (...mark) => Math.max(...tolls.map((toll) => toll(...mark))),
      }),
    ],
    lost:
      rows.reduce((sum, { lost }) => sum + lost, bar.length === 0 ? 1 : 0) +
      heights.filter((items) => items.length === 0).length,
  };
}

/** Each mark once: on that of the parts alike of which most is cut. */
function labelsOf({ parts }: Build, { cut }: Section, fit: Laid["fit"]): readonly Label[] {
  const there = parts
    .map((part) => ({ part, area: seenArea(cut, part.id, fit.scale) }))
    .filter(({ area }) => area > 0)
    .sort((a, b) => b.area - a.area);
  const marks = [...new Set(parts.map(({ mark }) => mark))].filter((mark) => mark !== "");
  return marks.flatMap((mark): readonly Label[] => {
    const most = there.find(({ part }) => part.mark === mark);
    return most ? [{ mark, parts: [most.part.id], targets: targetsOn(cut, most.part.id, fit), hidden: false }] : [];
  });
}
