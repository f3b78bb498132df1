import type { Finding } from "../../../findings/finding.ts";
import { betweenWhich } from "../../../findings/rules/between-which.ts";
import type { BoardSize, Draft, Face, PartDraft, PlaceDraft, Reference } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { add, compare, half, max, min, multiply, rational, subtract } from "../../../units/rational.ts";
import type { Stock } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";
import type { Entry } from "../expand/entry.ts";
import { evaluateLength, type Scope } from "../sizes/evaluate.ts";
import { type AxisIndex, axisAt, faceAxis, faceOf, INDICES, indexOf, isFace, isHigh } from "../space.ts";
import type { BoardStatements } from "./attitude.ts";
import { centreOf } from "./rows.ts";
import { STOCK_WIDTH, type Statement, type Statements } from "./statement.ts";

/** What reading a part's places may ask of the rest of the piece. */
export interface Reach {
  readonly draft: Draft;
  readonly directory: Directory;
  readonly outside: (face: Face) => Length | null;
  readonly scope: (entry: Entry) => Scope;
  readonly position: (entry: Entry, face: Face) => Length | null;
  readonly extent: (entry: Entry, axis: AxisIndex) => Length | null;
  readonly report: (finding: Finding) => void;
}

/** A face of whatever a reference names: of several parts the outermost, of `outside` the outside. */
export function faceOfThing(path: Reference, face: Face, reach: Reach): Length | null {
  if (path.path.length === 1 && path.path[0] === "outside") return reach.outside(face);
  const entries = reach.directory.find(path);
  if (!entries) return null;
  const values = entries.map((entry) => reach.position(entry, face));
  return values.some((v) => v === null) ? null : (values as Length[]).reduce(isHigh(face) ? max : min);
}

/** Splits `post.left` into thing and face; a reference without a face has none. */
const splitFace = (reference: Reference): { thing: Reference; face: Face | null } => {
  const last = reference.path.at(-1) ?? "";
  return reference.path.length > 1 && isFace(last)
    ? { thing: { ...reference, path: reference.path.slice(0, -1) }, face: last }
    : { thing: reference, face: null };
};

interface Gap {
  readonly axis: AxisIndex;
  readonly from: () => Length | null;
  readonly to: () => Length | null;
}

/** The space between two things, in the direction that was named or the only one in which they lie apart. */
function gapBetween(first: Reference, second: Reference, named: AxisIndex | null, reach: Reach): Gap | null {
  const [a, b] = [splitFace(first), splitFace(second)];
  const faced = a.face ?? b.face;
  if (faced) {
    const axis = faceAxis(faced);
    const at = ({ thing, face }: typeof a, high: boolean) => faceOfThing(thing, face ?? faceOf(axis, high), reach);
    const ends = [at(a, true), at(b, false)] as const;
    if (!ends[0] || !ends[1]) return null;
    const [low, high] = compare(ends[0], ends[1]) <= 0 ? ends : [ends[1], ends[0]];
    return { axis, from: () => low, to: () => high };
  }
  const fits = (named === null ? INDICES : [named]).flatMap((axis) => {
    const faces = [a.thing, b.thing].map((thing) =>
      [false, true].map((high) => faceOfThing(thing, faceOf(axis, high), reach)),
    );
    if (faces.flat().some((v) => v === null)) return [null];
    const [[aLow, aHigh], [bLow, bHigh]] = faces as [[Length, Length], [Length, Length]];
    if (compare(aHigh, bLow) <= 0) return [{ axis, low: aHigh, high: bLow }];
    return compare(bHigh, aLow) <= 0 ? [{ axis, low: bHigh, high: aLow }] : [];
  });
  if (fits.includes(null)) return null;
  const [only, ...others] = fits;
  if (only && others.length === 0) return { axis: only.axis, from: () => only.low, to: () => only.high };
  reach.report(
    betweenWhich(first.at, {
      first: first.path.join("."),
      second: second.path.join("."),
      directions: fits.map((fit) => axisAt((fit as { axis: AxisIndex }).axis)),
    }),
  );
  return null;
}

/** What the places of a part say, by direction. Null when something in them could not be found. */
export function placedStatements(entry: Entry, reach: Reach): Statements | null {
  const lists: [Statement[], Statement[], Statement[]] = [[], [], []];
  const scope = reach.scope(entry);
  let failed = false;
  const put = (
    axis: AxisIndex,
    role: Statement["role"],
    place: { key: string; at: PlaceDraft["at"] },
    value: Statement["value"],
  ) => lists[axis].push({ role, key: place.key, at: place.at, value });
  for (const place of entry.draft.placing) {
    switch (place.word) {
      case "face":
        put(faceAxis(place.face), isHigh(place.face) ? "high" : "low", place, () => evaluateLength(place.value, scope));
        break;
      case "extent":
        put(indexOf(place.axis), "extent", place, () => evaluateLength(place.value, scope));
        break;
      case "against":
        put(faceAxis(place.face), isHigh(place.face) ? "high" : "low", place, () => against(place, scope, reach));
        break;
      case "between": {
        const gap = gapBetween(place.first, place.second, place.axis ? indexOf(place.axis) : null, reach);
        if (!gap) failed = true;
        else {
          put(gap.axis, "low", place, gap.from);
          put(gap.axis, "high", place, gap.to);
        }
        break;
      }
      case "centred":
      case "middle":
        if (place.axis)
          put(indexOf(place.axis), "centre", place, () => middleFor(entry, place, indexOf(place.axis as never), reach));
        break;
      case "board":
        break;
    }
  }
  const row = entry.copy && rowStatement(entry, scope, reach);
  if (row === undefined) failed = true;
  else if (row) lists[row.axis].push(row.statement);
  return failed ? null : lists;
}

