import { type Length, millimetres } from "../../../../units/length.ts";
import { compare, equal, less, subtract } from "../../../../units/rational.ts";
import { faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Fastener } from "../../../design.ts";
import { listed, series, type Work } from "../draft.ts";

/** A row nearer to an edge than this is found by the edge: 50 mm. */
const NEAR = millimetres(50);

/**
 * The lines to nail along where a panel hides what its nails go into, from the edges of the panel: "Draw lines on the back panel (J) to nail along: over the
 * divider (C) 17 in from its left edge."; none where every row is at an edge, or has pilots bored.
 */
export function lineTexts(work: Work, fasteners: readonly Fastener[]): readonly string[] {
  const nails = fasteners.filter(({ id, through }) => through.length > 0 && !work.plan.holes.some((h) => h.for === id));
  const alike = new Map<string, string[]>();
  for (const panel of new Set(nails.map(({ through: [panel] }) => panel as string))) {
    const rows = rowsOf(
      work,
      panel,
      nails.filter(({ through }) => through[0] === panel),
    );
    const told = [...new Set(rows.map(({ edge }) => edge))].flatMap((edge) =>
      overEach(
        work,
        rows.filter((row) => row.edge === edge),
      ),
    );
    if (told.length > 0) alike.set(told.join("; "), [...(alike.get(told.join("; ")) ?? []), panel]);
  }
  return [...alike].map(([told, panels]) => `Draw lines on ${listed(work, panels)} to nail along: ${told}.`);
}

interface Row {
  readonly edge: string;
  readonly from: Length;
  readonly into: string;
}

const rowsOf = (work: Work, panel: string, nails: readonly Fastener[]): readonly Row[] =>
  [...new Set(nails.map(({ into }) => into))].flatMap((into) => {
    const own = nails.filter((nail) => nail.into === into);
    const row = rowOf(work, panel, own);
    return row ? [{ ...row, into }] : [];
  });

/** "over two dividers (H) 11 3/4 in and 23 1/2 in from its left edge" */
function overEach(work: Work, rows: readonly Row[]): readonly string[] {
  const mark = ({ into }: Row): string => work.line(into).mark;
  return [...new Set(rows.map(mark))].map((one) => {
    const own = rows.filter((row) => mark(row) === one).toSorted((a, b) => compare(a.from, b.from));
    const parts = listed(
      work,
      own.map(({ into }) => into),
    );
    return `over ${parts} ${series([...new Set(own.map(({ from }) => work.place(from)))])} from its ${own[0]?.edge}`;
  });
}

/** How far from an edge of the panel the nails lie that go into one part, where they lie in a line and not beside an edge. */
function rowOf(work: Work, panel: string, nails: readonly Fastener[]): Omit<Row, "into"> | null {
  const { blank, axes, turned } = work.part(panel);
  const [first] = nails;
  if (turned || !first) return null;
  for (const axis of INDICES) {
    if (axis === indexOf(axes.thickness)) continue;
    const at = first.head.at[axis];
    if (!nails.every(({ head }) => equal(head.at[axis], at)) || nails.length < 2) continue;
    const [low, high] = [subtract(at, blank.low[axis]), subtract(blank.high[axis], at)];
    return less(low, NEAR) || less(high, NEAR)
      ? null
      : { edge: `${faceOf(axis, false)} ${axis === indexOf(axes.length) ? "end" : "edge"}`, from: low };
  }
  return null;
}
