/** Jigs that are made from offcuts, and what is traced or pricked through from the paper in its true size. */
import type { Build, CurvePattern, HolePattern, Jig, Stock } from "../../solve/build.ts";
import { placeStep } from "../../solve/design/boring/marks.ts";
import { fromFirst, inches, type Length, millimetres, printLength } from "../../units/index.ts";
import { roundTo } from "../../units/round.ts";
import { curveTile } from "../drawing/template/curve-tile.ts";
import { holePattern } from "../drawing/template/hole-pattern.ts";
import { jigDrawing } from "../drawing/template/jig.ts";
import { offsetDrawing } from "../drawing/template/offsets.ts";
import { truePoints as points } from "../drawing/template/print-bar.ts";
import { tilesOf } from "../drawing/template/tiles.ts";
import { listed } from "../drawing/words.ts";
import { COLUMN_GAP } from "../style.ts";
import { columnWidth } from "../typeset/columns.ts";
import type { Section } from "../typeset/flow.ts";
import { type Cell, cell, rows } from "./cells.ts";
import { capital, type Plan, sectionHeading } from "./plan.ts";
import { BAR, trueSize } from "./true-size.ts";

/** Height of the words above a tile. */
const WORDS = 64;
/** Room in a tile's drawing for words along its edges. */
const EDGES = 30;

/** Of the section where there are jigs in it. */
export const jigsTitle = ({ patterns = [] }: Build): string => (patterns.length === 0 ? "Jigs" : "Jigs and patterns");

/** Jigs that are drawn beside the step that makes them are not drawn again. */
export function templates(plan: Plan): Section | null {
  const { build, frame } = plan;
  const { patterns = [] } = build;
  const beside = columnWidth(frame.width, COLUMN_GAP);
  const jigs = (build.jigs ?? []).filter((jig) => jigInStep(plan, jig, beside) === null);
  if (jigs.length + patterns.length === 0) return null;
  const { width } = frame;
  const scaled = [
    ...jigs.map((jig) => jigCell(plan, jig)),
    ...patterns.flatMap((each) =>
      each.full ? [] : [each.of === "curve" ? offsetCell(plan, each) : holeCell(plan, each)],
    ),
  ];
  const full = patterns.flatMap((each) =>
    !each.full ? [] : each.of === "curve" ? curveCells(plan, each) : [holeCell(plan, each)],
  );
  const title = jigs.length === 0 ? "Patterns" : jigsTitle(build);
  return {
    ...{ name: "templates", title, kind: "templates", start: "fits" },
    atoms: [
      ...sectionHeading("templates", title, width),
      ...rows(scaled, width),
      ...(full.length === 0 ? [] : trueSize(plan, "In their true size", "trace or prick anything through", full)),
    ],
  };
}

/** To what a rule has marks for, as in the drawings of the parts. */
const unitOf = ({ build: { design } }: Plan): ((length: Length) => string) => {
  const { units } = design;
  const precision = units === "inch" ? inches(1, 64) : millimetres(1, 10);
  return (length) => printLength(roundTo(length, placeStep(design)), { units, precision, style: "typographic" }).text;
};
export const finePen = (plan: Plan) => ({ ...plan.pen, print: unitOf(plan) });

/** Of what is no template, even where its scale happens to be that of the part. */
const notTrue = ({ scale }: { readonly scale: string }): string =>
  scale === "1:1" ? "Measure with a rule; it is not for pricking through." : `Not true size: scale ${scale}.`;

/** "Steps 3 and 8." */
function usedIn({ steps }: Build, id: string): string {
  const numbers = steps.flatMap((step) => (step.jigs?.includes(id) ? [step.number] : []));
  if (numbers.length === 0) return "";
  const [last, ...before] = numbers.toReversed();
  const list = before.length === 0 ? `${last}` : `${before.toReversed().join(", ")} and ${last}`;
  return `${numbers.length === 1 ? "Step" : "Steps"}\u00a0${list}.`;
}

const said = (...sentences: readonly string[]): string => sentences.filter((each) => each !== "").join(" ");

/** At a smaller scale the holes of a jig are mere strokes: it is drawn over the page where that is so many times as large. */
const SMALLEST = 72 / 406_400 / 16.5;
const LARGER = 1.5;

/** Without what the step tells that makes it; null where it does not go in, or not so that its holes are seen. */
export function jigInStep(plan: Plan, jig: Jig, width: number): Cell | null {
  const { units } = plan.build.design;
  const drawing = jigDrawing(jig, units, finePen(plan), width);
  const isClearer = (): boolean =>
    jigDrawing(jig, units, finePen(plan), plan.frame.width).points >= LARGER * drawing.points;
  if (drawing.width > width || (drawing.points < SMALLEST && isClearer())) return null;
  return cell(capital(jig.id), said(`Scale ${drawing.scale}.`, usedIn(plan.build, jig.id)), drawing, width, "two");
}

function jigCell(plan: Plan, jig: Jig): Cell {
  const { build, printer, frame } = plan;
  const stock = build.design.stock.find(({ name }: Stock) => name === jig.from);
  const wood = stock ? `an offcut of ${stock.label}` : "scrap";
  const first = jig.holes[0];
  const drill = first ? `Ø\u00a0${printer.drill(first.diameter)} right through.` : "";
  const made = `${jig.count > 1 ? `${jig.count} from` : "From"} ${wood}.`;
  const kind = {
    between: "spacers",
    "on the end": `strip for ${jig.what}`,
    "in the corner": `template for ${jig.what}`,
  };
  const head = `${capital(jig.id)}: ${kind[jig.laid]}`;
  const what = jig.laid === "between" ? `Hold ${jig.what} apart.` : "";
  const drawing = jigDrawing(jig, build.design.units, finePen(plan), frame.width);
  return cell(head, said(what, made, drill, `Scale ${drawing.scale}.`, usedIn(build, jig.id)), drawing, frame.width);
}