function against(place: PlaceDraft & { word: "against" }, scope: Scope, reach: Reach): Length | null {
  const target = faceOfThing(place.target, place.target.face, reach);
  if (target === null || !place.offset) return target;
  const offset = evaluateLength(place.offset, scope);
  if (offset === null) return null;
  const outwards = place.toward === "outwards";
  return isHigh(place.target.face) === outwards ? add(target, offset) : subtract(target, offset);
}

/** The middle that `centred on` or `at: middle` means: of the thing named, of what the part lies between, or of the outside. */
function middleFor(
  entry: Entry,
  place: PlaceDraft & { word: "centred" | "middle" },
  axis: AxisIndex,
  reach: Reach,
): Length | null {
  const lain = entry.draft.placing.find((p) => p.word === "between");
  const thing: Reference =
    place.word === "centred"
      ? place.on
      : lain?.word === "between"
        ? splitFace(lain.first).thing
        : { path: ["outside"], at: place.at };
  const low = faceOfThing(thing, faceOf(axis, false), reach);
  const high = faceOfThing(thing, faceOf(axis, true), reach);
  return low && high && half(add(low, high));
}

/** Where a copy's middle lies in its row. Null: no row is described; undefined: it could not be found. */
function rowStatement(
  entry: Entry,
  scope: Scope,
  reach: Reach,
): { axis: AxisIndex; statement: Statement } | null | undefined {
  const repeat = entry.draft.repeat;
  if (!repeat?.spread || !entry.copy) return null;
  const { spread } = repeat;
  const gap = gapBetween(spread.first, spread.second, spread.axis ? indexOf(spread.axis) : null, reach);
  if (!gap) return undefined;
  const { number, of } = entry.copy;
  const value = (): Length | null => {
    const from = gap.from();
    const to = gap.to();
    const each = reach.extent(entry, gap.axis);
    const fixed = repeat.gap ? evaluateLength(repeat.gap, scope) : undefined;
    const every = repeat.every ? evaluateLength(repeat.every, scope) : undefined;
    if (!from || !to || !each || fixed === null || every === null) return null;
    return centreOf(
      { from, to, count: of, each, gaps: repeat.gaps?.value ?? "both ends", gap: fixed ?? null, every: every ?? null },
      number,
    );
  };
  return { axis: gap.axis, statement: { role: "centre", key: "spread", at: spread.at, value } };
}

/** What stock and the keys thickness, width and length fix. A key of the part goes before the stock. */
export function boardStatements(entry: Entry, stock: Stock, reach: Reach): BoardStatements {
  const scope = reach.scope(entry);
  const board = new Map<BoardSize, Statement>();
  board.set("thickness", {
    role: "extent",
    key: "the stock's thickness",
    at: entry.draft.madeOf?.at ?? entry.at,
    value: () => multiply(stock.thickness, rational(entry.draft.layers?.value ?? 1)),
  });
  // What is glued up from boards is as wide as the maker says, not as one of them.
  if (stock.width && !entry.draft.boards)
    board.set("width", {
      role: "extent",
      key: STOCK_WIDTH,
      at: entry.draft.madeOf?.at ?? entry.at,
      value: () => stock.width,
    });
  for (const place of entry.draft.placing)
    if (place.word === "board")
      board.set(place.size, {
        role: "extent",
        key: place.key,
        at: place.at,
        value: () => evaluateLength(place.value, scope),
      });
  return board;
}

const isOpen = (place: PlaceDraft): boolean =>
  (place.word === "centred" || place.word === "middle") && place.axis === undefined;

/** How many statements of a part name no direction. */
export const openCount = (part: PartDraft): number => part.placing.filter(isOpen).length;

/** Those statements, put to a direction. */
export const openStatements = (entry: Entry, axis: AxisIndex, reach: Reach): readonly Statement[] =>
  entry.draft.placing.flatMap((place) =>
    (place.word === "centred" || place.word === "middle") && place.axis === undefined
      ? [{ role: "centre" as const, key: place.key, at: place.at, value: () => middleFor(entry, place, axis, reach) }]
      : [],
  );
