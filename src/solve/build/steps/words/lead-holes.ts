/** Holes that keep wood from splitting where nails and brads are driven with a hammer. */
import { inches, type Length, millimetres } from "../../../../units/length.ts";
import { absolute, less, min, multiply, rational, subtract } from "../../../../units/rational.ts";
import { drillFor } from "../../../design/boring/drills.ts";
import { indexOf } from "../../../design/space.ts";
import type { Fastener, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";

/**
 * A lead hole has at most 90 % of a nail's diameter in wood of a specific gravity over 0.6, 75 % in lighter wood: NDS 2018, 12.1.6.3, from memory.
 * Densities are those at 12 % of moisture: 0.6 × 1.12.
 */
const SHARES = { dense: rational(9, 10), light: rational(3, 4), from: 672 } as const;

/** Nearer to its end softwood splits too. Common practice, no source. */
const NEAR = { inch: inches(1), mm: millimetres(25) } as const;

/** What the point finds whole, so that it holds. Common practice, no source. */
const WHOLE = { inch: inches(1, 4), mm: millimetres(6) } as const;

export interface LeadHole {
  readonly diameter: Length;
  readonly depth: Length;
}

/** Of fasteners that are sold by the same words; null where the wood takes them as it is. */
export function leadHole(work: Work, list: readonly Fastener[]): LeadHole | null {
  const [first] = list;
  if (!first || (first.kind !== "nail" && first.kind !== "brad")) return null;
  if (!list.some((each) => splits(work, each))) return null;
  // One bit for all that is sold as one.
  const alike = work.plan.fasteners.filter(({ item }) => item === first.item);
  const lightest = Math.min(...alike.flatMap((each) => boardsOf(work, each)).map((part) => density(work, part)));
  const { units } = work.design;
  const share = lightest > SHARES.from ? SHARES.dense : SHARES.light;
  const diameter = drillFor(multiply(first.rod, share), "hold", units);
  return { diameter, depth: subtract(first.length, WHOLE[units]) };
}

const density = (work: Work, { stock }: Part): number => work.stock(stock).density;

const boardsOf = (work: Work, { through, into }: Fastener): readonly Part[] =>
  [...through, into].map(work.part).filter(({ stock }) => work.stock(stock).form === "board");

function splits(work: Work, fastener: Fastener): boolean {
  const near = NEAR[work.design.units];
  return boardsOf(work, fastener).some((part) => {
    if (!work.stock(part.stock).softwood) return true;
    const along = indexOf(part.axes.length);
    // What enters an end lies along the grain, and splits nothing off.
    if (fastener.direction[along] !== 0) return false;
    const at = fastener.head.at[along];
    return less(min(absolute(subtract(at, part.body.low[along])), absolute(subtract(part.body.high[along], at))), near);
  });
}

/** "Bore a 5/64 in lead hole 1 3/4 in deep for each nail first, or the wood splits." */
export function leadText(work: Work, list: readonly Fastener[]): readonly string[] {
  const hole = leadHole(work, list);
  if (!hole) return [];
  const { kind } = list[0] as Fastener;
  return [
    `For each ${kind} bore a lead hole first, ${work.drill(hole.diameter)} across and ${work.print(hole.depth)} deep, or the wood splits; try it in an offcut.`,
  ];
}

/** The bits for them. */
export const leadBits = (work: Work): readonly Length[] =>
  groupedBy(work.plan.fasteners, ({ item }) => item).flatMap((list) => leadHole(work, list)?.diameter ?? []);
