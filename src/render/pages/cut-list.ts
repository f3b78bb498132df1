/** The cut list, by stock. */

import { series } from "../../solve/build/steps/draft.ts";
import type { CutLine, LaterCut } from "../../solve/build.ts";
import { TYPE } from "../style.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import type { Rich } from "../typeset/lines.ts";
import type { FlowAtom } from "../typeset/sheet.ts";
import { table } from "../typeset/table.ts";
import { body, capital, type Plan, sectionHeading, subheading } from "./plan.ts";

const columns: readonly Column[] = [
  { head: "", align: "tick" },
  { head: "Mark", style: TYPE.mark },
  { head: "Number", align: "right", style: TYPE.mark },
  { head: "Part", style: TYPE.cell },
  { head: "Thickness", align: "length", style: TYPE.cell },
  { head: "Width", align: "length", style: TYPE.cell },
  { head: "Length", align: "length", style: TYPE.cell },
  { head: "Notes", stretch: true },
];

/** What can be cut at once, and in a second table what has to wait until the piece tells its size. */
export function cutList(plan: Plan): Section | null {
  const { build, frame, printer } = plan;
  if (build.cutList.length === 0) return null;
  const { width } = frame;
  const later = new Map((build.later ?? []).map((cut) => [cut.mark, cut]));
  const now = build.cutList.filter(({ mark }) => !later.has(mark));
  const tenons = build.parts.some((part) => part.features.some((feature) => feature.kind === "tenon"));
  const sentences = [
    `Finished sizes in ${printer.unit === "in" ? "inches" : "millimetres"}; the length runs along the grain.`,
    ...(tenons ? ["Tenons and tongues are included in the length."] : []),
  ];
  return {
    name: "cut-list",
    title: "Cut list",
    kind: "cut list",
    start: "fits",
    atoms: [
      ...sectionHeading("cut-list", "Cut list", width),
      ...body(sentences.join(" "), width, { keep: true }),
      ...(later.size > 0 && now.length > 0 ? subheading("Cut now", width) : []),
      ...table({ columns, rows: byStock(plan, now, (line) => row(plan, line)), width, above: 8 }),
      ...laterAtoms(plan, later),
    ],
  };
}

function row({ printer }: Plan, line: CutLine): Rich[] {
  const mirror = line.mirrorOf === null ? [] : [`mirror image of ${line.mirrorOf}`];
  const notes = [...mirror, ...line.notes].join("; ");
  const sizes = [line.thickness, line.width, line.length].map(printer.exact);
  return ["", line.mark, String(line.parts.length), line.name, ...sizes, notes];
}

/** What a reader buys by one name stands under one head, even where the plan has it in several entries. */
const byStock = ({ build }: Plan, lines: readonly CutLine[], make: (line: CutLine) => Rich[]): (Rich[] | string)[] => {
  const heads = new Map<string, Rich[][]>();
  for (const { name, label } of build.design.stock) {
    const own = lines.filter((line) => line.stock === name).map(make);
    if (own.length > 0) heads.set(label, [...(heads.get(label) ?? []), ...own]);
  }
  return [...heads].flatMap(([label, rows]) => [capital(label), ...rows]);
};

/** "in step 12", "in steps 12 and 14": those of one mark may be cut one after another, each to its own opening. */
const stepsIn = ({ steps }: LaterCut): string =>
  `in ${steps.length === 1 ? "step" : "steps"} ${series(steps.map(String))}`;

const laterColumns: readonly Column[] = [...columns.slice(0, -1), { head: "How", stretch: true }];

function laterAtoms(plan: Plan, later: ReadonlyMap<string, LaterCut>): FlowAtom[] {
  if (later.size === 0) return [];
  const { build, frame } = plan;
  const lines = build.cutList.filter(({ mark }) => later.has(mark));
  const how = (line: CutLine): Rich[] => {
    const cut = later.get(line.mark) as LaterCut;
    const notes = line.notes.length > 0 ? ` ${capital(line.notes.join("; "))}.` : "";
    const when = cut.ordered ? `Ordered ${stepsIn(cut)}, when its rabbets can be measured.` : `Cut ${stepsIn(cut)}.`;
    return [...row(plan, line).slice(0, -1), `${[when, ...cut.measure].join(" ")}${notes}`];
  };
  const text =
    "These are the sizes to expect. Until a step says otherwise leave the wood as large as the layouts have it, and measure when the parts around stand, in two places at least, of which the smallest counts: where to measure is told here or in the step.";
  return [
    ...subheading("Cut when the piece tells you", frame.width),
    ...body(text, frame.width, { keep: true }),
    ...table({ columns: laterColumns, rows: byStock(plan, lines, how), width: frame.width, above: 8 }),
  ];
}
