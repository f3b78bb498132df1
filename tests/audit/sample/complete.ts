/** The rest of a record, worked out from its parts in the plainest way: a line for each mark, a board for each part. */
import type { Layout } from "../bought.ts";
import type { Blank, BuildRecord, CutLine, Part } from "../record.ts";
import type { V3 } from "../vector.ts";
import { rowsOf } from "./bored.ts";
import { weigh } from "./weigh.ts";
import type { Made } from "./wood.ts";

export function complete(made: Made): BuildRecord {
  const { parts } = made;
  const points = parts.flatMap((part) => part.solids.flatMap((piece) => piece.points));
  const most = ([0, 1, 2] as const).map((i) => Math.max(...points.map((p) => p[i])));
  const layouts = (made.layouts ?? parts.map(boardOf)).map((layout) => ({ piece: null, price: null, ...layout }));
  const stocks = [...new Set(layouts.map((layout) => layout.stock))];
  const boards = layouts.filter((layout) => layout.kind === "board").length;
  const bought = [
    { section: "sheets", item: "sheet", quantity: layouts.length - boards, unit: "sheet" },
    { section: "lumber", item: "board", quantity: boards, unit: "board" },
    ...[...new Set(made.fasteners.map((f) => f.item))].map((item) => ({
      section: "fasteners",
      item,
      quantity: made.fasteners.filter((f) => f.item === item).length,
      unit: "",
    })),
    ...[...new Set(parts.flatMap((part) => part.edgeBanding.map((band) => band.item)))].map((item) => ({
      section: "supplies",
      item,
      quantity: 1,
      unit: "m",
    })),
  ];
  const record: BuildRecord = {
    format: "boardwright-record",
    version: 1,
    compiler: null,
    tolerance: 0.01,
    title: "Sample",
    units: "mm",
    precision: 1,
    source: { file: "sample.yaml", sha256: "", sizes: {}, choices: {}, measured: {}, workshop: null },
    bounds: { min: [0, 0, 0], max: most as unknown as V3 },
    mass: parts.length,
    centreOfMass: [0, 0, 0],
    blanks: parts.map(blankOf),
    cutList: [...new Set(parts.map((part) => part.mark))].map((mark) => lineOf(mark, parts)),
    drilling: made.holes.flatMap(rowsOf),
    hardware: [],
    motions: [],
    layoutProof: stocks.map((stock) => {
      const count = layouts.filter((layout) => layout.stock === stock).length;
      const basis = { method: "area", assumes: "guillotine, kerf 3" };
      return { stocks: [stock], count, countBound: count, cost: null, costBound: null, optimal: true, ...basis };
    }),
    purchases: bought.map((line) => ({ ...line, price: null, onHand: 0, waste: 0, content: null, note: "" })),
    timeline: { bench: 0, elapsed: 0, lowerBound: 0, hoursADay: 8, days: [] },
    tools: [],
    finishing: [],
    jigs: [],
    patterns: [],
    checks: [],
    findings: [],
    pages: [],
    ...made,
    layouts,
  };
  weigh(record);
  return record;
}

const blankId = (part: Part): string => `blank of ${part.id}`;

function blankOf(part: Part): Blank {
  const { id, stock, thickness, width, length } = part;
  return {
    id: blankId(part),
    part: id,
    alsoParts: [],
    planedWhole: null,
    stock,
    thickness,
    width,
    length,
    grain: "length",
    why: "as finished",
    reserved: [],
  };
}

function lineOf(mark: string, parts: readonly Part[]): CutLine {
  const alike = parts.filter((part) => part.mark === mark);
  const { stock, thickness, width, length } = alike[0] as Part;
  const name = alike.map((part) => part.name).join(" and ");
  for (const part of alike) part.name = name;
  const sizes = { thickness, width, length, shown: `${thickness} × ${width} × ${length}` };
  const ids = alike.map((part) => part.id);
  return { mark, name, quantity: ids.length, stock, ...sizes, parts: ids, mirrorOf: null, cut: "list", notes: [] };
}

/** A board as wide as the part, its end squared, cut to length. */
function boardOf(part: Part): Layout {
  const { stock, mark, thickness, width, length } = part;
  const [kerf, end] = [3, 6];
  const at = end + kerf;
  const crosscut = (number: number, y: number, fence: number): Layout["cuts"][number] => ({
    number,
    kind: "crosscut",
    from: [0, y],
    to: [width, y],
    fence,
  });
  return {
    stock,
    kind: "board",
    source: "buy",
    thickness,
    width,
    length: length + 100,
    kerf,
    squaring: 0,
    placements: [{ blank: blankId(part), mark, x: 0, y: at, width, length, turned: false }],
    cuts: [crosscut(1, end, end), crosscut(2, at + length, length)],
    offcuts: [],
  };
}
