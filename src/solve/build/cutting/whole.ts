import { add, ceil, floor, type Length, multiply, rational, toNumber } from "../../../units/index.ts";
import type { Supply } from "./ask.ts";
import type { Item, Shape } from "./item.ts";
import type { BinType, Problem, Way } from "./search/problem.ts";
import type { Size } from "./sizes.ts";

/** Sizes in parts of 1/16 µm are exact up to this denominator; beyond it rooms are rounded down and parts up. */
const MOST_PARTS = 4096n;
/** Costs stay below this, so that sums of them are exact. */
const DEAREST = 1_000_000;

const divisor = (a: bigint, b: bigint): bigint => (b === 0n ? a : divisor(b, a % b));

/** The problem of laying items out, in whole numbers; ways are numbered as the shapes of items are. */
export function wholeProblem(
  items: readonly Item[],
  sizes: readonly Size[],
  kerf: Length,
  { carry, stages, alike }: { carry?: Supply["carry"]; stages: number; alike: boolean },
): Problem {
  const all = [
    kerf,
    ...items.flatMap(({ shapes: [s] }) => [s.across, s.along]),
    ...sizes.flatMap(({ usable }) => [usable.width, usable.length]),
  ];
  const common = all.reduce((so, { d }) => (so > MOST_PARTS ? so : (so * d) / divisor(so, d)), 1n);
  const unit = rational(common > MOST_PARTS ? 1n : common);
  const up = (size: Length): number => Number(ceil(multiply(size, unit)));
  const down = (size: Length): number => Number(floor(multiply(size, unit)));
  const bins = sizes.map(({ usable }) => ({
    width: down(add(usable.width, kerf)),
    length: down(add(usable.length, kerf)),
  }));
  const way = ({ across, along }: Shape): Way => ({ width: up(add(across, kerf)), length: up(add(along, kerf)) });
  const names = [...new Set(items.flatMap(({ blank }) => blank.alike ?? []))];
  const costs = costsOf(sizes);
  return {
    bins: bins.map((bin, i): BinType => {
      const { onHand } = sizes[i] ?? {};
      const cost = onHand === undefined ? (costs[i] ?? 0) : 0;
      return { ...bin, cost, most: onHand?.count ?? Number.POSITIVE_INFINITY, ...(onHand && { onHand: true }) };
    }),
    parts: items.map(({ blank, shapes }) => ({
      ways: shapes.map(way),
      ...(alike && blank.alike !== undefined && { group: names.indexOf(blank.alike) }),
    })),
    stages,
    ...(carry && { carry: { shorter: down(add(carry.shorter, kerf)), longer: down(add(carry.longer, kerf)) } }),
  };
}

/** Whether what is bought is compared by its price. */
export const arePriced = (sizes: readonly Size[]): boolean =>
  sizes.every(({ price, onHand }) => onHand !== undefined || price !== null);

/** Prices in cents where all are known, else areas, in whole numbers of a unit that divides them or is small beside them. */
function costsOf(sizes: readonly Size[]): readonly number[] {
  if (arePriced(sizes)) return sizes.map(({ price }) => price ?? 0);
  const areas = sizes.map(({ width, length, onHand }) => (onHand ? rational(0) : multiply(width, length)));
  const denominator = areas.reduce((so, { d }) => (so * d) / divisor(so, d), 1n);
  const whole = areas.map(({ n, d }) => (n * denominator) / d);
  const shared = whole.reduce(divisor, 0n);
  const small = whole.map((area) => Number(shared === 0n ? area : area / shared));
  const most = Math.max(...small);
  if (most <= DEAREST) return small;
  const numbers = areas.map(toNumber);
  return numbers.map((area) => Math.ceil((area / Math.max(...numbers)) * DEAREST));
}
