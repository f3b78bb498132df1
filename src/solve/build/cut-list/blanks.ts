/** What the saw cuts for each part: as finished, or with what is left over it. */

import {
  add,
  divide,
  equal,
  inches,
  less,
  max,
  millimetres,
  min,
  multiply,
  rational,
  roundTo,
  subtract,
  sum,
  ZERO,
} from "../../../units/index.ts";
import type { Length } from "../../../units/length.ts";
import type { Blank, CutLine } from "../../build.ts";
import { isGluedUp, makingOf } from "../../design/making/plain.ts";
import { USUAL_ROUGH } from "../../design/making/rough.ts";
import { stripOf, stripsOf } from "../../design/making/together.ts";
import { faceAxis, indexOf } from "../../design/space.ts";
import type { Design, Part, Rough, Stock } from "../../design.ts";
import { isRough } from "../cutting/sizes.ts";
import { TRIM } from "../cutting/trim.ts";
import type { LargestSizes, Reserved } from "../model/thickness.ts";
import { inWholePieces } from "./planed-whole.ts";

type Sizes = Pick<Blank, "width" | "length">;
type Sawn = Omit<Blank, "id" | "part" | "mark" | "stock" | "grain">;

/** Boards sold dressed have round edges: so much of their width, in all, is lost to joint them. Common practice, no source. */
const ROUND_EDGES = inches(1, 2);

/** What is mitred to fit is sawn this much longer at least: its first mitre wastes an end, and the second is tried and pared. Common practice, no source. */
const TRIED = { inch: inches(1, 2), mm: millimetres(12) } as const;

/** In the order of the cut list, large enough for every thickness that the stock may have. A strip stands where its first part does. */
export function blanksOf(
  design: Design,
  lines: readonly CutLine[],
  largest: LargestSizes = new Map(),
): readonly Blank[] {
  const stocks = new Map(design.stock.map((stock) => [stock.name, stock]));
  const lineOf = new Map(lines.flatMap((line) => line.parts.map((id) => [id, line] as const)));
  const parts = new Map(design.parts.map((part) => [part.id, part]));
  const strips = new Map(
    [...stripsOf(design.parts).values()].flatMap((members) => {
      const strip = stripOf(members);
      return strip ? members.map((part) => [part.id, strip] as const) : [];
    }),
  );
  const done = new Set<string>();
  const blanks = lines
    .flatMap((line) => line.parts)
    .flatMap((id): readonly Omit<Blank, "id">[] => {
      const [part, line] = [parts.get(id), lineOf.get(id)];
      const stock = line && stocks.get(line.stock);
      // Panes are bought as large as they are.
      if (!part || !line || !stock || stock.form === "pane" || done.has(id)) return [];
      const { alike } = makingOf(part);
      const common = {
        part: id,
        mark: line.mark,
        stock: stock.name,
        grain: stock.grainless ? ("free" as const) : ("length" as const),
        ...(alike === null ? {} : { alike }),
      };
      const strip = strips.get(id);
      if (!strip)
        return sawn(design, part, withReserve(line, largest.get(id)), stock).map((blank) => ({ ...common, ...blank }));
      const row = strip.parts.map((member) => {
        done.add(member.id);
        const own = lineOf.get(member.id) as CutLine;
        return {
          id: member.id,
          mark: own.mark,
          blank: sawn(design, member, withReserve(own, largest.get(member.id)), stock)[0] as Sawn,
        };
      });
      const [first, ...others] = row.map((member) => member.id);
      const marks = [...new Set(row.map(({ mark }) => mark))].join(" + ");
      const whole = inOneStrip(
        row.map(({ blank }) => blank),
        strip.along,
        design.kerf,
      );
      return [{ ...common, part: first as string, alsoParts: others, mark: marks, ...whole }];
    });
  return inWholePieces(design, blanks).map((blank, i) => ({ id: `b${i + 1}`, ...blank }));
}

/** Whether wood of a stock is left over its size before it is planed: it is bought rough, the plan says so, or some of it is glued up. */
export const isMilled = (design: Design, stock: Stock): boolean =>
  stock.form === "board" &&
  (isPlanedHere(stock) ||
    (design.rough ?? null) !== null ||
    design.parts.some((part) => part.stock === stock.name && isGluedUp(part)));

const isPlanedHere = ({ bought }: Stock): boolean => bought?.rough === true && bought.planed;

/** Bought as thick and as wide as it ends: all that is left to do is to cut it to length, whatever is left over the others. */
const isBoughtInSection = (stock: Stock, width: Length, { thickness }: CutLine): boolean =>
  stock.form === "board" &&
  stock.roughThickness === null &&
  stock.bought?.planed !== true &&
  equal(stock.thickness, thickness) &&
  stock.width !== null &&
  equal(stock.width, width);

