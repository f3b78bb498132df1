import { add, compare, less, type Rational, ZERO } from "../../../units/rational.ts";
import type { Item } from "../../design.ts";
import { extent } from "../space.ts";
import type { FitterContext, FittingSite } from "./fitter.ts";
import { measureOf, withMeasure } from "./items.ts";

/** A knob or pull with the shortest screws sold that hold it on its wood, where the plan does not say their length; as it is where none does. */
export function withScrew({ item, part, through, axis }: FittingSite, context: FitterContext): Item {
  if (item.said.has("screw")) return item;
  const wood = [part, ...through].reduce((so: Rational, { body }) => add(so, extent(body, axis)), ZERO);
  const low = add(wood, measureOf(item, `into the ${item.kind}`));
  const high = add(wood, measureOf(item, `most into the ${item.kind}`));
  const found = item.lists.get("screws sold")?.find((each) => !less(each, low) && compare(each, high) <= 0);
  return found ? withMeasure(item, "screw", found, context.printItem) : item;
}
