/** What parts are made from and how they come to their sizes, once all parts are known. */

import { gluedUp } from "../../../findings/rules/glued-up.ts";
import type { CutDraft, Face } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { ZERO } from "../../../units/rational.ts";
import type { Making, Part } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";
import type { Entry } from "../expand/entry.ts";
import { extent, faceAxis, indexOf, isFace, opposite } from "../space.ts";
import { bandsOf } from "./banding.ts";
import { boardsFor } from "./boards.ts";
import type { MakingContext } from "./context.ts";
import { betweenWaiting } from "./kept-apart.ts";
import { makingOf } from "./plain.ts";
import { alikeGroups, reportStrips } from "./together.ts";

/**
 * What is cut to the opening or the piece is sawn this much larger first, in length and in width: enough for an opening that came out
 * a step larger than planned, and for planing. Common practice, no source.
 */
export const RESERVED = { inch: inches(1, 8), mm: millimetres(3) } as const;

/** Whatever the plan says of making, added to the parts, and what follows from it for parts between them. */
export function withMaking(parts: readonly Part[], context: MakingContext): readonly Part[] {
  const { directory } = context;
  const entries = parts.flatMap((part) => directory.byId.get(part.id) ?? []);
  const alike = alikeGroups(entries, parts, context);
  const made = parts.map((part): Part => {
    const entry = directory.byId.get(part.id);
    return entry ? described(part, entry, alike.get(part.id) ?? null, parts, context) : part;
  });
  const waiting = betweenWaiting(made);
  const all = made.map((part): Part => {
    const said = directory.byId.get(part.id)?.draft.cut !== undefined;
    return waiting.has(part.id) && !said && context.stockOf(part)?.form !== "pane"
      ? { ...part, making: { ...makingOf(part), cut: "opening", over: RESERVED[context.units] } }
      : part;
  });
  reportStrips(all, context);
  return all;
}

function described(part: Part, entry: Entry, alike: string | null, all: readonly Part[], context: MakingContext): Part {
  const { boards, layers, banding, strip, cut, goodFace } = entry.draft;
  const own = mirroredFace(entry, context.directory);
  const shown = goodFace === undefined ? part.goodFace : isFace(goodFace.value) ? own(goodFace.value) : goodFace.value;
  const usual = boards ? boards.value : gluedUpFrom(part, context);
  if (usual === 1 && !boards && !layers && !banding && !strip && !cut && alike === null)
    return { ...part, goodFace: shown };
  const how = cut?.how ?? "list";
  const making: Making = {
    boards: usual,
    layers: layers?.value ?? 1,
    banding: banding ? bandsOf(part, banding, banding.edges.map(own), how !== "list", all, context) : [],
    cut: how,
    ...(cut && { said: true }),
    over: oversize(cut, context),
    strip: strip?.value ?? null,
    alike,
  };
  return { ...part, goodFace: shown, making };
}

/** As many boards as its width takes, which is told where that is more than one. */
function gluedUpFrom(part: Part, context: MakingContext): number {
  const stock = context.stockOf(part);
  const boards = boardsFor(part, stock);
  if (!stock || boards === 1) return 1;
  const told = { part: part.id, stock: stock.name, boards, sold: stock.soldWidth, assumed: stock.assumed };
  const width = extent(part.blank, indexOf(part.axes.width));
  context.report(gluedUp(part.at, { ...told, width, units: context.units }));
  return boards;
}

function oversize(cut: CutDraft | undefined, context: MakingContext): Length {
  if (!cut || cut.how === "list") return ZERO;
  if (!cut.by) return RESERVED[context.units];
  return context.positive(cut.by, "what it is cut over its size") ?? ZERO;
}

/** Faces as the original has them, turned into those of its mirror image. */
function mirroredFace(entry: Entry, directory: Directory): (face: Face) => Face {
  const { mirror } = entry;
  const model = mirror && directory.byId.get(mirror.of);
  if (!mirror || !model) return (face) => face;
  const before = mirroredFace(model, directory);
  return (face) => (faceAxis(before(face)) === mirror.axis ? opposite(before(face)) : before(face));
}
