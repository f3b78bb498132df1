/** Cutting layouts: every sheet and board, with its cuts in order, and what is known of the count. */
import { enoughOf, sayEnough } from "../../solve/build/enough.ts";
import {
  cutsBeforeHome,
  marked,
  overSize,
  reservedOn,
  type SawnAlike,
  sawnAlike,
  yieldOf,
} from "../../solve/build/layout-facts.ts";
import type { Layout } from "../../solve/build.ts";
import { unplaned } from "../../solve/design/stock/label.ts";
import type { Stock } from "../../solve/design.ts";
import { type Length, ZERO } from "../../units/index.ts";
import { listed } from "../drawing/words.ts";
import { onceFor } from "../once.ts";
import { leaves } from "../shapes.ts";
import { TYPE } from "../style.ts";
import { baseline, block } from "../typeset/atom.ts";
import type { Section } from "../typeset/flow.ts";
import { label } from "../typeset/lines.ts";
import type { FlowAtom } from "../typeset/sheet.ts";
import { layoutPicture } from "./pictures.ts";
import { body, capital, type Plan, sectionHeading, subheading } from "./plan.ts";
import { proofText } from "./proof.ts";

export function layoutPages(plan: Plan): Section | null {
  const { build, frame, printer } = plan;
  if (build.layouts.length === 0) return null;
  const kerf = build.layouts[0]?.kerf ?? ZERO;
  const atoms = build.design.stock.flatMap((stock) => {
    const mine = build.layouts.filter((layout) => layout.stock === stock.name);
    return mine.length === 0 ? [] : stockAtoms(plan, stock, mine);
  });
  const intro = `Cut in the order of the numbers. Every saw cut takes ${printer.exact(kerf)}\u202f${printer.unit}; set fence or stop for each cut and do not measure on from the last. Lengths are drawn to scale; narrow boards, and those of narrow parts, are drawn wider than they are.`;
  return {
    name: "layouts",
    title: "Cutting layouts",
    kind: "layouts",
    start: "fits",
    atoms: [
      ...sectionHeading("layouts", "Cutting layouts", frame.width),
      ...body(intro, frame.width, { keep: true }),
      ...atoms,
    ],
  };
}

function stockAtoms(plan: Plan, stock: Stock, layouts: readonly Layout[]): FlowAtom[] {
  const { build, frame } = plan;
  const proofs = build.layoutProof.filter((proof) => proof.stocks.includes(stock.name));
  const share = `${Math.round(100 * yieldOf(layouts))}\u202f% of it ends in parts`;
  const sharers = build.design.stock.filter(({ name }) => proofs.some(({ stocks }) => stocks.includes(name)));
  const name = sharers.length > 1 ? unplaned(stock.label) : stock.label;
  const heads = subheading(`${capital(name)}: ${count(layouts)}, ${share}`, frame.width, 20);
  const sentences = [
    ...proofs.map(proofText),
    ...enoughText(plan, stock, layouts),
    ...sharersText(plan, sharers, layouts),
    ...sizesText(plan, layouts),
    ...homeText(plan, layouts),
  ];
  const lines = body(sentences.join(" "), frame.width, { keep: true, above: 0 });
  const groups = sawnAlike(layouts);
  return [...heads, ...lines, ...groups.map((group) => layoutAtom(plan, group))];
}

/** What a part of the last one does for. */
function enoughText({ build, printer }: Plan, stock: Stock, layouts: readonly Layout[]): readonly string[] {
  const enough = enoughOf(stock, layouts, build.jigs ?? [], build.design.units);
  const print = (length: Length): string => `${printer.exact(length)}\u202f${printer.unit}`;
  return enough === null ? [] : [`${capital(sayEnough(enough, layouts.length, print))}.`];
}

/** Boards that are planed to several thicknesses: which of what is sawn from them to which. */
function sharersText(
  { build, printer }: Plan,
  sharers: readonly Stock[],
  layouts: readonly Layout[],
): readonly string[] {
  if (sharers.length < 2) return [];
  const laid = new Set(layouts.flatMap(({ placements }) => placements.map(({ blank }) => blank)));
  const planed = new Map<string, Set<string>>();
  for (const { name, thickness } of sharers) {
    const own = build.blanks.filter(({ id, stock }) => stock === name && laid.has(id));
    const to = `${printer.exact(thickness)}\u202f${printer.unit}`;
    if (own.length > 0) planed.set(to, new Set([...(planed.get(to) ?? []), ...own.map(({ mark }) => mark)]));
  }
  const each = [...planed].map(([to, marks]) => `${listed([...marks])} to ${to}`);
  return [`From the same boards are planed: ${each.join("; ")}.`];
}

function count(layouts: readonly Layout[]): string {
  const word = layouts[0]?.kind === "sheet" ? "sheet" : "board";
  const had = layouts.filter(({ source }) => source === "on hand").length;
  const hand = had === 0 ? "" : had === layouts.length ? " on hand" : `, ${had} of them on hand`;
  return `${layouts.length} ${word}${layouts.length === 1 ? "" : "s"}${hand}`;
}

