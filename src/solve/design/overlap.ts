import { overlapDepth } from "../../geometry/index.ts";
import type { Axis, PartDraft } from "../../parse/draft.ts";
import { type Length, TOLERANCE } from "../../units/length.ts";
import { rational } from "../../units/rational.ts";
import type { Part } from "../design.ts";
import { type AxisIndex, axisAt, common, INDICES, isSolidBox } from "./space.ts";

/** How far two parts reach into each other, and the direction in which that is, where it is one of the three. */
export interface Overlap {
  readonly by: Length;
  readonly way: Axis | null;
}

/** What the maker may write to move one of two parts by as much. */
export const cureOf = (drafts: readonly (PartDraft | undefined)[], { way }: Overlap, by: string): string | null =>
  drafts.flatMap((draft) => (way && draft?.cures?.[way]?.replace("{by}", by)) ?? [])[0] ?? null;

/** What a finding may say besides: that only what joints add to them overlaps, and which of them has a notch. */
export function whyOverlap(
  [a, b]: readonly [Part, Part],
  drafts: readonly (PartDraft | undefined)[],
): { readonly added: boolean; readonly notched: string | null } {
  const square = !a.turned && !b.turned;
  const notched = [a, b].find((_, i) => drafts[i]?.shapes.some(({ shape }) => shape === "notch"));
  return { added: square && !isSolidBox(common(a.body, b.body)), notched: notched?.id ?? null };
}

/** Null where they do not. */
export function overlapOf(a: Part, b: Part): Overlap | null {
  const depth = overlapDepth(a.solid, b.solid);
  if (depth <= TOLERANCE) return null;
  const apart = (i: AxisIndex): number => Math.min(a.solid.high[i] - b.solid.low[i], b.solid.high[i] - a.solid.low[i]);
  const way = INDICES.find((i) => Math.abs(apart(i) - depth) <= TOLERANCE);
  return { by: rational(Math.round(depth)), way: way === undefined ? null : axisAt(way) };
}
