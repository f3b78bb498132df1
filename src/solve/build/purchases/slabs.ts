/** The boards of edge-glued slabs and wide boards, as they are chosen at the yard. */
import { inches, type Length } from "../../../units/length.ts";
import { compare, less } from "../../../units/rational.ts";
import type { Blank, CutLine } from "../../build.ts";
import { makingOf } from "../../design/making/plain.ts";
import type { Part, Stock } from "../../design.ts";

/** A sentence for each slab that is glued up from a stock: how many boards, how wide and long, and how they lie. */
export function slabNotes(
  stock: Stock,
  lines: readonly CutLine[],
  { part, blanks, print }: { part: (id: string) => Part; blanks: readonly Blank[]; print: (length: Length) => string },
): readonly string[] {
  return lines.flatMap((line) => {
    const [first] = line.parts as [string, ...string[]];
    const { boards } = makingOf(part(first));
    const blank = blanks.find((each) => each.part === first);
    if (line.stock !== stock.name || boards < 2 || blank?.jointed === undefined) return [];
    const copies = line.parts.length;
    const many =
      copies === 1 ? `for ${line.mark}, ${boards} boards` : `for each of ${copies} ${line.mark}, ${boards} boards`;
    return [
      `${many} at least ${print(blank.width)} wide and ${print(blank.length)} long, ${print(blank.jointed)} wide when their edges are jointed`,
    ];
  });
}

/** Rough boards of random widths are seldom wider. Common practice, no source. */
const SELDOM_WIDER = inches(12);

/** What is sawn in one width from a board that few yards have. */
export function wideNotes(
  stock: Stock,
  { blanks, print }: { blanks: readonly Blank[]; print: (length: Length) => string },
): readonly string[] {
  if (stock.form !== "board" || stock.roughThickness === null) return [];
  const wide = blanks.filter(({ stock: name, width }) => name === stock.name && less(SELDOM_WIDER, width));
  const [widest] = wide.toSorted((a, b) => compare(b.width, a.width));
  if (!widest) return [];
  const marks = [...new Set(wide.map(({ mark }) => mark))];
  return [
    `${marks.join(", ")} ${marks.length === 1 ? "asks" : "ask"} for boards up to ${print(widest.width)} wide, and few are wider than ${print(SELDOM_WIDER)}: look for ${marks.length === 1 ? "it" : "them"} first, or glue up from narrower ones, with 1/4 in (6 mm) more in the width for each joint`,
  ];
}
