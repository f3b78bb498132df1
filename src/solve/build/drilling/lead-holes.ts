/** Holes that keep wood from splitting where nails and brads are driven with a hammer. */
import type { Units } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { absolute, less, min, multiply, rational, subtract } from "../../../units/rational.ts";
import { drillFor } from "../../design/boring/drills.ts";
import { indexOf } from "../../design/space.ts";
import type { Design, Fastener, Part, Stock } from "../../design.ts";

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
  /** How deep it is when it is gone on with. */
  readonly whole: Length;
  /** The bit ends so far before the nail does that the wood may split there. */
  readonly short: boolean;
}

/** What is nailed: every fastener of the plan, and the wood that it goes through. */
export interface Nailed {
  readonly design: Pick<Design, "units">;
  readonly plan: { readonly fasteners: readonly Fastener[] };
  readonly part: (id: string) => Part;
  readonly stock: (name: string) => Stock;
}

/**
 * How deep a bit bores until its flutes are in the wood and chips stay in the hole, in sixteenths of an inch and mm: flutes of jobber drills up to
 * this diameter, in sixty-fourths of an inch (ASME B94.11M) and in mm (ISO 235, jobber series). From memory.
 */
const FLUTES: Readonly<Record<Units, readonly (readonly [diameter: Length, flute: Length])[]>> = {
  inch: (
    [
      [2, 8],
      [3, 12],
      [4, 14],
      [5, 16],
      [6, 20],
      [7, 24],
      [8, 26],
      [9, 28],
      [10, 32],
    ] as const
  ).map(([wide, long]) => [inches(wide, 64), inches(long, 16)]),
  mm: (
    [
      [8, 10],
      [10, 12],
      [12, 16],
      [15, 18],
      [20, 24],
      [25, 30],
      [30, 33],
      [40, 43],
    ] as const
  ).map(([wide, long]) => [millimetres(wide, 10), millimetres(long)]),
};

/** What a bit of a diameter bores at most; null where it bores deeper than any nail is long. */
const reachOf = (diameter: Length, units: Units): Length | null =>
  FLUTES[units].find(([most]) => !less(most, diameter))?.[1] ?? null;

/** Of fasteners that are sold by the same words and driven in one step; null where the wood takes them as it is. */
export function leadHole(nailed: Nailed, list: readonly Fastener[]): LeadHole | null {
  const [first] = list;
  if (!first || (first.kind !== "nail" && first.kind !== "brad")) return null;
  if (!list.some((each) => splits(nailed, each))) return null;
  // One bit for all that is sold as one.
  const alike = nailed.plan.fasteners.filter(({ item }) => item === first.item);
  const lightest = Math.min(
    ...alike.flatMap((each) => boardsOf(nailed, each)).map(({ stock }) => nailed.stock(stock).density),
  );
  const { units } = nailed.design;
  const share = lightest > SHARES.from ? SHARES.dense : SHARES.light;
  const diameter = drillFor(multiply(first.rod, share), "hold", units);
  const depth = subtract(first.length, WHOLE[units]);
  const reach = reachOf(diameter, units) ?? depth;
  return { diameter, depth: min(depth, reach), whole: depth, short: !less(subtract(depth, reach), WHOLE[units]) };
}

const boardsOf = ({ part, stock }: Nailed, { through, into }: Fastener): readonly Part[] =>
  [...through, into].map(part).filter((each) => stock(each.stock).form === "board");

function splits(nailed: Nailed, fastener: Fastener): boolean {
  const near = NEAR[nailed.design.units];
  return boardsOf(nailed, fastener).some((part) => {
    if (!nailed.stock(part.stock).softwood) return true;
    const along = indexOf(part.axes.length);
    // What enters an end lies along the grain, and splits nothing off.
    if (fastener.direction[along] !== 0) return false;
    const at = fastener.head.at[along];
    return less(min(absolute(subtract(at, part.body.low[along])), absolute(subtract(part.body.high[along], at))), near);
  });
}
