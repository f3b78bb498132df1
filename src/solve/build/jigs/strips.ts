import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, equal, half, less, min, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { type AxisIndex, faceOf, INDICES } from "../../design/space.ts";
import type { Design, Hardware, Hole, Part } from "../../design.ts";
import type { JigDraft } from "../model/jig.ts";
import { together } from "../together.ts";

/** Of a drilling strip, and its wood beyond the highest hole, at least; its length is even. Common practice, no source. */
const SIZE = {
  inch: { wide: inches(2), beyond: inches(1), even: inches(1, 4) },
  mm: { wide: millimetres(50), beyond: millimetres(25), even: millimetres(5) },
} as const;
/** Shorter rows are set out one by one: of shelf pins, of a slide. */
const LEAST = { pins: 3, slide: 2 } as const;

interface Numbered {
  readonly hole: Hole;
  /** In the list of all holes. */
  readonly i: number;
}

interface Row {
  readonly what: string;
  readonly part: Part;
  readonly axis: AxisIndex;
  readonly fromHigh: boolean;
  readonly holes: readonly Numbered[];
}

/** A strip for each pattern of rows that comes more than once: its holes lie as far from the end as those of the part. */
export function drillingStrips(
  design: Design,
  holes: readonly Hole[],
  hardware: readonly Hardware[],
): readonly JigDraft[] {
  const slides = new Set(hardware.filter(({ item }) => item.kind.endsWith("slide")).map(({ id }) => id));
  const size = SIZE[design.units === "inch" ? "inch" : "mm"];
  const rows = design.parts
    .filter(({ turned }) => !turned)
    .flatMap((part) => {
      const own = holes.flatMap((hole, i) => (hole.part === part.id && hole.atBench ? [{ hole, i }] : []));
      return [
        ...pinRows(
          part,
          own.filter(({ hole }) => hole.kind === "pin"),
        ),
        ...slideRows(
          part,
          own.filter(({ hole }) => hole.for !== null && slides.has(hole.for)),
        ),
      ];
    });
  const patterns = new Map<string, { jig: JigDraft; count: number }>();
  for (const row of rows) {
    const jig = stripFor(row, size);
    const pattern = [row.what, jig.end, ...jig.holes.map(({ y, diameter }) => `${key(y)} ${key(diameter)}`)].join();
    const before = patterns.get(pattern);
    const uses = { ...jig.uses, holes: [...(before?.jig.uses.holes ?? []), ...jig.uses.holes] };
    patterns.set(pattern, { jig: { ...(before?.jig ?? jig), uses }, count: (before?.count ?? 0) + 1 });
  }
  return [...patterns.values()].filter(({ count }) => count > 1).map(({ jig }) => jig);
}

const key = ({ n, d }: Length): string => `${n}/${d}`;

/** Upright rows. */
function pinRows(part: Part, pins: readonly Numbered[]): readonly Row[] {
  const lines = together(pins, ({ hole }) => `${hole.direction.join()} ${key(hole.at[0])} ${key(hole.at[1])}`);
  return lines
    .filter((all) => all.length >= LEAST.pins)
    .map((all) => ({ what: "the shelf pins", part, axis: 2, fromHigh: false, holes: all }));
}

/** What holds one slide on one part, where it lies along one line. */
function slideRows(part: Part, own: readonly Numbered[]): readonly Row[] {
  return together(own, ({ hole }) => hole.for ?? "").flatMap((all): readonly Row[] => {
    const [first] = all;
    const [axis, ...others] = INDICES.filter((i) => all.some(({ hole }) => !equal(hole.at[i], first.hole.at[i])));
    if (axis === undefined || others.length > 0 || all.length < LEAST.slide) return [];
    const from = (high: boolean): Length => all.map(({ hole }) => distance(part, axis, high, hole)).reduce(min);
    return [{ what: "the slides", part, axis, fromHigh: less(from(true), from(false)), holes: all }];
  });
}

const distance = ({ blank }: Part, axis: AxisIndex, high: boolean, { at }: Hole): Length =>
  high ? subtract(blank.high[axis], at[axis]) : subtract(at[axis], blank.low[axis]);

/** Along the middle of the strip, from its end. */
function stripFor({ what, part, axis, fromHigh, holes }: Row, { wide, beyond, even }: (typeof SIZE)["inch"]): JigDraft {
  const bored = holes
    .map(({ hole }) => ({
      ...{ x: half(wide), y: distance(part, axis, fromHigh, hole) },
      diameter: hole.stages[0]?.diameter ?? ZERO,
    }))
    .toSorted((a, b) => compare(a.y, b.y));
  const side = faceOf(axis, fromHigh);
  return {
    ...{ what, laid: "on the end", end: side === "bottom" ? "lower" : side, width: wide, count: 1 },
    ...{ length: roundTo(add(bored.at(-1)?.y ?? ZERO, beyond), even, "up"), holes: bored },
    uses: { holes: holes.map(({ i }) => i), features: [], parts: [] },
  };
}
