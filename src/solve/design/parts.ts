import type { Finding } from "../../findings/finding.ts";
import { lengthIncludesTenons } from "../../findings/rules/length-includes-tenons.ts";
import { placedSolid } from "../../geometry/index.ts";
import type { Formula } from "../../parse/draft.ts";
import type { Length } from "../../units/length.ts";
import { add, equal, half, subtract } from "../../units/rational.ts";
import type { Box, Direction, Feature, Part, Stock } from "../design.ts";
import type { Directory } from "./expand/directory.ts";
import type { Entry } from "./expand/entry.ts";
import type { Bench } from "./joinery/work.ts";
import { plainPiece } from "./lengthening.ts";
import type { LocalPlane } from "./placing/ends.ts";
import type { Places } from "./placing/places.ts";
import { shapePart } from "./shapes/shape.ts";
import { blankOf, type CutPlane, mirrorShapes, planeCut, solidOf, type Workpiece } from "./shapes/workpiece.ts";
import { axisAt, extent, faceOf, mirrorBox, sameBox, triple } from "./space.ts";
import { placedFeature, placedHole } from "./turning.ts";

export interface ShapingContext {
  readonly directory: Directory;
  readonly places: Places;
  readonly measure: (entry: Entry, formula: Formula) => Length | null;
  readonly outside: Box | null;
  readonly report: (finding: Finding) => void;
  readonly print: (length: Length) => string;
}

/**
 * A part with the shapes that the maker drew, before its joints; null when it could not be placed. `grown` is its body as its joints lengthen
 * it, once that is known.
 */
export function shapedPiece(entry: Entry, context: ShapingContext, grown?: Box): Workpiece | null {
  const piece = plainPiece(entry, context.places);
  if (!piece) return null;
  const model = entry.mirror && context.directory.byId.get(entry.mirror.of);
  if (entry.mirror && model) {
    if (!context.outside) return null;
    const { axis } = entry.mirror;
    const about = half(add(context.outside.low[axis], context.outside.high[axis]));
    const shaped = shapedPiece(model, context, grown && mirrorBox(grown, axis, about));
    if (!shaped) return null;
    return { ...piece, ...mirrorShapes(shaped, axis, about, entry.id), drawn: shaped.drawn };
  }
  const ends = context.places.slants.ends(entry)?.map((end) => end.plane());
  if (!ends || ends.includes(null)) return null;
  const cuts = (ends as readonly LocalPlane[])
    .filter(({ normal }) => normal.filter((n) => n.n !== 0n).length > 1)
    .map(({ point, normal }) => planeCut(point, normal));
  let whole: Workpiece = { ...piece, cuts, features: cuts.map(angledEnd) };
  const { report, print } = context;
  const measure = (formula: Formula) => context.measure(entry, formula);
  const shaping = { part: entry.id, whole: grown ?? piece.body, measure, report, print };
  for (const shape of entry.draft.shapes) {
    const shaped = shapePart(entry.id, shape, piece.body, piece.frame, shaping);
    if (!shaped) return null;
    whole = {
      ...whole,
      tongues: [...whole.tongues, ...shaped.tongues],
      cuts: [...whole.cuts, ...shaped.cuts],
      features: [...whole.features, ...shaped.features],
      holes: [...whole.holes, ...shaped.holes],
    };
  }
  return { ...whole, drawn: whole.cuts.length };
}

/** Shapes the parts anew that their joints have made longer, or shorter. `before`: the parts as they were laid on the bench. */
export function reshape(bench: Bench, before: readonly Workpiece[], context: ShapingContext): void {
  const quiet = { ...context, report: () => undefined };
  for (const { entry, cuts, features, holes } of before) {
    const piece = bench.piece(entry.id);
    const anew = sameBox(piece.grown, piece.body) ? null : shapedPiece(entry, quiet, piece.grown);
    if (!anew) continue;
    bench.change(entry.id, {
      cuts: [...anew.cuts, ...piece.cuts.slice(cuts.length)],
      features: [...anew.features, ...piece.features.slice(features.length)],
      holes: [...anew.holes, ...piece.holes.slice(holes.length)],
    });
  }
}

const angledEnd = ({ point, normal }: CutPlane): Feature => ({
  kind: "angled end",
  for: null,
  origin: point,
  normal: normal.map(Number) as unknown as Direction,
});

/** The finished part. */
export function finishPart(
  piece: Workpiece,
  stock: Stock,
  places: Places,
  report: (finding: Finding) => void,
  print: (l: Length) => string,
): Part {
  const { entry, frame, body } = piece;
  const blank = blankOf(piece);
  for (const place of entry.draft.placing) {
    if (place.word !== "board" || place.size === "thickness") continue;
    const axis = frame[place.size];
    const more = subtract(extent(blank, axis), extent(body, axis));
    if (equal(more, subtract(more, more))) continue;
    report(
      lengthIncludesTenons(place.at, {
        part: entry.id,
        size: place.size,
        direction: axisAt(axis),
        low: faceOf(axis, false),
        more: print(more),
        shoulders: print(subtract(extent(body, axis), more)),
      }),
    );
  }
  const solid = solidOf(piece);
  const { features, holes, placement } = piece;
  const standing = placement
    ? {
        solid: placedSolid(solid, placement),
        features: features.map((feature) => placedFeature(feature, placement)),
        holes: holes.map((hole) => placedHole(hole, placement)),
        turned: { placement, solid, features },
      }
    : { solid, features, holes };
  return {
    id: entry.id,
    at: entry.at,
    called: entry.draft.called?.value ?? null,
    stock: stock.name,
    body,
    ...(!sameBox(piece.grown, body) && { whole: piece.grown }),
    blank,
    leftOver: triple((axis) => places.leftOver(entry, axis)),
    axes: { thickness: axisAt(frame.thickness), width: axisAt(frame.width), length: axisAt(frame.length) },
    thickness: extent(blank, frame.thickness),
    width: extent(blank, frame.width),
    length: extent(blank, frame.length),
    ...standing,
    goodFace: entry.draft.goodFace?.value ?? null,
    ...(entry.draft.carries && { carries: entry.draft.carries.value }),
  };
}

/** The middle of the room that some parts take up. */
export const middleOf = (parts: readonly Part[]): readonly [number, number, number] =>
  triple((axis) => {
    if (parts.length === 0) return 0;
    const low = Math.min(...parts.map((part) => part.solid.low[axis]));
    return (low + Math.max(...parts.map((part) => part.solid.high[axis]))) / 2;
  });
