/** What to buy, with boxes to tick, and the tools. */
import type { Purchase } from "../../solve/build.ts";
import { TYPE } from "../style.ts";
import { list, paragraph, tickBox } from "../typeset/atom.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import type { Rich } from "../typeset/lines.ts";
import { table } from "../typeset/table.ts";
import { whatDecides } from "./hardware.ts";
import { body, capital, type Plan, sectionHeading } from "./plan.ts";

const SECTIONS: readonly (readonly [Purchase["section"], string])[] = [
  ["sheets", "Sheets"],
  ["lumber", "Lumber"],
  ["panes", "Glass"],
  ["hardware", "Hardware"],
  ["fasteners", "Screws and fasteners"],
  ["supplies", "Supplies"],
];

const COUNTED: ReadonlySet<string> = new Set([
  "piece",
  "board",
  "box",
  "sheet",
  "bottle",
  "can",
  "pack",
  "pair",
  "pane",
  "roll",
  "tube",
]);
/** "sheets", "box of 100", "8 oz bottles": what is counted stands last. */
export function unitOf({ unit, quantity, content }: Purchase): string {
  const many = COUNTED.has(unit.split(" ").at(-1) ?? "") && quantity !== 1;
  const plural = unit === "box" ? "boxes" : `${unit}s`;
  const counted = many ? plural : unit;
  if (content === undefined) return counted;
  const { count, of } = content;
  return `${counted} of ${number(count)}${of === "piece" ? "" : `\u202f${of === "feet" ? "ft" : of}`}`;
}
/** Up to three decimals, without trailing zeros. */
const number = (value: number): string => String(Math.round(value * 1000) / 1000);

/** The thing, and behind it what the reader should know when buying it. */
const what = ({ item, note }: Purchase): Rich =>
  note === undefined
    ? capital(item)
    : [
        { text: `${capital(item)}. `, font: "regular" },
        { text: `${capital(note)}.`, font: "italic" },
      ];

/** What is known of the whole cost: nothing, a part of it, or all. */
export function totalOf(purchases: readonly Purchase[]): string | null {
  const toBuy = purchases.filter(({ quantity }) => quantity > 0);
  const priced = toBuy.flatMap(({ price }) => price ?? []);
  if (priced.length === 0) return null;
  const sum = (Math.round(100 * priced.reduce((so, price) => so + price, 0)) / 100).toFixed(2);
  return priced.length === toBuy.length ? `Total ${sum}` : `What has a price comes to ${sum}; the rest is not known`;
}

const USED_UP =
  "What lies in the workshop is taken off already; look whether it is still there, and measure its thickness, before you go.";

export function whatToBuy({ build, frame }: Plan): Section | null {
  if (build.purchases.length === 0) return null;
  const { width } = frame;
  const total = totalOf(build.purchases);
  const onHand = build.purchases.some((p) => p.onHand > 0);
  const priced = build.purchases.some((p) => p.price !== null);
  const columns: Column[] = [
    { head: "", align: "tick" },
    { head: "Buy", align: "right", style: TYPE.strong },
    { head: "Unit" },
    { head: "What", stretch: true },
    ...(onHand ? [{ head: "Use up", align: "right" as const }] : []),
    ...(priced ? [{ head: "Price", align: "right" as const }] : []),
  ];
  const row = (p: Purchase): Rich[] => [
    "",
    p.quantity === 0 ? "–" : number(p.quantity),
    p.quantity === 0 ? "" : unitOf(p),
    what(p),
    ...(onHand ? [p.onHand > 0 ? number(p.onHand) : ""] : []),
    ...(priced ? [p.price === null ? "" : p.price.toFixed(2)] : []),
  ];
  const rows = SECTIONS.flatMap(([section, title]) => {
    const own = build.purchases.filter((p) => p.section === section).map(row);
    return own.length === 0 ? [] : [title, ...own];
  });
  return {
    name: "buy",
    title: "What to buy",
    kind: "buy",
    start: "fits",
    atoms: [
      ...sectionHeading("buy", "What to buy", width),
      ...(onHand ? body(USED_UP, width, { keep: true }) : []),
      ...table({ columns, rows, width, above: 4 }),
      ...(total === null ? [] : paragraph(`${total}.`, TYPE.strong, width, { above: 8 })),
      ...whatDecides(build, width),
    ],
  };
}

export function tools({ build, frame }: Plan): Section | null {
  if (build.tools.length === 0) return null;
  const items = build.tools.map(
    ({ tool, why }): Rich =>
      why === ""
        ? tool
        : [
            { text: tool, font: "bold" },
            { text: ` ${why}`, font: "regular" },
          ],
  );
  return {
    name: "tools",
    title: "Tools",
    kind: "tools",
    start: "fits",
    atoms: [
      ...sectionHeading("tools", "Tools", frame.width),
      ...list(items, TYPE.body, frame.width, { above: 8, sign: tickBox }),
    ],
  };
}
