/** Cutting layouts: every sheet and board, with its cuts in order, and what is known of the count. */
import type { Layout, LayoutProof } from "../../solve/build.ts";
import type { Stock } from "../../solve/design.ts";
import { type Length, ZERO } from "../../units/index.ts";
import { listed } from "../drawing/words.ts";
import { TYPE } from "../style.ts";
import { type Atom, baseline, block } from "../typeset/atom.ts";
import type { FlowAtom, Section } from "../typeset/flow.ts";
import { label } from "../typeset/lines.ts";
import { layoutPicture } from "./pictures.ts";
import { body, capital, type Plan, sectionHeading, subheading } from "./plan.ts";

export function layoutPages(plan: Plan): Section | null {
  const { build, frame, printer } = plan;
  if (build.layouts.length === 0) return null;
  const kerf = build.layouts[0]?.kerf ?? ZERO;
  const atoms = build.design.stock.flatMap((stock) => {
    const mine = build.layouts.filter((layout) => layout.stock === stock.name);
    return mine.length === 0 ? [] : stockAtoms(plan, stock, mine);
  });
  const intro = `Cut in the order of the numbers. Every saw cut takes ${printer.exact(kerf)}\u202f${printer.unit}; set fence or stop for each cut and do not measure on from the last. Lengths are drawn to scale; narrow boards are drawn wider than they are.`;
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
  const heads = subheading(`${capital(stock.label)}: ${count(layouts)}`, frame.width, 20);
  const lines = proofs.flatMap((proof) => body(proofText(proof), frame.width, { keep: true, above: 0 }));
  const groups = alike(layouts);
  return [...heads, ...lines, ...groups.map((group) => ({ ...layoutAtom(plan, group), of: stock.name }))];
}

function count(layouts: readonly Layout[]): string {
  const word = layouts[0]?.kind === "sheet" ? "sheet" : "board";
  return `${layouts.length} ${word}${layouts.length === 1 ? "" : "s"}`;
}

/** What is known of the count, and under which conditions. */
export function proofText({ optimal, count: used, countBound: bound, assumes }: LayoutProof): string {
  const given = assumes === "" ? "" : ` Reckoned for ${assumes}.`;
  if (optimal) return `Fewer will not do.${given}`;
  if (used > bound) return `No layout does with fewer than ${bound}; this one takes ${used}.${given}`;
  return `Choose the boards with this layout in hand.${given}`;
}

/** Layouts that are sawn the same way, with how many there are. */
function alike(layouts: readonly Layout[]): { layout: Layout; numbers: number[] }[] {
  const groups: { key: string; layout: Layout; numbers: number[] }[] = [];
  layouts.forEach((layout, i) => {
    const key = layoutKey(layout);
    const group = groups.find((g) => g.key === key);
    if (group === undefined) groups.push({ key, layout, numbers: [i + 1] });
    else group.numbers.push(i + 1);
  });
  return groups;
}

const exact = (length: Length): string => `${length.n}/${length.d}`;
const layoutKey = ({ source, width, length, placements, cuts }: Layout): string =>
  [
    source,
    exact(width),
    exact(length),
    ...placements.map((p) => [p.mark, exact(p.x), exact(p.y), exact(p.width), exact(p.length), p.turned].join()),
    ...cuts.map((c) => [c.number, c.kind, ...c.from.map(exact), ...c.to.map(exact)].join()),
  ].join(";");

function layoutAtom(plan: Plan, { layout, numbers }: { layout: Layout; numbers: readonly number[] }): Atom {
  const { frame, printer } = plan;
  const high = layout.kind === "sheet" ? frame.height * 0.62 : 260;
  const picture = layoutPicture(plan, layout, { width: frame.width, height: high });
  const word = layout.kind === "sheet" ? "Sheet" : "Board";
  const which = numbers.length === 1 ? `${word} ${numbers[0]}` : `${word}s ${listed(numbers.map(String))}`;
  const have = layout.source === "on hand" ? ", on hand" : "";
  const size = `${printer.exact(layout.width)} × ${printer.exact(layout.length)}\u202f${printer.unit}`;
  const title = `${which}${have}`;
  return block(
    20 + picture.height,
    (x, y) => [
      {
        kind: "group",
        role: "paragraph",
        items: [
          label(title, TYPE.strong, x, y + baseline(TYPE.strong)),
          label(size, TYPE.caption, x + frame.width, y + baseline(TYPE.strong), "right"),
        ],
      },
      picture.paint(x, y + 20),
    ],
    { above: 12 },
  );
}
