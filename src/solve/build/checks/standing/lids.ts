/** Lids of chests: what swings up and lies flat, or what a lid support holds. Millimetres and kg. */
import type { Hardware, Part } from "../../../design.ts";
import type { Checked } from "../check.ts";
import { around, type Bounds } from "./weight-and-feet.ts";

const FOOT = 304.8;
const CUBIC_FOOT = FOOT * FOOT * FOOT;
/** Chests of 1.1 ft³ and more can hold a child (scope of ASTM F834 for toy chests). */
const SCOPE = 1.1 * CUBIC_FOOT;

export interface Lid {
  readonly parts: readonly Part[];
  readonly kg: number;
  /** Its supports, each once. */
  readonly supports: readonly Hardware[];
  /** What is under it. */
  readonly case: readonly Part[];
  readonly bounds: Bounds;
}

export function lidsOf({ design, motions, hardware, mass }: Checked): readonly Lid[] {
  const supported = hardware.filter(({ item, halfOf }) => item.kind === "lid support" && halfOf !== undefined);
  const swinging = motions.filter(({ kind }) => kind !== "slide").map(({ moves }) => moves);
  const held = supported.map(({ carriedBy }) => swinging.find((moves) => moves.includes(carriedBy)) ?? [carriedBy]);
  const groups = new Map([...swinging, ...held].map((moves) => [moves.join(), moves]));
  return [...groups.values()].flatMap((moves): readonly Lid[] => {
    const parts = design.parts.filter(({ id }) => moves.includes(id));
    const under = design.parts.filter(({ id }) => !moves.includes(id));
    if (parts.length === 0 || under.length === 0) return [];
    const bounds = around(parts.map(({ solid }) => solid));
    const size = (i: 0 | 1 | 2): number => bounds.high[i] - bounds.low[i];
    const below = bounds.low[2] - around(under.map(({ solid }) => solid)).low[2];
    if (size(2) > Math.min(size(0), size(1)) || size(0) * size(1) * below < SCOPE) return [];
    const ids = new Set(supported.filter(({ carriedBy }) => moves.includes(carriedBy)).map(({ halfOf }) => halfOf));
    const supports = hardware.filter(({ id }) => ids.has(id));
    return [{ parts, kg: parts.reduce((so, part) => so + mass(part), 0), supports, case: under, bounds }];
  });
}
