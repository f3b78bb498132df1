/** Wishes that something gets a step of its own: what shares a step is wished apart by none of them. */
import type { Verb } from "../../../../parse/draft.ts";
import type { Blank, CutLine } from "../../../build.ts";
import type { Subject } from "../../../design/model/wish.ts";
import type { Work } from "../draft.ts";

/** Cuts that give a part its shape, when everything else is done to it. */
export const SHAPES = ["taper", "chamfer", "bevel", "arch", "cut-out", "rounded corner", "round-over"];

/** Work of a kind, or the cutting of a kind of feature, or "hole". */
export type Doing = { readonly verb: Verb } | { readonly cuts: string };

/** Kinds of cut that a subject is about; null: other work. */
export const cutsOf = ({ verb, cuts }: Subject): readonly string[] | null =>
  cuts ?? (verb === "drill" ? ["hole"] : verb === "shape" ? SHAPES : null);

const concerns = (subject: Subject, doing: Doing, ids: readonly string[]): boolean => {
  const cuts = cutsOf(subject);
  const same = "cuts" in doing ? cuts?.includes(doing.cuts) : cuts === null && (subject.verb ?? "join") === doing.verb;
  return same === true && (subject.parts === null || subject.parts.some((id) => ids.includes(id)));
};

/** What has the same key may share a step: work on some parts by the wishes that it falls under. */
export const ownKey = ({ design }: Pick<Work, "design">, doing: Doing, ids: readonly string[]): string =>
  (design.wishes ?? [])
    .flatMap((wish, i) => (wish.kind === "own step" && concerns(wish.what, doing, ids) ? [i] : []))
    .join();

/** Things in groups by a key, in the order in which each first occurs. */
export function groupedBy<T>(all: readonly T[], key: (one: T) => string): readonly (readonly T[])[] {
  const groups = new Map<string, T[]>();
  for (const one of all) groups.set(key(one), [...(groups.get(key(one)) ?? []), one]);
  return [...groups.values()];
}

/** Lines with some of their parts each, in groups that may share a step. */
export function linesApart(work: Work, doing: Doing, lines: readonly CutLine[]): readonly (readonly CutLine[])[] {
  const key = (id: string): string => ownKey(work, doing, [id]);
  const own = lines.flatMap((line) => groupedBy(line.parts, key).map((parts) => ({ ...line, parts })));
  return groupedBy(own, ({ parts }) => key(parts[0] as string));
}

/** The parts of a line that are cut alike, and kinds of cut that may share a step. */
export interface Cutting {
  readonly line: CutLine;
  readonly kinds: readonly string[];
}

/** A line and what is cut in its parts, so divided that no wish is broken. */
export function cuttings(work: Work, line: CutLine, kinds: readonly string[]): readonly Cutting[] {
  const key = (kind: string, id: string): string => ownKey(work, { cuts: kind }, [id]);
  return groupedBy(line.parts, (id) => kinds.map((kind) => key(kind, id)).join("|")).flatMap((parts) =>
    groupedBy(kinds, (kind) => key(kind, parts[0] as string)).map((own) => ({ line: { ...line, parts }, kinds: own })),
  );
}

/** All that is cut from a blank. */
export const partsIn = ({ part, alsoParts = [] }: Blank): readonly string[] => [part, ...alsoParts];
