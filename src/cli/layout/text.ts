/** Layouts, their proof and what is bought, for a terminal. */
import { escapeText, type Palette } from "../../findings/print/index.ts";
import { wrap } from "../../findings/print/width.ts";
import { totalOf, unitOf } from "../../render/pages/buy.ts";
import { proofText } from "../../render/pages/proof.ts";
import {
  cutsBeforeHome,
  marked,
  overSize,
  type SawnAlike,
  sawnAlike,
  settingsOf,
  yieldOf,
} from "../../solve/build/layout-facts.ts";
import type { Build, Layout, Purchase } from "../../solve/build.ts";
import { unplaned } from "../../solve/design/stock/label.ts";
import type { Stock } from "../../solve/design.ts";
import { type Length, printLength } from "../../units/index.ts";
import { picture } from "./picture.ts";

export interface Look {
  readonly width: number;
  readonly palette: Palette;
}

export function layoutText(build: Build, look: Look): string {
  const { units, precision } = build.design;
  // Blanks that stay together when lines are broken.
  const say = (length: Length): string => printLength(length, { units, precision }).text.replaceAll(" ", "\u00a0");
  const unit = build.design.units === "inch" ? "in" : "mm";
  const blocks = build.design.stock.flatMap((stock) => {
    const own = build.layouts.filter((layout) => layout.stock === stock.name);
    return own.length === 0 ? [] : [stockText(build, stock, own, { ...look, say, unit })];
  });
  return [...blocks, shoppingText(build.purchases, look)].join("\n");
}

interface Words extends Look {
  readonly say: (length: Length) => string;
  readonly unit: string;
}

function stockText(build: Build, stock: Stock, layouts: readonly Layout[], words: Words): string {
  const { width, palette } = words;
  const word = stock.form === "sheet" ? "sheet" : "board";
  const count = `${layouts.length} ${word}${layouts.length === 1 ? "" : "s"}`;
  const name = build.layoutProof.some(({ stocks }) => stocks.length > 1 && stocks.includes(stock.name))
    ? unplaned(stock.label)
    : stock.label;
  const head = `${plain(name)}: ${count}, ${Math.round(100 * yieldOf(layouts))} % of it ends in parts`;
  const proofs = build.layoutProof.filter(({ stocks }) => stocks.includes(stock.name)).map(proofText);
  const text = wrap(plain([...proofs, ...sizes(build, layouts)].join(" ")), width - 2).map((line) => `  ${line}`);
  const drawn = sawnAlike(layouts).map((group) => layoutBlock(build, group, words));
  return [...wrap(head, width).map((line) => palette.file(line)), ...text, "", ...drawn].join("\n");
}

function sizes(build: Build, layouts: readonly Layout[]): readonly string[] {
  const { rough, gluedUp, later } = overSize(layouts, build.blanks);
  const said = (marks: readonly string[], words: string) =>
    marks.length > 0 ? [`${marks.join(", ")}: ${words}.`] : [];
  return [
    ...said(rough, "rough sizes, planed and cut to length afterwards"),
    ...said(gluedUp, "rough sizes of what is glued up first"),
    ...said(later, "left over size until the piece tells"),
  ];
}

function layoutBlock(build: Build, { layout, numbers }: SawnAlike, words: Words): string {
  const { width, palette, say, unit } = words;
  const which = layout.kind === "sheet" ? "Sheet" : "Board";
  const hand = layout.source === "on hand" ? ", on hand" : "";
  const many = numbers.length === 1 ? "" : "s";
  const title = `  ${which}${many} ${numbers.join(", ")}${hand}: ${say(layout.width)} × ${say(layout.length)} ${unit}`;
  const drawing = picture(layout, width - 4).map(({ text, marks }) => {
    const coloured = marks.reduceRight(
      (line, [from, to]) => line.slice(0, from) + palette.file(line.slice(from, to)) + line.slice(to),
      text,
    );
    return `    ${coloured}`;
  });
  return [plain(title), ...drawing, ...lists(build, layout, words).map((line) => `    ${line}`), ""].join("\n");
}

function lists(build: Build, layout: Layout, { width, say, unit }: Words): readonly string[] {
  const counts = new Map<string, number>();
  for (const placement of layout.placements) {
    const { width: wide, length } = placement;
    const text = `${marked(placement, build.blanks)} ${say(wide)} × ${say(length)}`;
    counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  const parts = [...counts].map(([text, n]) => (n === 1 ? text : `${n} × ${text}`));
  const cuts = settingsOf(layout).map(({ kind, fence, cuts: run }) => {
    const [first, last] = [run[0]?.number, run.at(-1)?.number];
    return `${first === last ? first : `${first}-${last}`} ${kind} ${say(fence)}`;
  });
  const keep = layout.offcuts.map(({ width: wide, length }) => `${say(wide)} × ${say(length)}`);
  const lines = [
    `Parts: ${parts.join("; ")}`,
    ...(cuts.length > 0 ? [`Cuts: ${cuts.join("; ")}`] : []),
    ...(keep.length > 0 ? [`Worth keeping: ${keep.join("; ")}`] : []),
    ...home(build, layout, (length) => `${say(length)} ${unit}`),
  ];
  return lines.flatMap((line) => wrap(line, width - 4, "  ").map(plain));
}

function home(build: Build, layout: Layout, say: (length: Length) => string): readonly string[] {
  const { carries } = build.design.workshop ?? {};
  if (carries === undefined || layout.kind !== "sheet" || layout.source !== "buy") return [];
  const first = cutsBeforeHome(layout, carries);
  const most = `${say(carries.width)} × ${say(carries.length)}`;
  if (first === null) return [`Some pieces are larger than ${most}, which is what can be brought home`];
  return first === 0
    ? []
    : [
        `To bring it home in pieces of ${most} at most: have it squared and ${first === 1 ? "cut 1" : `cuts 1 to ${first}`} made at the shop`,
      ];
}

function shoppingText(purchases: readonly Purchase[], { width, palette }: Look): string {
  const rows = purchases.map((each) => {
    const price = each.price === null ? "" : `  ${each.price.toFixed(2)}`;
    if (each.quantity === 0) return `nothing, ${each.onHand} on hand: ${each.item}`;
    const hand = each.onHand > 0 ? ` (and ${each.onHand} on hand)` : "";
    const unit = unitOf(each);
    return `${each.quantity} ${/^\d/.test(unit) ? "× " : ""}${unit}${hand}: ${each.item}${price}`;
  });
  const total = totalOf(purchases);
  const lines = [...rows, ...(total === null ? [] : [total])];
  const indented = lines.flatMap((line) => wrap(plain(line), width - 2, "  ")).map((line) => `  ${line}`);
  return [palette.file("To buy"), ...indented, ""].join("\n");
}

/** Narrow blanks and fraction signs of the printed plan as a terminal has them; nothing that would steer it. */
const plain = (text: string): string => escapeText(text.replace(/[\u202f\u00a0]/gu, " ").replaceAll("⁄", "/"));
