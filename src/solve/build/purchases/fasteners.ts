/** Screws, dowels, nails and the like: counted, with a few over, in boxes of the usual size. */
import type { Length } from "../../../units/length.ts";
import type { Fastener, Hardware } from "../../design.ts";
import { pluralOf, series } from "../steps/draft.ts";
import { type Need, SINGLY, type Sold } from "./need.ts";

const box = (...boxes: number[]): Sold => ({ unit: "box", boxes, of: "piece" });
const pack = (...boxes: number[]): Sold => ({ unit: "pack", boxes, of: "piece" });

/** How many are in a box, by the first words of the item, and what share is spoilt. Common practice, no source. */
const USUAL: readonly { readonly begins: RegExp; readonly sold: Sold; readonly spare: number }[] = [
  { begins: /^(?:wood|pocket) screw|wood screw/u, sold: box(25, 50, 100, 200), spare: 0.1 },
  { begins: /^(?:finish(?:ing)? )?nail/u, sold: box(100, 500), spare: 0.1 },
  { begins: /^brad/u, sold: box(100, 1000), spare: 0.1 },
  { begins: /^staple/u, sold: box(1000, 5000), spare: 0.1 },
  { begins: /^dowel/u, sold: pack(25, 50, 100), spare: 0.05 },
  { begins: /^biscuit/u, sold: pack(50, 100), spare: 0.05 },
  { begins: /^wood plug/u, sold: pack(25, 50, 100), spare: 0.1 },
  { begins: /^shelf pin/u, sold: pack(4, 8, 16, 24, 48), spare: 0 },
  { begins: /^washer/u, sold: pack(10, 25, 100), spare: 0 },
];

/** They are made of what every piece leaves over, so that no wood is reckoned for them. */
const BUTTONS = "bought ready, or made of hardwood offcuts, as a step of their own tells";

/** Keys are in no shop: the step that lets them in tells how they are sawn from an offcut. */
const isMade = ({ kind }: Fastener): boolean => kind === "key";

/** By name; `print`: a thickness as it is told. Hardware brings what is sold apart with it. */
export function fastenerNeeds(
  fasteners: readonly Fastener[],
  hardware: readonly Hardware[],
  print: (length: Length) => string,
): readonly Need[] {
  const counts = new Map<string, number>();
  const whole = hardware.filter(({ halfOf }) => halfOf === undefined);
  const items = [
    ...fasteners.filter((each) => !isMade(each)).flatMap(({ item, with: more = [] }) => [item, ...more]),
    ...whole.flatMap((each) => each.with ?? []),
  ];
  for (const item of items) counts.set(item, (counts.get(item) ?? 0) + 1);
  return [...counts]
    .toSorted(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
    .map(([item, used]) => {
      const usual = USUAL.find(({ begins }) => begins.test(item));
      const spare = usual === undefined ? 0 : Math.ceil(used * usual.spare);
      const kinds = new Set(whole.flatMap((each) => (each.with?.includes(item) ? [each.item.kind] : [])));
      const elsewhere = fasteners.some((each) => each.item === item || each.with?.includes(item));
      const wire = fasteners.find((each) => each.item === item && (each.kind === "nail" || each.kind === "brad"))?.rod;
      const notes = [
        ...(wire ? [`about ${print(wire)} thick`] : []),
        ...(item.startsWith("wooden button") ? [BUTTONS] : []),
        ...(kinds.size > 0 ? [`${elsewhere ? "some " : ""}for the ${series([...kinds].map(pluralOf))}`] : []),
      ];
      const price = fasteners.find((each) => each.item === item)?.price ?? null;
      return { section: "fasteners", item, used, spare, sold: (price === null && usual?.sold) || SINGLY, price, notes };
    });
}