/** What a board of a stock measures when it is sawn: as sold where it is planed afterwards. */
export const sawnThickness = (design: Design, stock: Stock): Length =>
  isMilled(design, stock) && stock.roughThickness ? stock.roughThickness : stock.thickness;

export const allowances = (design: Design): Rough => design.rough ?? USUAL_ROUGH[design.units];

/** The printed size without the bands that are put on afterwards. */
export function bareSize(part: Part, { width, length }: Sizes): Sizes {
  const bands = (axis: "width" | "length"): Length =>
    sum(
      makingOf(part)
        .banding.filter(({ edge, deducted }) => deducted && faceAxis(edge) === indexOf(part.axes[axis]))
        .map(({ thickness }) => thickness),
    );
  return { width: subtract(width, bands("width")), length: subtract(length, bands("length")) };
}

/** A line of the cut list as large as its parts may come out. */
type Wanted = CutLine & Pick<Blank, "reserved">;

const withReserve = (line: CutLine, reserved: readonly Reserved[] | undefined): Wanted =>
  reserved ? { ...line, ...Object.fromEntries(reserved.map(({ size, largest }) => [size, largest])), reserved } : line;

function sawn(design: Design, part: Part, line: Wanted, stock: Stock): readonly Sawn[] {
  const reserved = line.reserved && { reserved: line.reserved };
  return sawnTo(design, part, line, stock).map((blank) => ({ ...blank, ...reserved }));
}

function sawnTo(design: Design, part: Part, line: Wanted, stock: Stock): readonly Sawn[] {
  const { layers, cut, over } = makingOf(part);
  const bare = bareSize(part, line);
  const each = divide(part.thickness, rational(layers));
  const board = sawnThickness(design, stock);
  // What is thicker than its stock stays so, and is told with the layout.
  const thickness = less(stock.thickness, each) ? each : board;
  if (isGluedUp(part)) return gluedUp(design, part, bare, stock, thickness);
  const milled = isMilled(design, stock) && !isBoughtInSection(stock, bare.width, line);
  const rough = allowances(design)[equal(part.thickness, line.width) ? "legs" : "parts"];
  const more = (by: Length): Length => max(milled ? by : ZERO, over);
  // A board that is used in its full width cannot be sawn wider: an edge is straightened, and the other ripped off.
  const edge = isRough(stock) ? add(TRIM[design.units].roughEdge, design.kerf) : ZERO;
  const holds = subtract(stock.soldWidth, edge);
  const whole = edge === ZERO ? holds : roundTo(holds, design.precision, "down");
  const widest = max(bare.width, stock.form === "board" ? whole : add(bare.width, over));
  const width = min(add(bare.width, more(rough.wider)), widest);
  const plain = line.reserved ? "largest" : "as finished";
  const planed = milled || !equal(thickness, line.thickness);
  // What is planed is sawn rough at once, also where it gets its size later.
  const why = planed && cut !== "over" ? "rough" : cut === "list" ? plain : "cut later";
  const tried = cut !== "list" && part.features.some(({ kind }) => kind === "mitre") ? TRIED[design.units] : ZERO;
  return [{ thickness, width, length: add(bare.length, max(more(rough.longer), tried)), why }];
}

/** The boards of a slab: its width and what is left over it shared out, each board wider for its edges. Layers of a sheet are all as large. */
function gluedUp(design: Design, part: Part, bare: Sizes, stock: Stock, thickness: Length): readonly Sawn[] {
  const { boards, layers, over } = makingOf(part);
  const { slabs } = allowances(design);
  const wide = add(bare.width, max(slabs.wider, over));
  const length = add(bare.length, max(stock.form === "sheet" ? slabs.wider : slabs.longer, over));
  const jointed = roundTo(divide(wide, rational(boards)), design.precision, "up");
  const dressed = !design.rough && stock.form === "board" && stock.roughThickness === null;
  const edges = dressed ? max(slabs.eachBoardWider, ROUND_EDGES) : slabs.eachBoardWider;
  const one: Sawn =
    boards === 1
      ? { thickness, width: wide, length, why: "glue-up" }
      : { thickness, width: add(jointed, edges), length, why: "glue-up", jointed };
  return Array.from({ length: boards * layers }, () => one);
}

/** Parts side by side with the kerfs that part them. */
function inOneStrip(row: readonly Sawn[], along: "length" | "width", kerf: Length): Sawn {
  const [first] = row as [Sawn];
  const kerfs = multiply(kerf, rational(row.length - 1));
  const total = (size: "length" | "width"): Length =>
    size === along ? add(sum(row.map((blank) => blank[size])), kerfs) : row.map((blank) => blank[size]).reduce(max);
  const why = row.find((blank) => blank.why !== "as finished")?.why ?? "as finished";
  const reserved = row.flatMap((blank) => blank.reserved ?? []);
  return {
    thickness: first.thickness,
    width: total("width"),
    length: total("length"),
    why,
    ...(reserved.length > 0 && { reserved }),
  };
}
