/** What to buy, with boxes to tick, and the tools. */
import type { Purchase } from "../../solve/build.ts";
import { TYPE } from "../style.ts";
import { list, tickBox } from "../typeset/atom.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import type { Rich } from "../typeset/lines.ts";
import { table } from "../typeset/table.ts";
import { capital, type Plan, sectionHeading } from "./plan.ts";

const SECTIONS: readonly (readonly [Purchase["section"], string])[] = [
  ["sheets", "Sheets"],
  ["lumber", "Lumber"],
  ["hardware", "Hardware"],
  ["fasteners", "Screws and fasteners"],
  ["supplies", "Supplies"],
];

const COUNTED: ReadonlySet<string> = new Set([
  "piece",
  "board",
  "sheet",
  "bottle",
  "can",
  "pack",
  "pair",
  "roll",
  "tube",
]);
const unitFor = (unit: string, quantity: number): string => (COUNTED.has(unit) && quantity !== 1 ? `${unit}s` : unit);
/** Up to two decimals, without trailing zeros. */
const number = (value: number): string => String(Math.round(value * 100) / 100);

export function whatToBuy({ build, frame }: Plan): Section | null {
  if (build.purchases.length === 0) return null;
  const { width } = frame;
  const onHand = build.purchases.some((p) => p.onHand > 0);
  const priced = build.purchases.some((p) => p.price !== null);
  const columns: Column[] = [
    { head: "", align: "tick" },
    { head: "Buy", align: "right", style: TYPE.strong },
    { head: "Unit" },
    { head: "What", stretch: true },
    ...(onHand ? [{ head: "On hand", align: "right" as const }] : []),
    ...(priced ? [{ head: "Price", align: "right" as const }] : []),
  ];
  const row = (p: Purchase): Rich[] => [
    "",
    number(p.quantity),
    unitFor(p.unit, p.quantity),
    capital(p.item),
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
    atoms: [...sectionHeading("buy", "What to buy", width), ...table({ columns, rows, width, above: 4 })],
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
