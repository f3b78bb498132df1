import type { Finding } from "../../findings/finding.ts";
import { outsideMissed } from "../../findings/rules/outside-missed.ts";
import { partFloats } from "../../findings/rules/part-floats.ts";
import { partsOverlap } from "../../findings/rules/parts-overlap.ts";
import { shapeLeavesNothing } from "../../findings/rules/shape-leaves-nothing.ts";
import { contact, exactBounds, isEmpty } from "../../geometry/index.ts";
import type { Draft, PartDraft } from "../../parse/draft.ts";
import { inches, type Length } from "../../units/length.ts";
import { absolute, less, min, subtract } from "../../units/rational.ts";
import type { Box, Design, Part } from "../design.ts";
import { ON_FLOOR } from "./hardware/fitters.ts";
import { cureOf, overlapOf, whyOverlap } from "./overlap.ts";
import { axisAt, enclosing, faceOf, INDICES, withAxis } from "./space.ts";

type Print = (length: Length) => string;

/** Parts of which nothing is left. */
export const vanished = (parts: readonly Part[]): readonly Finding[] =>
  parts.filter((part) => isEmpty(part.solid)).map((part) => shapeLeavesNothing(part.at, { name: part.id }));

/** Is it a piece of furniture: no two parts in one place, every part joined to the rest, as big as it should be? */
export function judge(
  design: Design,
  outside: Box | null,
  draft: Draft,
  draftOf: (id: string) => PartDraft | undefined,
  print: Print,
): readonly Finding[] {
  return [
    ...overlaps(design, draftOf, print),
    ...floating(design),
    ...(outside ? misses(design, outside, draft, print) : []),
  ];
}

function overlaps({ parts }: Design, draftOf: (id: string) => PartDraft | undefined, print: Print): readonly Finding[] {
  return parts.flatMap((a, i) =>
    parts.slice(i + 1).flatMap((b) => {
      const overlap = overlapOf(a, b);
      if (!overlap) return [];
      const { way } = overlap;
      const drafts = [draftOf(a.id), draftOf(b.id)];
      const made = drafts.every((each) => each?.made !== undefined);
      return [
        partsOverlap(
          b.at,
          {
            first: a.id,
            second: b.id,
            by: print(overlap.by),
            way,
            made,
            ...whyOverlap([a, b], drafts),
            cure: cureOf(drafts, overlap, print(overlap.by)),
          },
          { also: [{ at: a.at, label: "the other part" }] },
        ),
      ];
    }),
  );
}

/** Parts that no chain of joints ties to the largest group of joined parts. */
function floating({ parts, joints, stock }: Design): readonly Finding[] {
  const solid = new Set(stock.flatMap(({ name, movement }) => (movement ? [name] : [])));
  const groupOf = new Map(parts.map((part) => [part.id, part.id]));
  for (const {
    parts: [a, b],
  } of joints) {
    const [from, to] = [groupOf.get(a), groupOf.get(b)];
    for (const [id, group] of groupOf) if (group === from && to !== undefined) groupOf.set(id, to);
  }
  const sizes = new Map<string, Part[]>();
  for (const part of parts) {
    const group = groupOf.get(part.id) as string;
    sizes.set(group, [...(sizes.get(group) ?? []), part]);
  }
  const groups = [...sizes.values()];
  const main = groups.reduce<readonly Part[]>((best, group) => (group.length > best.length ? group : best), []);
  return groups
    .filter((group) => group !== main)
    .map((group) => {
      const first = group[0] as Part;
      const others = group.slice(1).map((part) => part.id);
      const mates = touching(group, parts);
      const wide = others.length === 0 && solid.has(first.stock) && less(WIDE, first.width);
      return partFloats(first.at, { name: first.id, others, touching: mates, wide });
    });
}

/** Boards wider than this work so much that what holds them lets them (common practice, no source). */
const WIDE = inches(6);

/** A part of a group and one that is not of it, which lie against each other with the largest face. */
function touching(group: readonly Part[], parts: readonly Part[]): readonly [string, string] | null {
  const rest = parts.filter((part) => !group.includes(part));
  const pairs = group.flatMap((a) =>
    rest.flatMap((b) => contact(a.solid, b.solid).map(({ area }) => ({ area, names: [a.id, b.id] as const }))),
  );
  return pairs.length === 0 ? null : pairs.reduce((best, each) => (each.area > best.area ? each : best)).names;
}

/** By how much the parts miss the outside that the maker gave. */
function misses({ parts, fittings, precision }: Design, outside: Box, draft: Draft, print: Print): readonly Finding[] {
  // What is square to the room fills its blank to the ends; of others only the solid tells.
  const slanted = ({ turned, features }: Part): boolean =>
    turned !== undefined || features.some(({ kind }) => kind === "angled end");
  const [first, ...rest] = parts.map((part) => (slanted(part) ? exactBounds(part.solid) : part.blank));
  if (!first) return [];
  const feet = fittings.flatMap(({ hardware }) => hardware.filter(({ item }) => ON_FLOOR.has(item.kind)));
  // Feet count in the height only: a foot that is broader than its leg does not make the piece wider.
  const floor = feet.map(({ solid }) => exactBounds(solid).low[2]).reduce(min, first.low[2]);
  const all = rest.reduce(enclosing, first);
  const bounds = { ...all, low: withAxis(all.low, 2, min(all.low[2], floor)) };
  return INDICES.flatMap((axis) =>
    (["low", "high"] as const).flatMap((side) => {
      const found = bounds[side][axis];
      const wanted = outside[side][axis];
      const off = subtract(found, wanted);
      // What rounding to the next mark leaves is not missing.
      if (less(absolute(off), precision)) return [];
      const size = [draft.outside.width, draft.outside.depth, draft.outside.height][axis];
      const short = side === "high" ? off.n < 0n : off.n > 0n;
      const by = print(absolute(off));
      return [
        outsideMissed(size?.at ?? draft.at, {
          face: faceOf(axis, side === "high"),
          direction: axisAt(axis),
          by,
          short,
        }),
      ];
    }),
  );
}