function holeCell(plan: Plan, pattern: HolePattern): Cell {
  const { build, printer, frame } = plan;
  const told = (["x", "y"] as const).map((of) => {
    const places = pattern.holes.map((hole) => hole[of]);
    return fromFirst(places, placeStep(build.design));
  });
  const pen = finePen(plan);
  // As in the drawings of the parts.
  const print = (at: Length): string => pen.print(told.flatMap((place) => place(at) ?? [])[0] ?? at);
  const drawing = holePattern(pattern, build.design.units, { ...pen, print }, frame.width);
  const bores = new Map<string, number>();
  for (const { diameter, depth } of pattern.holes) {
    const size = `Ø\u00a0${printer.drill(diameter)}, ${depth === null ? "through" : `${printer.set(depth)} deep`}`;
    bores.set(size, (bores.get(size) ?? 0) + 1);
  }
  const holes = [...bores].map(([size, count]) => `${count} ${count === 1 ? "hole" : "holes"} ${size}`).join("; ");
  const words = said(
    `${holes}, into the ${pattern.into} of ${listed(pattern.marks)}.`,
    ...zeros(pattern, unitOf(plan)),
    pattern.full && pattern.over ? "Where these sides lie the other way round, turn it over." : "",
    ...[pattern.full ? "" : notTrue(drawing), usedIn(build, pattern.id)],
  );
  const head = `${capital(pattern.id)}: ${pattern.kind}`;
  return cell(head, words, drawing, frame.width, pattern.full ? "two" : "three");
}

/** More places of a first hole are told by the drawings of the parts. */
const MOST = 6;

/** "the right edge"; "the right edge of F and the left edge of G" where it is not the same on each part. */
const edgeWords = (edges: readonly { readonly side: string; readonly marks: readonly string[] }[]): string =>
  listed(edges.map(({ side, marks }) => (edges.length > 1 ? `the ${side} of ${listed(marks)}` : `the ${side}`)));

/** Where 0 is, from the left and from below or above. */
function zeros({ x, y, down }: HolePattern, print: (length: Length) => string): readonly string[] {
  const [left, below] = [x, y].map((side) => (side.edge === null ? "the first hole" : edgeWords(side.edge)));
  const zero = left === below ? `0 is ${left}` : `0 at the left is ${left}, 0 ${down ? "above" : "below"} is ${below}`;
  const first = [x, y].flatMap((side) => (side.edge === null ? side.first : []));
  if (first.length === 0) return [`${zero}.`];
  if (first.length > MOST) {
    const marks = listed([...new Set(first.map(({ mark }) => mark))]);
    return [
      `${zero}.`,
      `Where the first hole of each row lies, the ${/ /u.test(marks) ? "drawings" : "drawing"} of ${marks} beside the steps ${/ /u.test(marks) ? "tell" : "tells"}.`,
    ];
  }
  const all = new Map<string, string[]>();
  for (const { mark, at, from } of first) {
    const key = `from the ${from} of ${mark}`;
    all.set(key, [...(all.get(key) ?? []), print(at)]);
  }
  return [`${zero}.`, `The first hole lies ${[...all].map(([edge, at]) => `${listed(at)} ${edge}`).join("; ")}.`];
}

function curveCells(plan: Plan, pattern: CurvePattern): readonly Cell[] {
  const { build, frame } = plan;
  const free = { width: frame.width - EDGES, height: frame.height - BAR - WORDS };
  const size = { width: points(pattern.width), height: points(pattern.height) };
  const tiles = tilesOf(size, free);
  return tiles.map((tile, i) => {
    const sheet = tiles.length === 1 ? "" : `, piece ${i + 1} of ${tiles.length}`;
    const joined = tiles.length === 1 ? "" : "Lay the pieces so that crosses of one letter meet.";
    const drawn = curveTile(pattern, tile, tiles, plan.pen);
    const alt = `${capital(pattern.what)}, in its true size${sheet}; for ${pattern.marks.join(", ")}.`;
    const words =
      i === 0
        ? said(`${capital(pattern.what)}, for ${pattern.marks.join(", ")}.`, joined, usedIn(build, pattern.id))
        : "";
    return cell(`${capital(pattern.id)}${sheet}`, words, { ...drawn, alt }, frame.width);
  });
}

function offsetCell(plan: Plan, pattern: CurvePattern): Cell {
  const { build, frame } = plan;
  const drawing = offsetDrawing(pattern, build.design.units, finePen(plan), frame.width);
  const how = pattern.outline.every(({ is }) => is === "line")
    ? "Mark both points and draw a straight line, or set a taper jig to it: so far along the part it leans by so much."
    : "Mark the points, bend a thin strip through them, and draw along it.";
  const words = said(
    `${capital(pattern.what)}, for ${pattern.marks.join(", ")}; too large to trace. ${how} Above: from the left edge of the drawing; below: up from the edge.`,
    ...[notTrue(drawing), usedIn(build, pattern.id)],
  );
  return cell(capital(pattern.id), words, drawing, frame.width);
}
