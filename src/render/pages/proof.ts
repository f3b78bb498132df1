import type { LayoutProof } from "../../solve/build.ts";

/** What is known of the count or the cost, and under which conditions. Claims no more than its bound. */
export function proofText({ optimal, count, countBound, cost, costBound, assumes }: LayoutProof): string {
  const given = assumes === "" ? "" : ` Reckoned for ${assumes}.`;
  if (count === 0) return `Nothing has to be bought.${given}`;
  if (optimal) return `${cost === undefined ? "Fewer will not do." : "Nothing cheaper will do."}${given}`;
  if (cost !== undefined && costBound !== undefined && cost > costBound)
    return `No way of cutting costs less than ${money(costBound)}; this one costs ${money(cost)}.${given}`;
  if (count > countBound)
    return `Fewer than ${countBound} cannot do; this layout takes ${count}, and none with fewer was found.${given}`;
  return `Choose the boards with this layout in hand.${given}`;
}

const money = (cents: number): string => (cents / 100).toFixed(2);
