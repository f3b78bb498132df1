import type { Finding } from "../../../findings/finding.ts";
import { notASizeOf } from "../../../findings/rules/not-a-size-of.ts";
import { outsideMissing } from "../../../findings/rules/outside-missing.ts";
import { stockHasNoWidth } from "../../../findings/rules/stock-has-no-width.ts";
import { unknownName } from "../../../findings/rules/unknown-name.ts";
import { nearest } from "../../../findings/suggest.ts";
import type { BoardSize, Draft, Face, Formula, Reference, SizeDraft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { max, min, type Rational, ZERO } from "../../../units/rational.ts";
import type { Directory } from "../expand/directory.ts";
import type { Entry } from "../expand/entry.ts";
import type { Places } from "../placing/places.ts";
import { type AxisIndex, faceAxis, indexOf, isAxis, isFace, isHigh } from "../space.ts";
import type { Cells } from "./cells.ts";
import { evaluate, evaluateLength, type Scope } from "./evaluate.ts";
import type { Quantity } from "./quantity.ts";

/** Gives names their values: sizes, the outside, and the parts of the piece. */
export interface Names {
  /** For formulas in the places and shapes of `entry` (whose own faces may be named alone), or elsewhere. */
  readonly scope: (entry: Entry | null) => Scope;
  readonly outside: (face: Face) => Length | null;
  readonly size: (name: string) => Quantity | null;
}

export interface NamesContext {
  readonly draft: Draft;
  readonly unit: Rational;
  readonly unrounded: boolean;
  readonly cells: Cells;
  readonly report: (finding: Finding) => void;
  /** Absent while copies are being counted: then only sizes may be named. */
  /** Null for a stock that could not be read or was not read yet, and for the width of one that is ripped. */
  readonly ofStock: (stock: string, size: "thickness" | "width") => Length | null;
  readonly parts: () => { directory: Directory; places: Places; boardSize: BoardSizeOf } | null;
}

/** A board size with tongues and tenons. */
export type BoardSizeOf = (entry: Entry, size: BoardSize) => Length | null;

const OUTSIDE_SIZES = ["width", "depth", "height"] as const;
const length = (value: Length | null): Quantity | null => value && { kind: "length", value };

export function createNames(context: NamesContext): Names {
  const { draft, cells, report } = context;

  const size = (name: string): Quantity | null => {
    const entry = draft.sizes.get(name);
    if (!entry) return null;
    return cells.get(`size ${name}`, name, entry.at, () => {
      const value = evaluate(entry.value, scope(null));
      return value && (value.kind === "bare" ? { ...value, named: true } : value);
    });
  };

  const outsideSize = (axis: AxisIndex): Length | null => {
    const word = OUTSIDE_SIZES[axis] as (typeof OUTSIDE_SIZES)[number];
    const given: SizeDraft | undefined = draft.outside[word];
    if (given)
      return cells.get(`outside ${word}`, `outside.${word}`, given.at, () => evaluateLength(given.value, scope(null)));
    return cells.get(`outside ${word}`, `outside.${word}`, draft.at, () => {
      report(outsideMissing(draft.at, { word }));
      return null;
    });
  };
  const outside = (face: Face): Length | null => (isHigh(face) ? outsideSize(faceAxis(face)) : ZERO);

  const ofOutside = (word: string): Length | null | undefined => {
    if (isFace(word)) return outside(word);
    if (isAxis(word)) return outsideSize(indexOf(word));
    const axis = OUTSIDE_SIZES.indexOf(word as never);
    return axis < 0 ? undefined : outsideSize(axis as AxisIndex);
  };

  const ofParts = (entries: readonly Entry[], word: string): Length | null | undefined => {
    const parts = context.parts();
    if (!parts) return undefined;
    if (isFace(word))
      return furthest(
        entries.map((e) => parts.places.position(e, word)),
        isHigh(word),
      );
    const first = entries[0] as Entry;
    if (isAxis(word)) return parts.places.extent(first, indexOf(word));
    if (word === "thickness" || word === "width" || word === "length") return parts.boardSize(first, word);
    return undefined;
  };

  const lookUp = (formula: Formula & { kind: "name" }, self: Entry | null): Quantity | null => {
    const { path, at, home } = formula;
    const [head, ...rest] = path as [string, ...string[]];
    const word = path.at(-1) as string;
    if (rest.length === 0) {
      if (draft.sizes.has(head)) return size(head);
      if (head === "floor") return length(ZERO);
      const own = self ? ofParts([self], head) : undefined;
      if (own !== undefined) return length(own);
    }
    if (head === "outside" && rest.length === 1) {
      const value = ofOutside(word);
      if (value !== undefined) return length(value);
      report(notASizeOf(at, { name: "outside", word }));
      return null;
    }
    const written = { path: [head], at, ...(home && { home }) };
    if (
      rest.length === 1 &&
      (word === "thickness" || word === "width") &&
      draft.stock.has(head) &&
      !context.parts()?.directory.knows(written)
    ) {
      const size = context.ofStock(head, word);
      if (size) return length(size);
      if (word === "width") {
        report(stockHasNoWidth(at, { stock: head }));
        return null;
      }
    }
    return ofNamedPart(path, word, { at, ...(home && { home }) });
  };

  const ofNamedPart = (path: readonly string[], word: string, written: Omit<Reference, "path">): Quantity | null => {
    const { at } = written;
    const parts = context.parts();
    const asked = isFace(word) || isAxis(word) || ["thickness", "width", "length"].includes(word);
    if (!parts || (path.length === 1 && (asked || !parts.directory.knows({ ...written, path })))) {
      const known = [...draft.sizes.keys(), ...(parts ? [...parts.directory.byId.keys()] : [])];
      report(unknownName(at, { name: path.join("."), nearest: nearest(path.join("."), known) }));
      return null;
    }
    if (!asked) {
      const whole = parts.directory.find({ ...written, path });
      if (whole) report(notASizeOf(at, { name: path.join("."), word: "size" }));
      return null;
    }
    const entries = parts.directory.find({ ...written, path: path.slice(0, -1) });
    return entries && length(ofParts(entries, word) ?? null);
  };

  const scope = (entry: Entry | null): Scope => ({
    unit: context.unit,
    unrounded: context.unrounded,
    report,
    name: (formula) => lookUp(formula, entry),
  });

  return { scope, outside, size };
}

const furthest = (values: readonly (Length | null)[], high: boolean): Length | null =>
  values.some((v) => v === null) ? null : (values as Length[]).reduce(high ? max : min);
