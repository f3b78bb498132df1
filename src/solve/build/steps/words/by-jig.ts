/** How holes are bored by a jig: what its step tells of it is not told again, but where it lies on the part. */
import type { Length } from "../../../../units/length.ts";
import { compare, equal, less, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, faceAxis, faceOf, INDICES, isFace } from "../../../design/space.ts";
import type { Hole, Part } from "../../../design.ts";
import { jigFor, stopOf } from "../../drilling/stop.ts";
import type { Jig } from "../../model/jig.ts";
import { series, stepToken, type Work } from "../draft.ts";
import { JIGS } from "../precedence.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { fromNearer, sideWord } from "./measured.ts";

/** The jig that holes of a part are bored by, what it is laid on, and how deep the stop is set. */
export function byJigText(work: Work, list: readonly Hole[]): readonly string[] {
  const [hole] = list;
  const { jigs, plan, print } = work;
  const jig = hole && jigFor(plan.holes.indexOf(hole), jigs);
  const { laid, end = "lower" } = jig ?? {};
  const flush =
    laid === "in the corner" && hole
      ? cornerWords(work.part(hole.part), hole, jig)
      : laid === "on the end"
        ? `, its ${end} end flush with the ${end === "lower" ? "bottom" : end} of the part`
        : "";
  if (!jig) return [];
  const stop = hole.through
    ? ""
    : jig.thickness
      ? `: the bit goes through it first, so set the stop ${print(stopOf(hole, plan, jig))} from its tip`
      : ": the bit goes through it first, so add its thickness to the depth where you set the stop";
  const lines = laid === "on the end" ? linesText(work, list, jig) : "";
  return [`${lines}Bore by ${jig.id} for ${jig.what}, from ${stepToken(JIGS)}${flush}${stop}.`];
}

/** "Draw the lines of the holes 1 1/4 in from the front edge and 2 in from the back edge. ": what a strip is laid on. */
function linesText(work: Work, list: readonly Hole[], { end = "lower", uses }: Jig): string {
  const own = list.filter((hole) => uses.holes.includes(work.plan.holes.indexOf(hole)));
  const [first] = own;
  if (!first) return "";
  const along = isFace(end) ? faceAxis(end) : 2;
  const across = INDICES.find((i) => i !== along && Math.abs(first.direction[i]) < 0.01) as AxisIndex;
  const lines = groupedBy(own.map(({ at }) => at[across]).toSorted(compare), ({ n, d }) => `${n}/${d}`).map(
    ([at]) => at as Length,
  );
  const places =
    lines.length > PAIR ? fromOneEdge(work, first, across, lines) : fromNearest(work, first, across, lines);
  return `Draw the ${lines.length === 1 ? "line" : "lines"} of the holes ${places}. `;
}

/** Two lines are near an edge each; more are a row. */
const PAIR = 2;

const fromNearest = (work: Work, { part }: Hole, axis: AxisIndex, lines: readonly Length[]): string =>
  series(lines.map((at) => fromNearer({ print: work.place }, work.part(part), axis, at, at) ?? "along the middle"));

/** From the one that is nearer to the first of them. */
function fromOneEdge(work: Work, { part: id }: Hole, axis: AxisIndex, lines: readonly Length[]): string {
  const part = work.part(id);
  const [low, high] = [
    lines.map((at) => subtract(at, part.blank.low[axis])),
    lines.map((at) => subtract(part.blank.high[axis], at)).toReversed(),
  ];
  const isHigh = less(high[0] as Length, low[0] as Length);
  return `${series((isHigh ? high : low).map(work.place))} from the ${faceOf(axis, isHigh)} ${sideWord(part, axis)}`;
}

/** The edges that the fences of a template lie against: a hole of it is as far from them as from those of the template. */
function cornerWords(part: Part, { at, direction }: Hole, jig: Jig | null | undefined): string {
  const told = jig?.holes.flatMap(({ x, y }) => [x, y]) ?? [];
  const edges = INDICES.filter((i) => Math.abs(direction[i]) < 0.01).flatMap((i) => {
    const low = subtract(at[i], part.body.low[i]);
    const high = subtract(part.body.high[i], at[i]);
    const [isLow, isHigh] = [low, high].map((by) => told.some((each) => equal(each, by)));
    return isLow || isHigh ? [`${faceOf(i, !isLow)} ${sideWord(part, i)}`] : [];
  });
  return edges.length === 2 ? `, its fences against the ${series(edges)}` : "";
}
