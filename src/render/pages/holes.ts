/** Every hole by the drill that bores it, and every fastener by length; what is set by the paper stands last, before the patterns. */

import { boredIntoStuds, studPilot } from "../../solve/build/steps/words/fitted.ts";
import type { Build, DrillRow, FastenerRow, Hole } from "../../solve/build.ts";
import { sayDrill } from "../../solve/design/boring/drills.ts";
import type { Design } from "../../solve/design.ts";
import { TYPE } from "../style.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import type { Rich } from "../typeset/lines.ts";
import { table } from "../typeset/table.ts";
import { body, capital, type Plan, type Printer, sectionHeading, subheading } from "./plan.ts";
import { stopsInTrueSize } from "./stops.ts";

const HOLES: readonly Column[] = [
  { head: "Drill", style: TYPE.strong },
  { head: "Number", align: "right" },
  { head: "Hole", stretch: true },
  { head: "Stop at" },
  { head: "Into" },
  { head: "When" },
];
const FASTENERS: readonly Column[] = [
  { head: "Number", align: "right", style: TYPE.strong },
  { head: "Fastener" },
  { head: "Through → into", stretch: true },
  { head: "Step" },
];

export function holesAndScrews(plan: Plan): Section | null {
  const { build, frame, printer } = plan;
  const { width } = frame;
  const { drilling, fastenerTable } = build;
  if (drilling.length === 0 && fastenerTable.length === 0) return null;
  const rows = drilling.map((row) => holeRow(row, build.design, printer));
  const holes = table({ columns: HOLES, rows, width, above: 4 });
  const screws = table({
    columns: FASTENERS,
    rows: fastenerTable.map((row) => fastenerRow(row, printer)),
    width,
    above: 4,
  });
  return {
    name: "holes",
    title: "Holes and fasteners",
    kind: "holes",
    start: "fits",
    atoms: [
      ...sectionHeading("holes", "Holes and fasteners", width),
      ...(holes.length === 0
        ? []
        : [
            ...subheading("Holes", width, 8),
            ...body(introduction(drilling, printer, build), width, { keep: true, above: 0 }),
            ...holes,
          ]),
      ...(screws.length === 0 ? [] : [...subheading("Fasteners", width), ...screws]),
      ...stopsInTrueSize(plan),
    ],
  };
}

/** How the table is read: what is not in it is not explained. */
function introduction(rows: readonly DrillRow[], { unit }: Printer, { hardware, design }: Build): string {
  const wallPilot = hardware.some(({ item }) => boredIntoStuds(item.kind, design)) ? studPilot(design.units) : null;
  const ahead = rows.some(({ when }) => when === "on the bench");
  const has = (some: (row: DrillRow) => boolean, text: string): readonly string[] => (rows.some(some) ? [text] : []);
  return [
    `Sorted by drill; stops in ${unit === "in" ? "inches" : "millimetres"}, from the surface that the bit goes in by.`,
    ...(rows.some(({ when }) => when === "in place")
      ? [
          "Bored before assembly, but for what is said to be bored in place: through the holes that are there already, and the stop is set for the wood of both.",
        ]
      : [`All are bored before assembly${ahead ? ", but for what is said to be bored on the bench" : ""}.`]),
    ...(ahead ? ["On the bench: when the piece stands together, before it goes to its place."] : []),
    ...has(
      (row) => row.backing === "scrap",
      "On scrap: with a piece of scrap pressed against where the bit comes out.",
    ),
    ...has(
      (row) => row.jig !== null && !row.jig.scrap,
      "With a jig: the stop is set for the hole and the thickness of the jig together.",
    ),
    ...has(
      (row) => row.what === "dowel",
      "Dowels: in a dowelling jig or a drill guide the bit passes a bushing first; add the bushing's height to the stop.",
    ),
    ...has((row) => row.jig?.scrap === true, "+ a jig: add its thickness."),
    ...has((row) => row.bit === "countersink", "A countersink cuts until the head of the screw lies flush."),
    ...has((row) => row.what.startsWith("counterbore"), "Counterbore first, then bore on in its middle."),
    ...(wallPilot === null
      ? []
      : [
          `Not in the list: the pilot holes for the wall screws, ${sayDrill(wallPilot, design.units)}, bored at the wall into its studs, as deep as the screws reach.`,
        ]),
    "Faces, edges and ends are those of the part as the finished piece stands. A number in brackets tells how many of such parts.",
  ].join(" ");
}

