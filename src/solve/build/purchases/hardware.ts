import type { Hardware } from "../../design.ts";
import { type Need, SINGLY } from "./need.ts";

/** Hardware by its name, halves of one piece counted once. */
export function hardwareNeeds(hardware: readonly Hardware[]): readonly Need[] {
  const whole = hardware.filter(({ halfOf }) => halfOf === undefined);
  const labels = [...new Set(whole.map(({ item }) => item.label))];
  return labels.map((label): Need => {
    const own = whole.filter(({ item }) => item.label === label);
    const price = own[0]?.item.price ?? null;
    return { section: "hardware", item: label, used: own.length, spare: 0, sold: SINGLY, price };
  });
}
