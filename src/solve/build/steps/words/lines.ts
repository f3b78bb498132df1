import { isSame, type Length, millimetres } from "../../../../units/length.ts";
import { compare, equal, less, max, min, rational, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Fastener, Part } from "../../../design.ts";
import { listed, pluralOf, series, type Work } from "../draft.ts";
import { type Sentence, sentence } from "../sentence.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { calledAmong } from "./by-place.ts";
import { leavesRoomToSwell } from "./measuring.ts";
import { type Seen, seenOf } from "./seen.ts";

/** A row nearer to an edge than this is found by the edge: 50 mm. */
const NEAR = millimetres(50);

/**
 * The lines to nail along where a panel hides what its nails go into, from the edges of the panel: "Draw lines on the back panel (J) to nail along: over the
 * divider (C) 17 in from its left edge."; none where what they go into lies under all of it, or has pilots bored. `there`: what
 * stands together by then.
 */
export function lineTexts(work: Work, fasteners: readonly Fastener[], there: readonly string[]): readonly Sentence[] {
  const nails = fasteners.filter(({ id, through }) => through.length > 0 && !work.plan.holes.some((h) => h.for === id));
  const alike = new Map<string, string[]>();
  const all = [...new Set(nails.map(({ through: [panel] }) => panel as string))];
  for (const panel of all) {
    const own = nails.filter(({ through }) => through[0] === panel);
    const told = overEach(work, rowsOf(work, panel, own, there), there).join("; ");
    if (told !== "") alike.set(told, [...(alike.get(told) ?? []), panel]);
  }
  return [...alike].map(([told, panels]) =>
    sentence(
      `Draw lines on ${panels.length > 1 ? listed(work, panels) : `the ${calledAmong(work, panels[0] as string, all)}`} to nail along: ${panels.length > 1 ? told.replaceAll(/\bits /gu, "their ") : told}.`,
      { drives: "lines" },
    ),
  );
}

interface Row {
  readonly edge: string;
  readonly from: Length;
  /** Found by the edge that it lies along. */
  readonly near: boolean;
  /** From the outer face of what they go into: the panel may be narrower than it is drawn. */
  readonly outer: boolean;
  readonly into: string;
}

const rowsOf = (work: Work, panel: string, nails: readonly Fastener[], there: readonly string[]): readonly Row[] =>
  [...new Set(nails.map(({ into }) => into))].flatMap((into) => {
    const own = nails.filter((nail) => nail.into === into);
    const row = rowOf(work, panel, own, there);
    return row ? [{ ...row, into }] : [];
  });

/** "over two dividers (H) 11 3/4 in and 23 1/2 in from its left edge", "over both sides (A) 3/16 in from its left and right edges" */
function overEach(work: Work, rows: readonly Row[], there: readonly string[]): readonly string[] {
  const far = groupedBy(
    rows.filter(({ near }) => !near),
    ({ edge, into }) => `${edge}|${work.line(into).mark}`,
  );
  const near = groupedBy(
    rows.filter((row) => row.near),
    ({ from, outer }) => `${work.place(from)}|${outer}`,
  );
  return [...near, ...far].map((own) => {
    const sorted = own.toSorted((a, b) => compare(a.from, b.from));
    const [id = "", ...more] = new Set(own.map(({ into }) => into));
    const parts = more.length > 0 ? listed(work, [id, ...more]) : `the ${calledAmong(work, id, there)}`;
    const places = series([...new Set(sorted.map(({ from }) => work.place(from)))]);
    if (own.some(({ outer }) => outer))
      return `over ${parts} ${places} from ${own.length > 1 ? "their" : "its"} outside`;
    return `over ${parts} ${places} from ${edgesText([...new Set(own.map(({ edge }) => edge))])}`;
  });
}

/** "its left edge", "its left and right edges and its bottom end", "the bottom panel (C)" */
const edgesText = (edges: readonly string[]): string =>
  series(
    groupedBy(edges, (edge) => (edge.startsWith("its ") ? (edge.split(" ").at(-1) as string) : edge)).map((own) => {
      const [only = "", ...more] = own;
      if (more.length === 0) return only;
      const word = only.split(" ").at(-1) as string;
      return `its ${series(own.map((edge) => edge.slice("its ".length, -word.length - 1)))} ${pluralOf(word)}`;
    }),
  );

/** How far from an edge of the panel the nails lie that go into one part, where they lie in a line that nobody sees. */
function rowOf(
  work: Work,
  panel: string,
  nails: readonly Fastener[],
  there: readonly string[],
): Omit<Row, "into"> | null {
  const part = work.part(panel);
  const [first] = nails;
  if (part.turned || !first) return null;
  const { box, inside } = seenOf(work, panel, there);
  for (const axis of INDICES) {
    if (Math.abs(first.direction[axis]) > 0.5) continue;
    const at = first.head.at[axis];
    if (!nails.every(({ head }) => equal(head.at[axis], at))) continue;
    const [low, high] = [subtract(at, box.low[axis]), subtract(box.high[axis], at)];
    const narrow = isNarrow(work, part, nails, axis);
    if (nails.length < 2 && !narrow) continue;
    const near = less(low, NEAR) || less(high, NEAR);
    if (near && !narrow && axis === indexOf(part.axes.length)) return null;
    // An edge that lies in another part is out of reach.
    const bare = (side: boolean): boolean => !inside.has(faceOf(axis, side));
    const fromHigh = near ? less(high, low) : !bare(false) && bare(true);
    const edge = edgeOf(part, axis, fromHigh, inside);
    return { edge, from: fromHigh ? high : low, near, outer: near && isOuter(work, part, first.into, axis, fromHigh) };
  }
  return null;
}

/** Whether a panel that is cut with room to swell, and so may end before the edge that is drawn, is drawn to the face of what lies below it. */
const isOuter = (work: Work, panel: Part, into: string, axis: AxisIndex, high: boolean): boolean => {
  const [side, below] = [high ? "high" : "low", work.part(into)] as const;
  return (
    axis === indexOf(panel.axes.width) &&
    !below.turned &&
    equal(below.body[side][axis], panel.body[side][axis]) &&
    leavesRoomToSwell(work, panel)
  );
};

/** "its left edge", "its bottom end"; of what lies in another part, where it comes out of that: "the bottom rail (C)". */
function edgeOf({ axes }: Part, axis: AxisIndex, high: boolean, inside: Seen["inside"]): string {
  const face = faceOf(axis, high);
  const holder = inside.get(face);
  return holder ? `the ${holder}` : `its ${face} ${axis === indexOf(axes.length) ? "end" : "edge"}`;
}

/** Where the part below meets the panel, along an axis. */
function metAlong({ design }: Work, nails: readonly Fastener[], axis: AxisIndex) {
  const own = design.joints.filter(({ id }) => nails.some(({ joint }) => joint === id));
  const at = own
    .flatMap(({ contact }) => contact)
    .filter(({ normal }) =>
      nails.some(({ direction }) => INDICES.every((i) => Math.abs(normal[i]) === Math.abs(direction[i]))),
    )
    .flatMap(({ polygons }) => polygons.flat().map((point) => rational(Math.round(point[axis]))));
  return at.length === 0 ? null : { low: at.reduce(min), high: at.reduce(max) };
}

/** The panel reaches past what lies below it, across the row. */
function isNarrow(work: Work, { body }: Part, nails: readonly Fastener[], axis: AxisIndex): boolean {
  const met = metAlong(work, nails, axis);
  return met !== null && !(isSame(met.low, body.low[axis]) && isSame(met.high, body.high[axis]));
}
