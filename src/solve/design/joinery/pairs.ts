import type { Finding } from "../../../findings/finding.ts";
import { jointDoesNotTouch } from "../../../findings/rules/joint-does-not-touch.ts";
import { jointWithItself } from "../../../findings/rules/joint-with-itself.ts";
import type { JointDraft, Reference } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { compare, max, ZERO } from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";
import type { Entry } from "../expand/entry.ts";
import { type AxisIndex, triple } from "../space.ts";
import { acrossGap, standsApart, type Touch, touchOf } from "./touch.ts";

/** Two parts that a joint entry puts together, and how their bodies meet. */
export interface Pair {
  readonly draft: JointDraft;
  readonly join: Entry;
  readonly to: Entry;
  readonly touch: Touch & { readonly kind: "faces" | "overlap" | "slanting" };
}

export interface PairContext {
  readonly directory: Directory;
  /** Null for a part that could not be placed. */
  readonly bodyOf: (entry: Entry) => Box | null;
  /** What rounding left open beside a part in a direction. */
  readonly leftOver: (entry: Entry, axis: AxisIndex) => Length;
  /** How two parts lie to each other that are not square to one another; null for those that are. */
  readonly slanting: (a: Entry, b: Entry) => Touch | null;
  /** Whether a part lies on pins, or is fixed to nothing but such parts. */
  readonly loose: (id: string) => boolean;
  readonly report: (finding: Finding) => void;
  readonly print: (length: Length) => string;
}

/** Every pair of a joint entry that meets. Each part named must meet at least one of the other side, of a group at least one part. */
export function pairsOf(draft: JointDraft, context: PairContext): readonly Pair[] {
  const side = (names: readonly Reference[]): Side => names.map((name) => ({ name, entries: fixedOf(name, context) }));
  const [joined, mates] = [side(draft.join), side(draft.to)];
  const all = (side: Side): readonly Entry[] => [...new Set(side.flatMap(({ entries }) => entries ?? []))];
  const meeting = all(joined).flatMap((join) => all(mates).flatMap((to) => meet(draft, join, to, context)));
  // Boards of one name that are joined to each other meet once, the earlier of two as `join`.
  const pairs = meeting.filter(({ join, to }, i) => !meeting.slice(0, i).some((p) => p.join === to && p.to === join));
  if ([...joined, ...mates].some(({ entries }) => entries === null)) return pairs;
  reportLonely(
    draft,
    joined,
    all(mates),
    pairs.map((p) => p.join),
    context,
  );
  // Where nothing meets at all, one side of the story is enough.
  if (pairs.length > 0)
    reportLonely(
      draft,
      mates,
      all(joined),
      pairs.map((p) => p.to),
      context,
    );
  return pairs;
}

/** A group is joined by what is fixed in it: what lies loose is named by itself. */
function fixedOf(name: Reference, { directory, loose }: PairContext): readonly Entry[] | null {
  const entries = directory.find(name);
  const fixed = entries?.filter(({ id }) => !loose(id)) ?? [];
  return fixed.length > 0 && isGroup(name, entries ?? [], false) ? fixed : entries;
}

type Side = readonly { readonly name: Reference; readonly entries: readonly Entry[] | null }[];

function meet(draft: JointDraft, join: Entry, to: Entry, context: PairContext): readonly Pair[] {
  if (join === to) return [];
  const [a, b] = [context.bodyOf(join), context.bodyOf(to)];
  if (!a || !b) return [];
  const leftOpen = triple((axis) => max(context.leftOver(join, axis), context.leftOver(to, axis)));
  const touch = standsApart(draft.with.value)
    ? acrossGap(a, b)
    : (context.slanting(join, to) ?? touchOf(a, b, leftOpen));
  return touch.kind === "faces" || touch.kind === "overlap" || touch.kind === "slanting"
    ? [{ draft, join, to, touch }]
    : [];
}

/** Tells of each part named on a side that meets nothing on the other, with the distance to what is nearest. */
function reportLonely(
  draft: JointDraft,
  side: Side,
  others: readonly Entry[],
  met: readonly Entry[],
  context: PairContext,
): void {
  for (const { name, entries } of side) {
    if (isGroup(name, entries ?? [], draft.with.value === "loose") && entries?.some((entry) => met.includes(entry)))
      continue;
    for (const entry of entries ?? []) {
      if (met.includes(entry)) continue;
      const body = context.bodyOf(entry);
      const rest = others.filter((other) => other !== entry);
      if (rest.length === 0) {
        context.report(jointWithItself(name.at, { name: entry.id }));
        continue;
      }
      const near = rest
        .flatMap((other) => {
          const box = context.bodyOf(other);
          const touch = context.slanting(entry, other) ?? (body && box && touchOf(body, box));
          return touch ? [{ other, touch }] : [];
        })
        .reduce<{ other: Entry; by: Length } | null>((best, { other, touch }) => {
          const by = touch.kind === "apart" ? touch.by : ZERO;
          return best && compare(best.by, by) <= 0 ? best : { other, by };
        }, null);
      if (near)
        context.report(
          jointDoesNotTouch(
            name.at,
            {
              join: entry.id,
              to: near.other.id,
              apart: compare(near.by, ZERO) > 0 ? context.print(near.by) : null,
              made: draft.made === true,
            },
            { also: name.at.start === draft.at.start ? [] : [{ at: draft.at, label: "in this joint" }] },
          ),
        );
    }
  }
}

/** A group meets something where one of its parts does; of a row of copies each has to, unless what stands there is loose. */
const isGroup = (name: Reference, entries: readonly Entry[], loose: boolean): boolean =>
  loose ||
  (entries.length > 1 && !entries.every(({ copy, path }) => copy !== null && path.at(-2) === name.path.at(-1)));
