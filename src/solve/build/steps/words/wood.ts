import { unplaned } from "../../../design/stock/label.ts";
import type { Stock } from "../../../design.ts";
import type { Work } from "../draft.ts";

/** "white oak, 4/4": a stock in a title; with what it is planed to where the plan has the same rough wood for another thickness. */
export function woodOf({ design }: Pick<Work, "design">, { name, label }: Pick<Stock, "name" | "label">): string {
  const plain = (of: string): string => unplaned(of).replace(/ rough$/u, "");
  const twice = design.stock.some((other) => other.name !== name && plain(other.label) === plain(label));
  return twice ? label : plain(label);
}
