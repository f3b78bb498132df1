import type { Units } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { equal, max } from "../../../units/rational.ts";
import type { StockMeasures } from "./evaluated.ts";
import { SOFTWOOD_LENGTHS } from "./lumber.ts";
import { ASSUMED_BOARD } from "./rough.ts";
import type { SoldAs } from "./sold-as.ts";

/** The boards that a stock is cut from. */
export interface Boards {
  /** Width of a part of it of which nothing else says how wide it is; null where every part says it. */
  readonly width: Length | null;
  readonly soldWidth: Length;
  readonly soldLengths: readonly Length[];
  readonly assumed: boolean;
}

/**
 * How wide and how long the boards of a stock are. What the maker wrote counts, then the catalogue; what neither says is
 * assumed: boards of random width are all as wide as the widest, and 8 ft long.
 */
export function resolveBoards(measures: StockMeasures, sold: SoldAs | null, softwood: boolean, units: Units): Boards {
  const { planedWide, wide, widths, soldIn } = measures;
  const catalogue = sold?.kind === "dressed" ? sold : null;
  const knownWidth = widths?.high ?? wide ?? catalogue?.width ?? null;
  const custom = ASSUMED_BOARD[units];
  const knownLengths = soldIn?.map(({ long }) => long) ?? (catalogue === null ? null : lengthsOf(catalogue.length));
  const random = catalogue === null && widths !== null && !equal(widths.low, widths.high);
  return {
    width: planedWide ?? (widths === null ? (wide ?? catalogue?.width ?? null) : null),
    soldWidth: knownWidth ?? max(custom.width, planedWide ?? custom.width),
    soldLengths: knownLengths ?? (softwood ? SOFTWOOD_LENGTHS[units] : [custom.length]),
    assumed: knownWidth === null || knownLengths === null || random,
  };
}

/** Nominal sizes are sold by the foot everywhere. */
const lengthsOf = (said: Length | null): readonly Length[] => (said === null ? SOFTWOOD_LENGTHS.inch : [said]);
