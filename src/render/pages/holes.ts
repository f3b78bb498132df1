/** Every hole by diameter, and every screw by length. */
import type { Build, Fastener, Hole } from "../../solve/build.ts";
import { TYPE } from "../style.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import type { Rich } from "../typeset/lines.ts";
import { table } from "../typeset/table.ts";
import { body, capital, type Plan, type Printer, sectionHeading, subheading } from "./plan.ts";

const HOLES: readonly Column[] = [
  { head: "Number", align: "right", style: TYPE.strong },
  { head: "Hole" },
  { head: "Diameter × depth" },
  { head: "In", stretch: true },
  { head: "When" },
];
const SCREWS: readonly Column[] = [
  { head: "Number", align: "right", style: TYPE.strong },
  { head: "Fastener" },
  { head: "Through → into", stretch: true },
];

export function holesAndScrews({ build, frame, printer }: Plan): Section | null {
  const { width } = frame;
  if (build.holes.length === 0 && build.fasteners.length === 0) return null;
  const holes = table({ columns: HOLES, rows: holeRows(build, printer), width, above: 4 });
  const screws = table({ columns: SCREWS, rows: fastenerRows(build), width, above: 4 });
  const unit = printer.unit === "in" ? "inches" : "millimetres";
  const sunk = build.holes.some(({ stages }) => stages.some(({ cone }) => cone));
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
            ...body(
              `Diameter Ø and depth in ${unit}. A number in brackets tells how many of such parts.${sunk ? " Countersink until the head of the screw lies flush." : ""}`,
              width,
              {
                keep: true,
                above: 0,
              },
            ),
            ...holes,
          ]),
      ...(screws.length === 0 ? [] : [...subheading("Fasteners", width), ...screws]),
    ],
  };
}

/** Rows for what has the same words, in order of first appearance, with their number. */
function tally<T>(things: readonly T[], words: (thing: T) => string): { readonly first: T; readonly all: T[] }[] {
  const groups = new Map<string, { first: T; all: T[] }>();
  for (const thing of things) {
    const key = words(thing);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { first: thing, all: [thing] });
    else group.all.push(thing);
  }
  return [...groups.values()];
}

function marks(build: Build): (id: string) => string {
  const byId = new Map(build.parts.map((part) => [part.id, part.mark]));
  return (id) => byId.get(id) ?? id;
}

/** "A (4), C (2)": the marks of the parts, each with how many parts of that mark there are among them. */
function markList(ids: readonly string[], mark: (id: string) => string): string {
  return tally([...new Set(ids)], mark)
    .map(({ first, all }) => (all.length > 1 ? `${mark(first)} (${all.length})` : mark(first)))
    .join(", ");
}

/** "Ø 3/8 × 1/2; Ø 5/32 × through": its stages, widest first; "Ø 5/32 × through, countersunk": a cone is told by what lies flush in it. */
export function holeSize({ stages, slot, through }: Hole, { bored }: Printer): string {
  const bores = stages.filter(({ cone }) => !cone);
  const told = bores.map(({ diameter, depth }, i) => {
    const last = i === bores.length - 1;
    const wide = slot && last ? `${bored(diameter)} × ${bored(slot.length)}` : `Ø ${bored(diameter)}`;
    return `${wide} × ${through && last ? "through" : bored(depth)}`;
  });
  return `${told.join("; ")}${bores.length < stages.length ? ", countersunk" : ""}`;
}

function holeRows(build: Build, printer: Printer): Rich[][] {
  const mark = marks(build);
  const size = (hole: Hole): string => holeSize(hole, printer);
  const when = (hole: Hole): string => (hole.atBench ? "before assembly" : "in place");
  return tally(build.holes, (hole) => [hole.kind, size(hole), when(hole)].join("|")).map(({ first, all }) => [
    String(all.length),
    capital(first.kind),
    size(first),
    markList(
      all.map((hole) => hole.part),
      mark,
    ),
    when(first),
  ]);
}

function fastenerRows(build: Build): Rich[][] {
  const mark = marks(build);
  const way = (f: Fastener): string => `${f.through.map(mark).join(", ")} → ${mark(f.into)}`.trimStart();
  return tally(build.fasteners, (f) => f.item).map(({ first, all }) => [
    String(all.length),
    [capital(first.item), ...(first.with ?? [])].join(", with "),
    tally(all, way)
      .map((group) => `${way(group.first)} (${group.all.length})`)
      .join(", "),
  ]);
}