function holeRow(row: DrillRow, { units }: Pick<Design, "units">, printer: Printer): Rich[] {
  const drill = sayDrill(row.diameter, units);
  const slot = /\bslot\b/u.test(row.what) ? "" : "slot ";
  const long = row.slot === null ? "" : `, ${slot}${printer.exact(row.slot)} long`;
  return [
    row.bit === "drill" ? drill : row.bit === "countersink" ? "Countersink" : `${drill} ${row.bit}`,
    String(row.holes.length),
    `${capital(row.what)}${long}`,
    stopOf(row, printer),
    intoOf(row),
    whenOf(row),
  ];
}

function stopOf({ depth, backing, diameter, jig }: DrillRow, printer: Printer): string {
  if (depth === "through") return backing === "the wall" ? "through, to the wall" : "through, on scrap";
  if (depth === "flush") return `flush, ${printer.exact(diameter)} wide`;
  if (typeof depth === "string") return depth;
  return `${printer.set(depth)}${jig === null ? "" : jig.scrap ? ` + ${jig.id}` : `, with ${jig.id}`}`;
}

/** "front face of A (2), C; top edge of B" */
function intoOf({ into }: DrillRow): string {
  const sides = [...new Set(into.map(({ side }) => side))];
  return sides
    .map((side) => {
      const marks = into.filter((each) => each.side === side);
      return `${side} of ${marks.map(({ mark, parts }) => (parts > 1 ? `${mark}\u00a0(${parts})` : mark)).join(", ")}`;
    })
    .join("; ");
}

/** "step 3", "in place, steps 3, 5", "on the bench, step 9" */
function whenOf({ when, steps }: DrillRow): string {
  const told = steps.length === 0 ? [] : [`step${steps.length > 1 ? "s" : ""} ${steps.join(", ")}`];
  return [...(when !== "before assembly" || told.length === 0 ? [when] : []), ...told].join(", ");
}

/** "A → B (4)"; "at C, into A (12)" of what passes through nothing. */
const wayText = ({ through, at, into, count }: FastenerRow["ways"][number]): string =>
  through.length > 0
    ? `${through.join(", ")}\u00a0→\u00a0${into}\u00a0(${count})`
    : `${at.length > 0 ? `at ${at.join(", ")}, ` : ""}into\u00a0${into}\u00a0(${count})`;

const fastenerRow = (row: FastenerRow, printer: Printer): Rich[] => [
  String(row.fasteners.length),
  [[capital(row.item), ...row.with].join(", with "), ...leadText(row, printer)].join("; "),
  row.ways.map(wayText).join(", "),
  row.steps.join(", "),
];

/** "lead hole 5/64, 1 3/4 deep"; of some of them, for how many. */
function leadText({ lead, fasteners }: FastenerRow, { drill, set }: Printer): readonly string[] {
  if (!lead) return [];
  const some = lead.count < fasteners.length ? ` for ${lead.count} of them` : "";
  return [`lead hole${some} ${drill(lead.diameter)}, ${set(lead.depth)} deep`];
}

/** "Ø 3/8, 1/2 deep, then Ø 5/32, through": its stages, widest first; "Ø 5/32, through, countersunk": a cone is told by what lies flush in it. */
export function holeSize({ stages, slot, through }: Hole, { drill, exact, set }: Printer): string {
  const bores = stages.filter(({ cone }) => !cone);
  const told = bores.map(({ diameter, depth }, i) => {
    const last = i === bores.length - 1;
    const wide = slot && last ? `slot ${drill(diameter)} wide, ${exact(slot.length)} long` : `Ø ${drill(diameter)}`;
    return `${wide}, ${through && last ? "through" : `${set(depth)} deep`}`;
  });
  return `${told.join(", then ")}${bores.length < stages.length ? ", countersunk" : ""}`;
}