/** Which of the sizes drawn are not those of the finished parts. */
function sizesText({ build, printer }: Plan, layouts: readonly Layout[]): readonly string[] {
  const { rough, gluedUp, later } = overSize(layouts, build.blanks);
  const reserved = reservedOn(layouts, build).map(
    ({ mark, size, drawn, cut }) =>
      `${mark} ${printer.exact(cut)} ${size === "width" ? "wide" : "long"} instead of ${printer.exact(drawn)}`,
  );
  return [
    ...(reserved.length > 0
      ? [
          `Drawn with room for what thinner or thicker stock asks for. If yours is as thick as the plan is drawn for, set fence and stop to the cut list: ${reserved.join(", ")}.`,
        ]
      : []),
    ...(rough.length > 0 ? [`${listed(rough)}: rough sizes, planed and cut to length afterwards.`] : []),
    ...severalText(build, layouts),
    ...(gluedUp.length > 0 ? [`${listed(gluedUp)}: rough sizes of what is glued up first.`] : []),
    ...(later.length > 0 ? [`${listed(later)}, drawn with broken lines: left over size until the piece tells.`] : []),
  ];
}

/** What stands for several parts in one piece. */
function severalText({ blanks }: Plan["build"], layouts: readonly Layout[]): readonly string[] {
  const plain = new Set(blanks.map(({ mark }) => mark));
  const several = layouts.flatMap(({ placements }) => placements.map((each) => marked(each, blanks)));
  const names = [...new Set(several)].filter((name) => !plain.has(name)).sort();
  return names.length === 0
    ? []
    : [`${listed(names)}: so many in one piece, which is parted when it is planed; no cut of the layout does.`];
}

/** Where the sheets do not fit the car: which cuts to have made at the shop. */
function homeText({ build, printer }: Plan, layouts: readonly Layout[]): readonly string[] {
  const { carries } = build.design.workshop ?? {};
  const sheets = layouts.map((layout, i) => ({ layout, number: i + 1 }));
  const toBuy = sheets.filter(({ layout }) => layout.kind === "sheet" && layout.source === "buy");
  if (carries === undefined) return [];
  const size = `${printer.exact(carries.width)} × ${printer.exact(carries.length)}\u202f${printer.unit}`;
  return toBuy.flatMap(({ layout, number }) => {
    const first = cutsBeforeHome(layout, carries);
    if (first === 0) return [];
    if (first === null) return [`Sheet ${number} has pieces larger than the ${size} that can be brought home.`];
    const cuts = first === 1 ? "cut 1" : `cuts 1 to ${first}`;
    return [
      `To bring sheet ${number} home in pieces of ${size} at most, have it squared and ${cuts} made at the shop.`,
    ];
  });
}

/** A sheet that next to nothing is cut from is drawn so low that two go on a page; no board is drawn higher. */
const FEW = 5;
const [LOW, HIGH] = [0.36, 0.62];
const BOARD = 300;
/** Where its page would stay white a sheet is so many times as high at most. */
const MORE = 1.6;
const TITLE = 20;

function layoutAtom(plan: Plan, { layout, numbers }: SawnAlike): FlowAtom {
  const { frame, printer } = plan;
  const high = frame.height * (layout.placements.length <= FEW ? LOW : HIGH);
  const word = layout.kind === "sheet" ? "Sheet" : "Board";
  const which = numbers.length === 1 ? `${word} ${numbers[0]}` : `${word}s ${listed(numbers.map(String))}`;
  const have = layout.source === "on hand" ? ", on hand" : "";
  const size = `${printer.exact(layout.width)} × ${printer.exact(layout.length)}\u202f${printer.unit}`;
  const title = `${which}${have}`;
  const drawn = (height: number, close: boolean): LaidOut => {
    const picture = layoutPicture(plan, layout, { width: frame.width, height }, close);
    const atom = {
      ...block(
        TITLE + picture.height,
        (x, y) => [
          {
            kind: "group",
            role: "paragraph",
            items: [
              label(title, TYPE.strong, x, y + baseline(TYPE.strong)),
              label(size, TYPE.caption, x + frame.width, y + baseline(TYPE.strong), "right"),
            ],
          },
          picture.paint(x, y + TITLE),
        ],
        { above: 12 },
      ),
      of: layout.stock,
    };
    return { atom, listed: picture.listed };
  };
  const usual = drawn(layout.kind === "sheet" ? high : BOARD, false);
  const lower = onceFor((height: number) => {
    const low = drawn(height - TITLE, true);
    return low.listed > usual.listed || wordsIn(low.atom) < wordsIn(usual.atom) ? null : low.atom;
  });
  const higher = onceFor((height: number) => {
    const high = drawn(Math.min(height, MORE * usual.atom.height) - TITLE, false).atom;
    return high.height > usual.atom.height ? high : null;
  });
  return { ...usual.atom, lower, ...(layout.kind === "sheet" && { higher }) };
}

interface LaidOut {
  readonly atom: FlowAtom;
  /** So many sizes have no room in their parts. */
  readonly listed: number;
}

/** So many words and numbers stand in it: where a drawing is too low, parts lose their sizes. */
const wordsIn = ({ paint }: FlowAtom): number => leaves(paint(0, 0)).filter(({ kind }) => kind === "text").length;
