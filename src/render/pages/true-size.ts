/** What is drawn in its true size, below bars that tell whether the printer kept it. */
import { PRINT_BAR, printBar } from "../drawing/template/print-bar.ts";
import { moved } from "../shapes.ts";
import { TYPE } from "../style.ts";
import { type Atom, block, paragraph, type Wrap } from "../typeset/atom.ts";
import { paintStack, stack } from "../typeset/stack.ts";
import { type Cell, rows } from "./cells.ts";
import { type Plan, subheading } from "./plan.ts";

/** Height of the bar on each sheet. */
export const BAR = PRINT_BAR.height + 8;

/** Rows that take up no more than this share of a page stand on one, so that the bar is not there again for a single row. */
const LITTLE = 0.45;

/** Rows of cells; at the top of each sheet stands the bar. `use`: what is done with the paper; `besides`: what is said once of what is not drawn. */
export function trueSize(
  plan: Plan,
  title: string,
  use: string,
  cells: readonly Cell[],
  besides = "",
): readonly Atom[] {
  const { frame } = plan;
  const bar = barAtom(plan, use, besides);
  const wrap: Wrap = { role: "list", head: barAtom(plan, use) };
  const set = rows(cells, frame.width, [wrap]);
  const little = stack(set).height <= LITTLE * frame.height;
  return [
    ...subheading(title, frame.width, 12),
    { ...bar, within: [wrap], keep: true },
    ...set.map((row, i) => (little && i < set.length - 1 ? { ...row, keep: true } : row)),
  ];
}

/** So much of the words may stand in the space above the first row. */
const OVER = 9;

function barAtom({ frame, pen }: Plan, use: string, besides = ""): Atom {
  const drawn = printBar(pen);
  const text = stack(
    paragraph(
      `Print at 100 %, not fitted to the page. Measure these bars before you ${use}.${besides === "" ? "" : ` ${besides}`}`,
      TYPE.caption,
      frame.width - PRINT_BAR.width - 12,
    ),
  );
  return block(Math.max(BAR, text.height - OVER), (x, y) => [
    {
      kind: "group",
      role: "list item",
      items: [
        { kind: "group", role: "figure", alt: drawn.alt, items: moved(drawn.items, x, y) },
        ...paintStack(text, x + PRINT_BAR.width + 12, y),
      ],
    },
  ]);
}
