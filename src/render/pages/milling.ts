/** What is sawn larger than it ends: as it comes from the saw, what it ends as, from which board, and in which steps. */
import type { Blank, Build, CutLine, Stock } from "../../solve/build.ts";
import { unplaned } from "../../solve/design/stock/label.ts";
import type { Length } from "../../units/index.ts";
import { TYPE } from "../style.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import { table } from "../typeset/table.ts";
import { body, capital, type Plan, type Printer, sectionHeading } from "./plan.ts";

const COLUMNS: readonly Column[] = [
  { head: "Mark", style: TYPE.mark },
  { head: "Pieces", align: "right" },
  { head: "As sawn" },
  { head: "Planed and cut to" },
  { head: "From", stretch: true },
  { head: "Steps" },
];

export function milling({ build, frame, printer }: Plan): Section | null {
  const { width } = frame;
  const stocks = build.design.stock.flatMap((stock) => {
    // What is glued up of sheets is not planed.
    if (stock.form === "sheet") return [];
    const rows = build.cutList.flatMap((line) =>
      boardsOf(build, line.stock) === stock.name ? (rowOf(build, line, printer) ?? []) : [],
    );
    return rows.length === 0 ? [] : [{ stock, rows }];
  });
  if (stocks.length === 0) return null;
  const short = stocks.map(({ stock }) => unplaned(bought(stock)));
  // Boards of one wood that are bought apart are told apart by what they are planed to, if that is one thickness.
  const named = (stock: Stock, i: number): string =>
    capital(
      short.filter((each) => each === short[i]).length > 1 && !isShared(build, stock.name)
        ? bought(stock)
        : (short[i] ?? ""),
    );
  return {
    ...{ name: "milling", title: "Milling", kind: "milling", start: "fits" },
    atoms: [
      ...sectionHeading("milling", "Milling", width),
      ...body(howTo(build), width, { keep: true }),
      ...table({
        columns: COLUMNS,
        rows: stocks.flatMap(({ stock, rows }, i) => [named(stock, i), ...rows]),
        width,
        above: 8,
      }),
    ],
  };
}

/** By what there is: pieces that are planed one by one, and boards that are glued up first. */
function howTo({ blanks }: Build): string {
  const has = (why: Blank["why"]): boolean => blanks.some((blank) => blank.why === why);
  return [
    ...(has("rough")
      ? [
          "For each: a face flat, the other parallel to it and a little over thickness, an edge straight and square, ripped a little over width. Rest it overnight with sticks between, then take it to thickness, width and length, in this order.",
        ]
      : []),
    ...(has("glue-up")
      ? [
          "Boards that are glued up keep some of their thickness, as their steps tell; what they make is planed when the glue is hard.",
        ]
      : []),
  ].join(" ");
}

const bought = ({ label, bought }: Stock): string =>
  bought && !label.includes(bought.words) ? `${label}, bought as ${bought.words}` : label;

const inSize = ({ thickness, width, length }: Record<"thickness" | "width" | "length", Length>, printer: Printer) =>
  [thickness, width, length].map(printer.exact).join(" × ");

/** Null where the saw leaves it as it ends. */
function rowOf(build: Build, line: CutLine, printer: Printer): readonly (readonly string[])[] | null {
  const own = build.blanks.filter(
    ({ part, alsoParts = [], why }) =>
      (why === "rough" || why === "glue-up") && [part, ...alsoParts].some((id) => line.parts.includes(id)),
  );
  const [first] = own;
  if (!first) return null;
  const sizes = [...new Set(own.map((blank) => inSize(blank, printer)))].join("; ");
  const jointed = first.jointed ? `, ${printer.exact(first.jointed)} wide when jointed` : "";
  const steps = build.steps.flatMap(({ number, kind, shows }) =>
    (kind === "mill" || (kind === "glue-up" && shows.travel.length === 0)) && shows.fresh.includes(line.parts[0] ?? "")
      ? [number]
      : [],
  );
  const later = build.later?.find(({ mark }) => mark === line.mark)?.steps.join(", ");
  return [
    [
      line.mark,
      String(own.length),
      sizes + jointed,
      `${inSize(line, printer)}${line.parts.length > 1 ? ` (${line.parts.length})` : ""}`,
      boards(build, own),
      `${steps.join(", ")}${later === undefined ? "" : `; to size in ${later}`}`,
    ],
  ];
}

/** The stock of which a stock is sawn from the boards: that under which they are laid out. */
const boardsOf = ({ layoutProof }: Build, name: string): string =>
  layoutProof.find(({ stocks }) => stocks.includes(name))?.stocks[0] ?? name;

const isShared = ({ layoutProof }: Build, name: string): boolean =>
  layoutProof.some(({ stocks }) => stocks[0] === name && stocks.length > 1);

/** "board 1 and 2": the layouts of the stock, counted as on the pages of layouts. */
function boards(build: Build, blanks: readonly Blank[]): string {
  const ids = new Set(blanks.map(({ id }) => id));
  const name = boardsOf(build, blanks[0]?.stock ?? "");
  const own = build.layouts.filter(({ stock }) => stock === name);
  const numbers = own.flatMap(({ placements }, i) => (placements.some(({ blank }) => ids.has(blank)) ? [i + 1] : []));
  return numbers.length === 0 ? "–" : `${numbers.length === 1 ? "board" : "boards"} ${numbers.join(", ")}`;
}
