/** Cutting layouts, their proof, and what to buy, as the record has them. */
import type { Layout, LayoutProof, Purchase, Rectangle } from "../../../solve/build.ts";
import type { Json } from "./json.ts";
import { millimetres } from "./number.ts";

const rectangle = ({ x, y, width, length }: Rectangle) => ({
  x: millimetres(x),
  y: millimetres(y),
  width: millimetres(width),
  length: millimetres(length),
});

export const layoutRecord = (layout: Layout): Json => ({
  stock: layout.stock,
  kind: layout.kind,
  source: layout.source,
  piece: layout.piece ?? null,
  price: layout.price === undefined ? null : layout.price / 100,
  thickness: millimetres(layout.thickness),
  width: millimetres(layout.width),
  length: millimetres(layout.length),
  kerf: millimetres(layout.kerf),
  squaring: millimetres(layout.squaring),
  placements: layout.placements.map((placement) => ({
    blank: placement.blank,
    mark: placement.mark,
    ...rectangle(placement),
    turned: placement.turned,
  })),
  cuts: layout.cuts.map((cut) => ({
    number: cut.number,
    kind: cut.kind,
    from: cut.from.map(millimetres),
    to: cut.to.map(millimetres),
    fence: millimetres(cut.fence),
  })),
  offcuts: layout.offcuts.map(rectangle),
});

export const proofRecord = (proof: LayoutProof): Json => ({
  stocks: proof.stocks,
  count: proof.count,
  countBound: proof.countBound,
  cost: proof.cost === undefined ? null : proof.cost / 100,
  costBound: proof.costBound === undefined ? null : proof.costBound / 100,
  optimal: proof.optimal,
  method: proof.method,
  assumes: proof.assumes,
});

export const purchaseRecord = (purchase: Purchase): Json => ({
  section: purchase.section,
  item: purchase.item,
  quantity: purchase.quantity,
  unit: purchase.unit,
  price: purchase.price,
  onHand: purchase.onHand,
  waste: purchase.waste,
  content: purchase.content ? { ...purchase.content } : null,
  note: purchase.note ?? "",
});
