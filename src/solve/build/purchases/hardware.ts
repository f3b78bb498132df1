import type { Purchase } from "../../build.ts";
import type { Hardware } from "../../design.ts";

/** Hardware by its name, halves of one piece counted once; and what is sold apart with it. */
export function hardwarePurchases(hardware: readonly Hardware[]): readonly Purchase[] {
  const whole = hardware.filter(({ halfOf }) => halfOf === undefined);
  const labels = [...new Set(whole.map(({ item }) => item.label))];
  const bought = labels.map((label): Purchase => {
    const own = whole.filter(({ item }) => item.label === label);
    const price = own[0]?.item.price ?? null;
    return line("hardware", label, own.length, price === null ? null : price * own.length);
  });
  const more = new Map<string, number>();
  for (const { with: items = [] } of whole) for (const item of items) more.set(item, (more.get(item) ?? 0) + 1);
  const sorted = [...more].toSorted(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return [...bought, ...sorted.map(([item, n]) => line("fasteners", item, n, null))];
}

const line = (section: Purchase["section"], item: string, quantity: number, price: number | null): Purchase => ({
  ...{ section, item, quantity, unit: "piece", price },
  ...{ onHand: 0, waste: 0 },
});
