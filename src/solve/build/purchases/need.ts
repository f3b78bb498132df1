/** From what is used to what is bought: in whole boxes, less what lies in the workshop, at its price. */

import type { Purchase } from "../../build.ts";
import { underName } from "../../design/workshop.ts";
import type { Workshop } from "../../design.ts";

/** How a thing is sold: the sizes of its box, smallest first; empty: singly. `of` is what is counted in a box. */
export interface Sold {
  readonly unit: string;
  readonly boxes: readonly number[];
  readonly of: string;
}

export interface Need {
  readonly section: Purchase["section"];
  readonly item: string;
  /** In what `sold.of` says, or in `sold.unit` where it is sold singly. */
  readonly used: number;
  /** Wanted besides: what is dropped, split or bent. */
  readonly spare: number;
  readonly sold: Sold;
  readonly price: number | null;
  readonly notes?: readonly string[];
}

export const SINGLY: Sold = { unit: "piece", boxes: [], of: "piece" };

const HAIR = 1e-9;
const wholeUp = (value: number): number => (value <= HAIR ? 0 : Math.ceil(value - HAIR));

/** The one place where quantities are rounded up. */
export function bought(need: Need, workshop: Workshop | undefined): Purchase {
  const { section, item, used, spare, sold } = need;
  const wanted = used + spare;
  const there = (workshop && underName(workshop.supplies, item)) ?? 0;
  // Spare ones are no reason to go shopping when there are enough.
  const onHand = Math.min(there, wholeUp(used));
  const missing = there >= used ? 0 : wanted - onHand;
  const box = sold.boxes.find((count) => count >= missing - HAIR) ?? sold.boxes.at(-1) ?? 1;
  const quantity = wholeUp(missing / box);
  const each = (workshop && underName(workshop.prices, item)) ?? need.price;
  const boxed = sold.boxes.length > 0;
  const usedWords = `${amount(used)} ${used === 1 ? "is" : "are"} used`;
  const notes = [...(boxed && sold.of === "piece" ? [usedWords] : []), ...(need.notes ?? [])];
  return {
    section,
    item,
    quantity,
    unit: sold.unit,
    price: each === null ? null : inCents(each * quantity),
    onHand,
    waste: 0,
    ...(boxed && { content: { count: box, of: sold.of } }),
    ...(notes.length > 0 && { note: notes.join("; ") }),
  };
}

const amount = (value: number): string => String(Math.round(value * 10) / 10);

/** To a hundredth. */
export const inCents = (price: number): number => Math.round(100 * price) / 100;
