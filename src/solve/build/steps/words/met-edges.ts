/** Edges that are rounded or chamfered and that others come against: under those a rounding would stay open as a notch. */
import { type Length, less, max, subtract, TOLERANCE, toNumber } from "../../../../units/index.ts";
import { type AxisIndex, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import { listed, type Work } from "../draft.ts";
import type { Arris } from "./leaf-seats.ts";

/** "Leave the edge square too where the bottom rail (L) comes against it, over 4 in from its bottom end: ..." */
export function squareWhereMet(work: Work, part: Part, edges: readonly Arris[]): readonly string[] {
  const met = edges.flatMap((edge) => {
    const run = INDICES.find((i) => edge.every(([axis]) => axis !== i));
    return run === undefined || part.turned ? [] : matesAt(work, part, edge).map((mate) => ({ mate, run }));
  });
  const [first] = met;
  if (!first) return [];
  const { run } = first;
  const ids = [...new Set(met.map(({ mate }) => mate.id))];
  const spans = joined(
    met.filter((each) => each.run === run).map(({ mate }) => ({ low: mate.body.low[run], high: mate.body.high[run] })),
  );
  const told = spans.map((span) => spanText(work, part, run, span)).join(" and ");
  const [come, them] = ids.length === 1 ? ["comes", "it"] : ["come", "them"];
  return [
    `Leave the edge square where ${listed(work, ids)} ${come} against it, ${told}: under ${them} a rounded edge stays open as a notch.`,
  ];
}

/** "over 4 in from its bottom end", "along its whole length", "from 3 in to 5 in from its left end" */
function spanText(work: Work, { body }: Part, run: AxisIndex, span: Span): string {
  const [below, above] = [subtract(span.low, body.low[run]), subtract(body.high[run], span.high)];
  const size = work.print(subtract(span.high, span.low));
  if (below.n <= 0n)
    return above.n <= 0n ? "along its whole length" : `over ${size} from its ${faceOf(run, false)} end`;
  if (above.n <= 0n) return `over ${size} from its ${faceOf(run, true)} end`;
  return `from ${work.place(below)} to ${work.place(subtract(span.high, body.low[run]))} from its ${faceOf(run, false)} end`;
}

/** What ends on one of the two faces, over the edge itself; not what opens, and shows the edge again. */
function matesAt({ design, motions }: Work, part: Part, edge: Arris): readonly Part[] {
  const moving = new Set(motions.flatMap(({ moves }) => moves));
  return design.parts.filter(
    (mate) =>
      mate.id !== part.id &&
      !mate.turned &&
      !moving.has(mate.id) &&
      edge.some((face, i) => lies(part, mate, face, edge[1 - i] as Arris[number])),
  );
}

function lies(part: Part, mate: Part, [axis, high]: Arris[number], [other, otherHigh]: Arris[number]): boolean {
  const gap = high
    ? subtract(mate.body.low[axis], part.body.high[axis])
    : subtract(part.body.low[axis], mate.body.high[axis]);
  const edge = part.body[otherHigh ? "high" : "low"][other];
  const within = (i: AxisIndex): boolean =>
    less(mate.body.low[i], part.body.high[i]) && less(part.body.low[i], mate.body.high[i]);
  const run = INDICES.find((i) => i !== axis && i !== other) as AxisIndex;
  return (
    axis === indexOf(mate.axes.length) &&
    Math.abs(toNumber(gap)) <= TOLERANCE &&
    within(run) &&
    within(other) &&
    !less(edge, mate.body.low[other]) &&
    !less(mate.body.high[other], edge)
  );
}

interface Span {
  readonly low: Length;
  readonly high: Length;
}

/** One after another, those that touch as one. */
function joined(spans: readonly Span[]): readonly Span[] {
  const all: Span[] = [];
  for (const span of spans.toSorted((a, b) => toNumber(subtract(a.low, b.low)))) {
    const last = all.at(-1);
    if (!last || less(last.high, span.low)) all.push(span);
    else all[all.length - 1] = { low: last.low, high: max(last.high, span.high) };
  }
  return all;
}
