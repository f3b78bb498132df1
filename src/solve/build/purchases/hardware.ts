import { hardwareKind } from "../../../parse/hardware/index.ts";
import type { Hardware } from "../../design.ts";
import { type Need, SINGLY, type Sold } from "./need.ts";
import { type OwnScrews, ownScrews } from "./own-screws.ts";

const PAIRS: Sold = { unit: "pair", boxes: [], of: "pair" };

/** Hardware by its name, halves of one piece counted once, with what is said of their screws. */
export function hardwareNeeds(hardware: readonly Hardware[], screws: OwnScrews): readonly Need[] {
  const whole = hardware.filter(({ halfOf }) => halfOf === undefined);
  const labels = [...new Set(whole.map(({ item }) => item.label))];
  return labels.map((label): Need => {
    const own = whole.filter(({ item }) => item.label === label);
    const price = own[0]?.item.price ?? null;
    const paired = hardwareKind(own[0]?.item.kind ?? "")?.soldIn === "pair";
    const [sold, used] = paired ? [PAIRS, own.length / 2] : [SINGLY, own.length];
    const all = hardware.filter(({ item }) => item.label === label);
    const notes = ownScrews(all, { used, unit: sold.unit }, screws);
    return { section: "hardware", item: label, used, spare: 0, sold, price, ...(notes.length > 0 && { notes }) };
  });
}
