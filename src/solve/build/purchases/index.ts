import type { Units } from "../../../parse/draft.ts";
import type { Layout, Purchase } from "../../build.ts";
import { isGluedUp } from "../../design/making/plain.ts";
import type { Fastener, Joint, Part, Stock } from "../../design.ts";
import { woodPurchases } from "./wood.ts";

/**
 * What to buy: sheets and boards as they are laid out, rough boards by volume, fasteners by the piece, glue where a joint or a
 * part is glued. In that order; stock in the order of the plan, fasteners by name. Sandpaper and finish are not worked out.
 */
export function purchases(
  stock: readonly Stock[],
  layouts: readonly Layout[],
  fasteners: readonly Fastener[],
  joints: readonly Joint[],
  units: Units = "inch",
  parts: readonly Part[] = [],
): readonly Purchase[] {
  const wood = stock.flatMap((each) => {
    const own = layouts.filter((layout) => layout.stock === each.name);
    return woodPurchases(each, own, units);
  });
  const sheets = wood.filter(({ section }) => section === "sheets");
  const boards = wood.filter(({ section }) => section !== "sheets");
  return [...sheets, ...boards, ...fastenerPurchases(fasteners), ...gluePurchase(joints, parts, fasteners)];
}

function fastenerPurchases(fasteners: readonly Fastener[]): readonly Purchase[] {
  const counts = new Map<string, number>();
  for (const { item, with: more = [] } of fasteners)
    for (const each of [item, ...more]) counts.set(each, (counts.get(each) ?? 0) + 1);
  return [...counts]
    .toSorted(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
    .map(([item, quantity]) => plain("fasteners", item, quantity, "piece"));
}

const gluePurchase = (
  joints: readonly Joint[],
  parts: readonly Part[],
  fasteners: readonly Fastener[],
): readonly Purchase[] =>
  joints.some((joint) => joint.glue) || parts.some(isGluedUp) || fasteners.some(({ head }) => head.seat === "plugged")
    ? [plain("supplies", "wood glue", 1, "bottle")]
    : [];

const plain = (section: Purchase["section"], item: string, quantity: number, unit: string): Purchase => ({
  section,
  item,
  quantity,
  unit,
  price: null,
  onHand: 0,
  waste: 0,
});
