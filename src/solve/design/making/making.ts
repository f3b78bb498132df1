/** What parts are made from and how they come to their sizes, once all parts are known. */
import type { CutDraft, Face } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { ZERO } from "../../../units/rational.ts";
import type { Making, Part } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";
import type { Entry } from "../expand/entry.ts";
import { faceAxis, isFace, opposite } from "../space.ts";
import { bandsOf } from "./banding.ts";
import type { MakingContext } from "./context.ts";
import { alikeGroups, reportStrips } from "./together.ts";

/**
 * What is cut to the opening or the piece is sawn this much larger first, in length and in width: enough for an opening that came out
 * a step larger than planned, and for planing. Common practice, no source.
 */
const RESERVED = { inch: inches(1, 8), mm: millimetres(3) } as const;

/** Whatever the plan says of making, added to the parts. */
export function withMaking(parts: readonly Part[], context: MakingContext): readonly Part[] {
  const { directory } = context;
  const entries = parts.flatMap((part) => directory.byId.get(part.id) ?? []);
  const alike = alikeGroups(entries, parts, context);
  const made = parts.map((part): Part => {
    const entry = directory.byId.get(part.id);
    return entry ? described(part, entry, alike.get(part.id) ?? null, parts, context) : part;
  });
  reportStrips(made, context);
  return made;
}

function described(part: Part, entry: Entry, alike: string | null, all: readonly Part[], context: MakingContext): Part {
  const { boards, layers, banding, strip, cut, goodFace } = entry.draft;
  const own = mirroredFace(entry, context.directory);
  const shown = goodFace === undefined ? part.goodFace : isFace(goodFace.value) ? own(goodFace.value) : goodFace.value;
  if (!boards && !layers && !banding && !strip && !cut && alike === null) return { ...part, goodFace: shown };
  const how = cut?.how ?? "list";
  const making: Making = {
    boards: boards?.value ?? 1,
    layers: layers?.value ?? 1,
    banding: banding ? bandsOf(part, banding, banding.edges.map(own), how !== "list", all, context) : [],
    cut: how,
    over: oversize(cut, context),
    strip: strip?.value ?? null,
    alike,
  };
  return { ...part, goodFace: shown, making };
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
