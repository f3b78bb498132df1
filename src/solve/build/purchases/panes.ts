import type { Length } from "../../../units/length.ts";
import type { CutLine, Purchase } from "../../build.ts";
import type { Stock } from "../../design.ts";
import { inCents } from "./need.ts";

/** Panes are bought cut to size: a line for each size, as the cut list has them. None for any other stock. */
export function panePurchases(
  { name, form, label, price }: Stock,
  cutList: readonly CutLine[],
  print: (length: Length) => string,
): readonly Purchase[] {
  const lines = form === "pane" ? cutList.filter(({ stock }) => stock === name) : [];
  return lines.map(({ mark, parts, width, length }) => ({
    section: "panes",
    item: `${label}, ${print(width)} × ${print(length)}`,
    quantity: parts.length,
    unit: "pane",
    price: price === null ? null : inCents(price * parts.length),
    onHand: 0,
    waste: 0,
    note: `${mark}: have ${parts.length === 1 ? "it" : "them"} cut to size and the edges seamed, but first measure the rabbets of the finished frame`,
  }));
}
