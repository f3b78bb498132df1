/** How far apart stand what is driven without holes that would show it, and where the first and the last of them do. */
import { inches, type Length, millimetres } from "../../../../units/length.ts";
import { add, compare, equal, half, less, subtract, ZERO } from "../../../../units/rational.ts";
import { roundTo } from "../../../../units/round.ts";
import { NAILS } from "../../../design/fastening/catalogue.ts";
import { type AxisIndex, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Fastener } from "../../../design.ts";
import { listed, pluralOf, series, type Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { seenOf } from "./seen.ts";

/** At the end of a measure. */
const UNIT = /[ \u202f](?:in|mm)$/u;
/** More rows of different places than these are not told one by one. */
const MOST = 3;

/** The nails of one joint: what they go through, how far apart they are, and how far the outer ones are from its ends. */
interface Nailed {
  readonly panel: string;
  readonly mate: string;
  readonly gaps: readonly Length[];
  readonly ends: string;
  /** Those are all their places: how far apart they are is told by them, and would come out otherwise when rounded. */
  readonly placed: boolean;
}

/**
 * ", about 4 1/2 in apart, the outer ones 1 in from its ends" or ", 4 to 5 in apart"; nothing of what has holes, or of one in each joint. Rows that begin
 * in other places are told apart by what they go through. `there`: ids of what stands together by then.
 */
export function apartText(work: Work, list: readonly Fastener[], there: readonly string[]): string {
  const { plan } = work;
  const bored = new Set(plan.holes.flatMap(({ for: id }) => id ?? []));
  if (!list.every(({ id, kind }) => NAILS.has(kind) && !bored.has(id))) return "";
  const rows = groupedBy(list, ({ joint }) => joint).flatMap((own) => nailed(work, own, there) ?? []);
  const apart = (some: readonly Nailed[]): string => {
    const told = gapText(
      work,
      some.map(({ gaps }) => gaps),
    );
    return told === "" ? "" : `, ${told} apart`;
  };
  const stepped = rows.filter(({ placed }) => !placed);
  if (apart(rows) === "" || (stepped.length > 0 && apart(stepped) === "")) return "";
  const kinds = groupedBy(rows, (row) => `${gapText(work, [row.gaps])}|${row.ends}`).map((own) => ({
    panels: [...new Set(own.map(({ panel }) => panel))],
    mates: [...new Set(own.map(({ mate }) => mate))],
    gaps: own.flatMap(({ placed, gaps }) => (placed ? [] : [gaps])),
    ends: own[0]?.ends ?? "",
  }));
  const panels = new Set(kinds.flatMap((kind) => kind.panels));
  const told = kinds.map((kind) => (panels.size === 1 ? kind.mates : kind.panels));
  if (new Set(told.flat()).size < told.flat().length || kinds.length > MOST || kinds.some(({ ends }) => ends === ""))
    return apart(rows);
  const outer = ({ ends, panels: own }: (typeof kinds)[number]): string =>
    own.length === 1 ? ends : ends.replaceAll(/\bits /gu, "their ");
  if (kinds.length === 1) return `${apart(stepped)}, ${outer(kinds[0] as (typeof kinds)[number])}`;
  const on = panels.size === 1 ? "into" : "on";
  const same = kinds.every(({ gaps }) => gaps.length > 0 && `, ${gapText(work, gaps)} apart` === apart(stepped));
  const each = kinds.map((kind, i) => {
    const what = `${on} ${listed(work, told[i] ?? [])}`;
    if (same) return `${what} ${outer(kind)}`;
    if (kind.gaps.length > 0) return `${what} ${gapText(work, kind.gaps)}, ${outer(kind)}`;
    // Its end would be that of what they go into.
    return `${what} ${on === "into" ? kind.ends.replace(/\bits (.*)$/u, `the $1 of ${listed(work, kind.panels)}`) : outer(kind)}`;
  });
  return `${apart(stepped)}: ${each.join("; ")}`;
}

/** "about 4 1/2 in", "evenly about 12 1/4 in" of several, or "4 to 5 1/16 in": to 1/16 in or 1 mm, so that their sums come out; empty where there is none. */
function gapText({ design, print }: Work, rows: readonly (readonly Length[])[]): string {
  const gaps = rows.flat();
  const step = design.units === "inch" ? inches(1, 16) : millimetres(1);
  const sorted = gaps
    .map((gap) => roundTo(gap, step))
    .filter((gap) => less(ZERO, gap))
    .toSorted(compare);
  const [least, most] = [sorted[0], sorted.at(-1)];
  if (!least || !most) return "";
  // Stepped off by what is rounded, the last would come out elsewhere.
  const even =
    gaps.every((gap) => equal(gap, gaps[0] as Length)) &&
    !equal(least, gaps[0] as Length) &&
    rows.some((row) => row.length > 1);
  return equal(least, most)
    ? even
      ? `evenly about ${print(least)}`
      : `about ${print(least)}`
    : `${print(least).replace(UNIT, "")} to ${print(most)}`;
}

/** Along the way in which they spread farthest; null of a single one. */
function nailed(work: Work, list: readonly Fastener[], there: readonly string[]): Nailed | null {
  const spans = INDICES.map((axis) => {
    const at = list.map(({ head }) => head.at[axis]).toSorted(compare);
    return { axis, at, long: subtract(at.at(-1) as Length, at[0] as Length) };
  });
  const { axis, at } = spans.reduce((best, each) => (compare(each.long, best.long) > 0 ? each : best));
  const [one] = list;
  const panel = one?.through[0];
  if (at.length < 2 || one === undefined || panel === undefined) return null;
  const gaps = at.slice(1).map((place, i) => subtract(place, at[i] as Length));
  return { panel, mate: one.into, gaps, ...endsText(work, panel, axis, at, there) };
}

/** A few at one end are told one by one. */
const FEW = 3;

/**
 * "the outer ones 1 in from its ends", "1 in from its left and 2 in from its right end" of two; "3/8 in and 7/8 in from its left end" where all are
 * near one end; "1 in from the left side (A) and the right side (B)" where its ends lie in those; empty of what does not lie square.
 */
function endsText(
  work: Work,
  panel: string,
  axis: AxisIndex,
  at: readonly Length[],
  there: readonly string[],
): Pick<Nailed, "ends" | "placed"> {
  const { axes, turned } = work.part(panel);
  if (turned) return { ends: "", placed: false };
  const { box, inside } = seenOf(work, panel, there);
  const end = indexOf(axes.length) === axis ? "end" : "edge";
  const [first, last] = [at[0] as Length, at.at(-1) as Length];
  const [low, high] = [subtract(first, box.low[axis]), subtract(box.high[axis], last)];
  const far = subtract(last, first);
  const near = ([mine, other]: readonly [Length, Length]): boolean =>
    at.length <= FEW && less(add(far, mine), half(other));
  const [one, other] = [false, true].map((side) => {
    const face = faceOf(axis, side);
    const holder = inside.get(face);
    return { face, holder, from: holder ? `the ${holder}` : `its ${face} ${end}` };
  }) as [Side, Side];
  const places = (from: readonly Length[], side: Side): Pick<Nailed, "ends" | "placed"> => ({
    ends: `${series(from.map(work.place))} from ${side.from}`,
    placed: true,
  });
  if (near([low, high]))
    return places(
      at.map((place) => subtract(place, box.low[axis])),
      one,
    );
  if (near([high, low]))
    return places(
      at.toReversed().map((place) => subtract(box.high[axis], place)),
      other,
    );
  const outer = at.length === 2 ? "" : "the outer ones ";
  return { ends: `${outer}${outerText([work.place(low), one], [work.place(high), other], end)}`, placed: false };
}

/** What the maker measures from at one end of a row. */
interface Side {
  readonly face: string;
  /** What the panel ends in there. */
  readonly holder: string | undefined;
  readonly from: string;
}

/** "1 in from its ends", "1 in from its left and 2 in from its right end", "1 in from the left side (A) and its right end" */
function outerText([low, one]: [string, Side], [high, other]: [string, Side], end: string): string {
  const held = one.holder !== undefined || other.holder !== undefined;
  if (low === high)
    return `${low} from ${held ? series([...new Set([one.from, other.from])]) : `its ${pluralOf(end)}`}`;
  return `${low} from ${held ? one.from : `its ${one.face}`} and ${high} from ${other.from}`;
}
