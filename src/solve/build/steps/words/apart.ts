/** How far apart stand what is driven without holes that would show it, and where the first and the last of them do. */
import { inches, type Length, millimetres } from "../../../../units/length.ts";
import { compare, equal, less, subtract, ZERO } from "../../../../units/rational.ts";
import { roundTo } from "../../../../units/round.ts";
import { type AxisIndex, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Fastener, FastenerKind } from "../../../design.ts";
import { listed, pluralOf, type Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";

const PLAIN: ReadonlySet<FastenerKind> = new Set(["nail", "brad", "staple"]);

/** At the end of a measure. */
const UNIT = /[ \u202f](?:in|mm)$/u;
/** More rows of different places than these are not told one by one. */
const MOST = 3;

/** The nails of one joint: what they go through, how far apart they are, and how far the outer ones are from its ends. */
interface Nailed {
  readonly panel: string;
  readonly gaps: readonly Length[];
  readonly ends: string;
}

/**
 * ", about 4 1/2 in apart, the outer ones 1 in from its ends" or ", 4 to 5 in apart"; nothing of what has holes, or of one in each joint. Rows that begin
 * in other places are told apart by what they go through.
 */
export function apartText(work: Work, list: readonly Fastener[]): string {
  const { plan } = work;
  const bored = new Set(plan.holes.flatMap(({ for: id }) => id ?? []));
  if (!list.every(({ id, kind }) => PLAIN.has(kind) && !bored.has(id))) return "";
  const rows = groupedBy(list, ({ joint }) => joint).flatMap((own) => nailed(work, own) ?? []);
  const all = gapText(
    work,
    rows.flatMap(({ gaps }) => gaps),
  );
  if (all === "") return "";
  const kinds = groupedBy(rows, (row) => `${gapText(work, row.gaps)}|${row.ends}`).map((own) => ({
    panels: [...new Set(own.map(({ panel }) => panel))],
    gaps: own.flatMap(({ gaps }) => gaps),
    ends: own[0]?.ends ?? "",
  }));
  const panels = kinds.flatMap((kind) => kind.panels);
  if (panels.length > new Set(panels).size || kinds.length > MOST || kinds.some(({ ends }) => ends === ""))
    return `, ${all} apart`;
  const two = rows.every(({ gaps }) => gaps.length === 1);
  const outer = (kind: (typeof kinds)[number]): string =>
    `${two ? "" : "the outer ones "}${kind.panels.length === 1 ? kind.ends : kind.ends.replaceAll(/\bits /gu, "their ")}`;
  const told = kinds.map(outer);
  if (kinds.length === 1) return `, ${all} apart, ${told[0]}`;
  const each = kinds.map((kind, i) => `on ${listed(work, kind.panels)} ${gapText(work, kind.gaps)}, ${told[i]}`);
  return `, ${all} apart: ${each.join("; ")}`;
}

/** "about 4 1/2 in" or "4 to 5 in", to the half inch; empty where there is none. */
function gapText({ design, print }: Work, gaps: readonly Length[]): string {
  const step = design.units === "inch" ? inches(1, 2) : millimetres(10);
  const sorted = gaps
    .map((gap) => roundTo(gap, step))
    .filter((gap) => less(ZERO, gap))
    .toSorted(compare);
  const [least, most] = [sorted[0], sorted.at(-1)];
  if (!least || !most) return "";
  return equal(least, most) ? `about ${print(least)}` : `${print(least).replace(UNIT, "")} to ${print(most)}`;
}

/** Along the way in which they spread farthest; null of a single one. */
function nailed(work: Work, list: readonly Fastener[]): Nailed | null {
  const spans = INDICES.map((axis) => {
    const at = list.map(({ head }) => head.at[axis]).toSorted(compare);
    return { axis, at, long: subtract(at.at(-1) as Length, at[0] as Length) };
  });
  const { axis, at } = spans.reduce((best, each) => (compare(each.long, best.long) > 0 ? each : best));
  const panel = list[0]?.through[0];
  if (at.length < 2 || panel === undefined) return null;
  const gaps = at.slice(1).map((place, i) => subtract(place, at[i] as Length));
  return { panel, gaps, ends: endsText(work, panel, axis, [at[0] as Length, at.at(-1) as Length]) };
}

/** "1 in from its ends", "1 in from its left and 2 in from its right end"; empty of what does not lie square. */
function endsText(work: Work, panel: string, axis: AxisIndex, [first, last]: readonly [Length, Length]): string {
  const { body, axes, turned } = work.part(panel);
  if (turned) return "";
  const end = indexOf(axes.length) === axis ? "end" : "edge";
  const [low, high] = [subtract(first, body.low[axis]), subtract(body.high[axis], last)].map(work.place);
  return low === high
    ? `${low} from its ${pluralOf(end)}`
    : `${low} from its ${faceOf(axis, false)} and ${high} from its ${faceOf(axis, true)} ${end}`;
}
