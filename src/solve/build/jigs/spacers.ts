import { inches, type Length, millimetres } from "../../../units/length.ts";
import { compare, equal, less, subtract, ZERO } from "../../../units/rational.ts";
import { type AxisIndex, extent, INDICES } from "../../design/space.ts";
import type { Design, Joint, Part } from "../../design.ts";
import type { JigDraft } from "../model/jig.ts";
import { fastBodies } from "../order/links.ts";
import { series } from "../steps/draft.ts";
import { together } from "../together.ts";

/** How long a spacer is, and how many hold two things apart evenly. Common practice, no source. */
const LONG = { inch: inches(3), mm: millimetres(75) } as const;
const COUNT = 2;

/** Methods that put a part in its place by themselves. */
export const LOCATED: ReadonlySet<Joint["method"]> = new Set<Joint["method"]>([
  ...(["mortise and tenon", "through tenon", "haunched tenon", "drawbored tenon", "loose tenon"] as const),
  ...([
    "half lap",
    "bridle",
    "mitre",
    "splined mitre",
    "keyed mitre",
    "box joint",
    "dovetail",
    "sliding dovetail",
  ] as const),
  ...(["dado", "rabbet", "groove", "tongue and groove", "dowels", "biscuits", "breadboard end"] as const),
]);

/** For each even gap between parts alike that nothing else puts in their places, two pieces as thick as the gap. */
export function spacers(design: Design, mark: (id: string) => string): readonly JigDraft[] {
  const { parts, joints, units } = design;
  // What runs or hangs finds its place by itself.
  const fast = new Map(fastBodies(design).flatMap((body, i) => body.map((place) => [parts[place]?.id ?? "", `${i}`])));
  const open = new Set(parts.filter(({ id, turned }) => !turned && standsFree(id, joints)).map(({ id }) => id));
  const alike = together(
    parts.filter(({ id }) => open.has(id)),
    ({ id, body }) => [fast.get(id), ...INDICES.map((i) => key(extent(body, i)))].join(),
  );
  const gaps = new Map<string, JigDraft>();
  for (const all of alike)
    for (const axis of INDICES)
      for (const row of rowsAlong(all, axis)) {
        const gap = evenGap(
          row.map(({ body }) => body),
          axis,
        );
        if (gap === null) continue;
        const before = gaps.get(key(gap));
        const placed = [...(before?.uses.parts ?? []), ...row.map(({ id }) => id)];
        gaps.set(key(gap), {
          ...{
            what: `parts ${series([...new Set(placed.map(mark))])}`,
            laid: "between",
            width: gap,
            length: LONG[units === "inch" ? "inch" : "mm"],
          },
          ...{ count: COUNT, holes: [] },
          uses: { holes: [], features: [], parts: placed },
        });
      }
  return [...gaps.values()];
}

const key = ({ n, d }: Length): string => `${n}/${d}`;

/** It is fixed to something, and no joint of it finds its place. */
function standsFree(id: string, joints: readonly Joint[]): boolean {
  const own = joints.filter(({ parts }) => parts[0] === id);
  const held = own.filter(({ kind }) => kind === "fixed" || kind === "sliding");
  return held.length > 0 && own.every(({ method }) => !LOCATED.has(method));
}

/** Those that lie alike in the two other directions, in their order. */
const rowsAlong = (all: readonly Part[], axis: AxisIndex): readonly (readonly Part[])[] =>
  together(all, ({ body }) =>
    INDICES.filter((i) => i !== axis)
      .map((i) => key(body.low[i]))
      .join(),
  ).map((row) => row.toSorted((a, b) => compare(a.body.low[axis], b.body.low[axis])));

/** The gap in a row of boxes where all are equal, there is some, and it is narrower than they are; else null. */
export function evenGap(row: readonly Part["body"][], axis: AxisIndex): Length | null {
  const gaps = row.slice(1).map((box, i) => subtract(box.low[axis], (row[i] as (typeof row)[number]).high[axis]));
  const [first] = gaps;
  if (!first || !less(ZERO, first) || !less(first, extent(row[0] as Part["body"], axis))) return null;
  return gaps.every((gap) => equal(gap, first)) ? first : null;
}
