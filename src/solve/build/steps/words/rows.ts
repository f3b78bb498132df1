/** Rows of parts alike that one step puts in: what is left between them, or where the first goes and which way the others follow. */
import type { Length } from "../../../../units/length.ts";
import { add, equal, less, multiply, rational, subtract, toNumber, ZERO } from "../../../../units/rational.ts";
import { inRuns } from "../../../design/shapes/runs.ts";
import { type AxisIndex, extent, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import { evenGap, LOCATED } from "../../jigs/spacers.ts";
import { pluralOf, series, type Work } from "../draft.ts";
import { grouped } from "../grouped.ts";
import { type Move, unitsOf } from "../moves.ts";
import { type BoxFeature, spanOf } from "./boxes.ts";
import { roomToSwell } from "./room-to-swell.ts";

/** The even gap in a row of alike parts; null when there is none. */
export function gapText(work: Work, moves: readonly Move[]): string | null {
  const ids = moves.flatMap((move) => move.arriving);
  const located = moves.some((move) => move.work.some(({ joint }) => LOCATED.has(joint.method)));
  if (ids.length < 2 || located) return null;
  if (ids.some((id) => work.part(id).turned)) return null;
  const bodies = ids.map((id) => work.part(id).body);
  for (const axis of INDICES) {
    const row = inRow(bodies, axis);
    const gap = row && evenGap(row, axis);
    if (gap === null) continue;
    const jig = work.jigs.find(({ laid, width }) => laid === "between" && equal(width, gap));
    return `Leave ${work.print(gap)} between one and the next: ${jig ? `${jig.id} is as thick.` : "a spacer of that thickness helps."}`;
  }
  return null;
}

/** Bodies one after another along an axis; null where they are not alike in the other two. */
function inRow(bodies: readonly Part["body"][], axis: AxisIndex): readonly Part["body"][] | null {
  const row = bodies.toSorted((a, b) => toNumber(subtract(a.low[axis], b.low[axis])));
  const first = row[0] as Part["body"];
  const alike = row.every((box) =>
    INDICES.every((i) => i === axis || (equal(box.low[i], first.low[i]) && equal(extent(box, i), extent(first, i)))),
  );
  return alike ? row : null;
}

/** Boards that lie against each other in one rabbet, or in one on each side: nothing but the one before says where the next goes. */
export function runTexts(work: Work, moves: readonly Move[]): readonly string[] {
  const ids = [...new Set(moves.flatMap((move) => move.arriving))];
  if (ids.length < 2 || ids.some((id) => work.part(id).turned)) return [];
  const bodies = ids.map((id) => work.part(id).body);
  for (const axis of INDICES) {
    const row = inRow(bodies, axis);
    if (!row?.slice(1).every((box, i) => equal(box.low[axis], (row[i] as Part["body"]).high[axis]))) continue;
    const [first, last] = [row[0] as Part["body"], row.at(-1) as Part["body"]];
    const run = runOf(work, moves, axis, first.low[axis], last.high[axis]);
    if (run)
      return [
        runText(work, run, axis, first.low[axis], last.high[axis]) +
          swellText(work, gapsIn(work, ids, axis), left(run, first, last, axis)),
      ];
  }
  return [];
}

/** Of boards that lie against each other in a row: what is left between one and the next in dry weather, and that in all; zero where nothing is. */
interface Gaps {
  readonly each: Length;
  readonly all: Length;
}

function gapsIn(work: Work, ids: readonly string[], axis: AxisIndex): Gaps {
  const part = work.part(ids[0] as string);
  const each = indexOf(part.axes.width) === axis ? roomToSwell(work, part, "width", []) : ZERO;
  return { each, all: multiply(each, rational(ids.length - 1)) };
}

/** What the gaps in the row that a part ends take, in all, of the room beyond it; zero where it ends none. */
export function gapsBefore(work: Work, id: string, axis: AxisIndex): Length {
  const step = unitsOf(work.plan)
    .flatMap((unit) => grouped(work, unit))
    .find((moves) => moves.some(({ arriving }) => arriving.includes(id)));
  const ids = [...new Set(step?.flatMap(({ arriving }) => arriving) ?? [])];
  return step && runTexts(work, step).length > 0 ? gapsIn(work, ids, axis).all : ZERO;
}

/** What of a run its boards leave open. */
const left = (run: Run, first: Part["body"], last: Part["body"], axis: AxisIndex): Length =>
  add(subtract(first.low[axis], run.low), subtract(run.high, last.high[axis]));

/** Boards that swell towards each other are put in apart when they are dry: a last one, cut to what stays open, makes up for it. */
function swellText({ print }: Work, { each, all }: Gaps, open: Length): string {
  return each.n > 0n && less(all, open)
    ? ` In dry weather leave ${print(each)} between one and the next: across their grain they swell, and would press each other out. Then ${print(subtract(open, all))} stay open; the last one is cut to what does.`
    : "";
}

interface Run {
  readonly low: Length;
  readonly high: Length;
  /** "rabbets" */
  readonly name: string;
}

/** The cut that takes a whole row, where all of it lies in one in each part that it goes into. */
function runOf(work: Work, moves: readonly Move[], axis: AxisIndex, low: Length, high: Length): Run | null {
  const joints = moves.flatMap((move) => move.work.map(({ joint }) => joint));
  const mates = [...new Set(joints.map(({ parts: [, mate] }) => mate))];
  const runs = mates.map((mate) => {
    const { turned, features } = work.part(mate);
    if (turned) return null;
    const own = inRuns(features).filter((each): each is BoxFeature => "size" in each && each.along[axis] !== 0);
    return (
      own
        .filter(({ kind }) => kind === "rabbet" || kind === "groove" || kind === "dado")
        .map((box) => ({ kind: box.kind, ...spanOf(box, axis) }))
        .find((span) => !less(low, span.low) && !less(span.high, high)) ?? null
    );
  });
  const [run] = runs;
  if (!run || !runs.every((each) => each && equal(each.low, run.low) && equal(each.high, run.high))) return null;
  const kinds = [...new Set(runs.flatMap((each) => each?.kind ?? []))].map((kind) =>
    runs.length > 1 ? pluralOf(kind) : kind,
  );
  return { low: run.low, high: run.high, name: `the ${series(kinds)}` };
}

/** From the end that they reach; from the lower one where they reach both, or none. */
function runText({ print }: Work, run: Run, axis: AxisIndex, low: Length, high: Length): string {
  const fromHigh = !equal(low, run.low) && equal(high, run.high);
  const [start, end] = [faceOf(axis, fromHigh), faceOf(axis, !fromHigh)];
  const before = fromHigh ? subtract(run.high, high) : subtract(low, run.low);
  const left = fromHigh ? subtract(low, run.low) : subtract(run.high, high);
  const begin =
    before.n === 0n
      ? `Begin at the ${start}, where ${run.name} ends`
      : `Begin ${print(before)} from the ${start} end of ${run.name}`;
  const ends = run.name.endsWith("s") ? begin.replace(/ ends$/u, " end") : begin;
  const open = left.n > 0n ? ` At the ${end} ${print(left)} of ${run.name} stay open.` : "";
  return `${ends}, and go on towards the ${end}, each against the one before.${open}`;
}
