/** The cut list, by stock. */
import type { CutLine } from "../../solve/build.ts";
import { TYPE } from "../style.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import type { Rich } from "../typeset/lines.ts";
import { table } from "../typeset/table.ts";
import { body, capital, type Plan, sectionHeading } from "./plan.ts";

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

export function cutList({ build, frame, printer }: Plan): Section | null {
  if (build.cutList.length === 0) return null;
  const { width } = frame;
  const row = (line: CutLine): Rich[] => {
    const mirror = line.mirrorOf === null ? [] : [`mirror image of ${line.mirrorOf}`];
    const notes = [...mirror, ...line.notes].join("; ");
    const sizes = [line.thickness, line.width, line.length].map(printer.exact);
    return ["", line.mark, String(line.parts.length), line.name, ...sizes, notes];
  };
  const tenons = build.parts.some((part) => part.features.some((feature) => feature.kind === "tenon"));
  const sentences = [
    `Finished sizes in ${printer.unit === "in" ? "inches" : "millimetres"}; the length runs along the grain.`,
    ...(tenons ? ["Tenons and tongues are included in the length."] : []),
  ];
  const rows = build.design.stock.flatMap((stock) => {
    const own = build.cutList.filter((line) => line.stock === stock.name).map(row);
    return own.length === 0 ? [] : [capital(stock.label), ...own];
  });
  return {
    name: "cut-list",
    title: "Cut list",
    kind: "cut list",
    start: "fits",
    atoms: [
      ...sectionHeading("cut-list", "Cut list", width),
      ...body(sentences.join(" "), width, { keep: true }),
      ...table({ columns, rows, width, above: 8 }),
    ],
  };
}
