/** Finishing, by surface. */
import type { FinishRow } from "../../solve/build.ts";
import { TYPE } from "../style.ts";
import { list } from "../typeset/atom.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import { table } from "../typeset/table.ts";
import { body, capital, type Plan, sectionHeading, subheading } from "./plan.ts";

const SQUARE_FOOT = 0.3048 * 0.3048;
const COLUMNS: readonly Column[] = [
  { head: "Surface", stretch: true },
  { head: "Parts" },
  { head: "Sand" },
  { head: "Finish" },
  { head: "Coats", align: "right" },
  { head: "Between coats" },
  { head: "Area, about", align: "right" },
  { head: "Takes", align: "right" },
];

export function finishing({ build, frame, printer }: Plan): Section | null {
  const { finishSchedule: schedule } = build;
  if (schedule === undefined) return null;
  const { width } = frame;
  const inch = printer.unit === "in";
  const area = (m2: number): string =>
    inch ? `${Math.max(1, Math.round(m2 / SQUARE_FOOT))}\u202fsq\u202fft` : `${Math.max(0.1, m2).toFixed(1)}\u202fm²`;
  const row = (each: FinishRow): readonly string[] => [
    capital(each.surface),
    each.marks.length === build.cutList.length ? "all" : each.marks.join(", "),
    each.grits.join(", "),
    each.product,
    each.insideFaces ? `${each.coats}; inside\u00a0${each.inside}` : String(each.coats),
    each.coats === 1 ? "–" : between(each),
    area(each.area),
    each.amount,
  ];
  return {
    ...{ name: "finishing", title: "Finishing", kind: "finishing", start: "fits" },
    atoms: [
      ...sectionHeading("finishing", "Finishing", width),
      ...body("Where the label of the tin says otherwise, the label is right.", width, { keep: true }),
      ...table({ columns: COLUMNS, rows: schedule.rows.map(row), width, above: 8 }),
      ...subheading("In this order", width, 16),
      ...list(schedule.how, TYPE.body, width, { above: 4 }),
      ...(schedule.free.length === 0
        ? []
        : [
            ...subheading("Keep free of finish", width, 16),
            ...list(schedule.free.map(capital), TYPE.body, width, { above: 4 }),
          ]),
    ],
  };
}

const between = ({ recoat, between: grit }: FinishRow): string =>
  `wait ${recoat}\u202fh${grit === null ? "" : `, sand with ${grit}`}`;
