/** What the cut list says of how parts are made. */
import type { Length } from "../../../units/length.ts";
import type { Blank, CutLine } from "../../build.ts";
import { makingOf } from "../../design/making/plain.ts";
import { isFace } from "../../design/space.ts";
import type { Design, Part } from "../../design.ts";
import { sayWeight, weighsMuch } from "./weight.ts";

interface Told {
  readonly design: Design;
  readonly blanks: readonly Blank[];
  /** kg of a part. */
  readonly mass: (part: Part) => number;
  readonly print: (length: Length) => string;
}

/** The lines with notes on what parts are sawn from, their bands and their good faces. */
export function withMakingNotes(lines: readonly CutLine[], told: Told): readonly CutLine[] {
  const parts = new Map(told.design.parts.map((part) => [part.id, part]));
  const panes = new Set(told.design.stock.flatMap(({ name, form }) => (form === "pane" ? [name] : [])));
  const markOf = new Map(lines.flatMap((line) => line.parts.map((id) => [id, line.mark] as const)));
  return lines.map((line) => {
    const part = parts.get(line.parts[0] as string);
    if (!part) return line;
    const blank = told.blanks.find(({ part: id, alsoParts }) => id === part.id || alsoParts?.includes(part.id));
    const notes = [
      ...(panes.has(part.stock) ? ["bought: have it cut to this size, its edges seamed"] : []),
      ...(blank ? sawnNote(part, blank, told, markOf) : []),
      ...bandNotes(part),
      ...alikeNote(part, told.design.parts, line.mark, markOf),
      ...goodFaceNote(part),
      ...(weighsMuch(told.mass(part)) ? [`weighs about ${sayWeight(told.mass(part), told.design.units)}`] : []),
    ];
    return notes.length === 0 ? line : { ...line, notes: [...line.notes, ...notes] };
  });
}

function sawnNote(part: Part, blank: Blank, { print }: Told, markOf: ReadonlyMap<string, string>): readonly string[] {
  const { boards, layers, cut, over } = makingOf(part);
  const size = `${print(blank.width)} × ${print(blank.length)}`;
  if (blank.why === "glue-up") {
    if (boards === 1) return [`glued up from ${layers} layers, each cut ${size}`];
    const jointed = blank.jointed ? `, ${print(blank.jointed)} wide when jointed` : "";
    const count = layers === 1 ? `${boards} boards` : `${layers} layers of ${boards} boards`;
    return [`glued up from ${count}, each ${size} rough${jointed}`];
  }
  const over_ = cut === "over" ? [`cut ${print(over)} over in width and length, then trimmed flush`] : [];
  const alike = 1 + (blank.alsoParts?.length ?? 0);
  if (blank.planedWhole && alike > 1)
    return [`${alike} in one rough piece ${print(blank.thickness)} × ${size}, planed whole`];
  if (blank.alsoParts) {
    const row = [blank.part, ...blank.alsoParts].map((id) => markOf.get(id) ?? "");
    return [`cut from one strip ${size}, in the order ${row.join(", ")}`, ...over_];
  }
  if (blank.why === "rough") return [`rough ${print(blank.thickness)} × ${size}`];
  return over_;
}

function bandNotes(part: Part): readonly string[] {
  const { banding } = makingOf(part);
  return [true, false].flatMap((deducted) => {
    const bands = banding.filter((band) => band.deducted === deducted);
    const [first] = bands;
    if (!first) return [];
    const edges = bands.map(({ edge }) => edge).join(" and ");
    return [`${edges} banded with ${first.item}, ${deducted ? "included in" : "not included in"} the size`];
  });
}

function alikeNote(
  part: Part,
  all: readonly Part[],
  own: string,
  markOf: ReadonlyMap<string, string>,
): readonly string[] {
  const { alike } = makingOf(part);
  if (alike === null) return [];
  const marks = new Set(all.filter((other) => makingOf(other).alike === alike).map(({ id }) => markOf.get(id) ?? ""));
  marks.delete(own);
  return [marks.size === 0 ? "all from one sheet" : `from one sheet with ${[...marks].join(", ")}`];
}

function goodFaceNote({ goodFace }: Part): readonly string[] {
  if (goodFace === null) return [];
  if (goodFace === "both") return ["both faces good"];
  return [isFace(goodFace) ? `good face to the ${goodFace}` : `good face ${goodFace}`];
}
