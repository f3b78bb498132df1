import type { Item } from "../item.ts";

/** A greedy rule: in which order blanks are placed, which free piece each one takes, and which cut comes first. */
export interface Rule {
  readonly order: Order;
  readonly fit: Fit;
  readonly split: Split;
}

/** Falling in this number. */
type Order = (item: Item) => number;
/** The smallest number wins; `over` and `beyond` are what is left of the piece over its width and along its length. */
type Fit = (over: number, beyond: number, width: number, length: number) => number;
/** True where the rip comes first. */
type Split = (over: number, beyond: number, width: number, length: number) => boolean;

const ORDERS: readonly Order[] = [
  ({ shapes: [s] }) => s.width * s.length,
  ({ shapes: [s] }) => Math.max(s.width, s.length),
  ({ shapes: [s] }) => Math.min(s.width, s.length),
  ({ shapes: [s] }) => s.width + s.length,
  ({ shapes: [s] }) => s.width,
  ({ shapes: [s] }) => s.length,
];

const FITS: readonly Fit[] = [
  (over, beyond, width, length) => (width + over) * (length + beyond) - width * length,
  (over, beyond) => Math.min(over, beyond),
  (over, beyond) => Math.max(over, beyond),
];

const SPLITS: readonly Split[] = [
  () => true,
  () => false,
  (over, beyond) => over > beyond,
  (over, beyond) => over <= beyond,
  (over, beyond, width, length) => over * length > width * beyond,
  (over, beyond, width, length) => over * length <= width * beyond,
];

/** Every combination, the plainest first. */
export const RULES: readonly Rule[] = SPLITS.flatMap((split) =>
  FITS.flatMap((fit) => ORDERS.map((order) => ({ order, fit, split }))),
);

/** The blanks in a rule's order; equal ones stay as they were. */
export const inOrder = (items: readonly Item[], order: Order): readonly Item[] => {
  const size = new Map(items.map((item) => [item, order(item)]));
  return items.toSorted((a, b) => (size.get(b) ?? 0) - (size.get(a) ?? 0));
};
