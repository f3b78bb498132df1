import { hardwareKind } from "../../../parse/hardware/index.ts";
import type { Hardware } from "../../design.ts";
import { type Need, SINGLY, type Sold } from "./need.ts";
import { type OwnScrews, ownScrews } from "./own-screws.ts";

const PAIRS: Sold = { unit: "pair", boxes: [], of: "pair" };

const TO_A_WALL: ReadonlySet<string> = new Set(["wall strap", "wall screw"]);

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
    const item = own[0]?.item;
    const thread = item?.measures.get("thread");
    const screwed = ownScrews(all, { used, unit: sold.unit }, screws);
    const notes = [
      ...screwed,
      // What is screwed on from behind is bought with its screw.
      ...(screwed.length === 0 && thread && item?.measures.has("screw") ? [`thread ${screws.print(thread)}`] : []),
      ...(item && TO_A_WALL.has(item.kind)
        ? ["for a wall of masonry buy plugs and screws that bear as much, and the masonry bit that these plugs name"]
        : []),
    ];
    return { section: "hardware", item: label, used, spare: 0, sold, price, ...(notes.length > 0 && { notes }) };
  });
}
