/** What a reader wants to know of layouts besides their drawing. */
import { add, equal, type Length, less, max, min, multiply, subtract, sum, toNumber } from "../../units/index.ts";
import type { Blank, Cut, CutLine, Layout, Placement, Rectangle } from "../build.ts";
import type { Workshop } from "../design.ts";

/** Share of the area of sheets and boards that ends in parts, 0 to 1. */
export function yieldOf(layouts: readonly Layout[]): number {
  const area = (each: { readonly width: Length; readonly length: Length }): Length => multiply(each.width, each.length);
  const whole = toNumber(sum(layouts.map(area)));
  return whole === 0 ? 0 : toNumber(sum(layouts.flatMap(({ placements }) => placements).map(area))) / whole;
}

/** "4 L": what lies there as it is marked on a layout, with how many are parted from it when it is planed. */
export function marked({ blank: id, mark }: Pick<Placement, "blank" | "mark">, blanks: readonly Blank[]): string {
  const { planedWhole, alsoParts = [] } = blanks.find((blank) => blank.id === id) ?? {};
  return planedWhole && alsoParts.length > 0 ? `${1 + alsoParts.length} ${mark}` : mark;
}

/** Marks of what lies on the layouts larger than its finished size: planed, glued up or fitted afterwards. Each once, in order. */
export interface OverSize {
  readonly rough: readonly string[];
  readonly gluedUp: readonly string[];
  readonly later: readonly string[];
}

export function overSize(layouts: readonly Layout[], blanks: readonly Blank[]): OverSize {
  const byId = new Map(blanks.map((blank) => [blank.id, blank]));
  const marks = (why: Blank["why"]): readonly string[] => {
    const found = layouts
      .flatMap(({ placements }) => placements)
      .filter(({ blank }) => byId.get(blank)?.why === why)
      .map(({ mark }) => mark);
    return [...new Set(found)].toSorted((a, b) => a.length - b.length || (a < b ? -1 : a > b ? 1 : 0));
  };
  return { rough: marks("rough"), gluedUp: marks("glue-up"), later: marks("cut later") };
}

/** A size that a layout has room for and the part does not come to, with stock of the thickness that the plan is drawn for. */
export interface Reserved {
  readonly mark: string;
  readonly size: "width" | "length";
  readonly drawn: Length;
  readonly cut: Length;
}

/** Each mark and size once, in the order of the marks. */
export function reservedOn(
  layouts: readonly Layout[],
  { blanks, cutList }: { readonly blanks: readonly Blank[]; readonly cutList: readonly CutLine[] },
): readonly Reserved[] {
  const byId = new Map(blanks.map((blank) => [blank.id, blank]));
  const found = new Map<string, Reserved>();
  for (const { blank: id } of layouts.flatMap(({ placements }) => placements)) {
    const blank = byId.get(id);
    const line = blank?.why === "largest" && cutList.find(({ parts }) => parts.includes(blank.part));
    if (!blank || !line) continue;
    for (const size of ["width", "length"] as const)
      if (less(line[size], blank[size]))
        found.set(`${line.mark} ${size}`, { mark: line.mark, size, drawn: blank[size], cut: line[size] });
  }
  return [...found.values()].toSorted((a, b) => a.mark.length - b.mark.length || (a.mark < b.mark ? -1 : 1));
}

/** A layout, and the numbers from 1 of all that are sawn like it. */
export interface SawnAlike {
  readonly layout: Layout;
  readonly numbers: readonly number[];
}

/** In the order of the first of each. */
export function sawnAlike(layouts: readonly Layout[]): readonly SawnAlike[] {
  const groups = new Map<string, { layout: Layout; numbers: number[] }>();
  layouts.forEach((layout, i) => {
    const key = keyOf(layout);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { layout, numbers: [i + 1] });
    else group.numbers.push(i + 1);
  });
  return [...groups.values()];
}

const exact = (length: Length): string => `${length.n}/${length.d}`;
const keyOf = ({ source, piece, width, length, placements, cuts }: Layout): string =>
  JSON.stringify([
    [source, piece ?? "", exact(width), exact(length)],
    placements.map((p) => [p.mark, exact(p.x), exact(p.y), exact(p.width), exact(p.length), p.turned]),
    cuts.map((c) => [c.number, c.kind, ...c.from.map(exact), ...c.to.map(exact)]),
  ]);

/** A run of cuts at one setting of fence or stop. */
export interface Setting {
  readonly kind: Cut["kind"];
  readonly fence: Length;
  readonly cuts: readonly Cut[];
}

/** Cuts that follow one another at the same setting stand together. */
export function settingsOf({ cuts }: Pick<Layout, "cuts">): readonly Setting[] {
  const runs: { kind: Cut["kind"]; fence: Length; cuts: Cut[] }[] = [];
  for (const cut of cuts) {
    const last = runs.at(-1);
    if (last?.kind === cut.kind && equal(last.fence, cut.fence)) last.cuts.push(cut);
    else runs.push({ kind: cut.kind, fence: cut.fence, cuts: [cut] });
  }
  return runs;
}

/**
 * How many of a sheet's first cuts have to be made where it is bought, until every piece can be carried home; null where even all of
 * them do not do. Zero: the whole sheet can be carried.
 */
export function cutsBeforeHome(layout: Layout, carries: NonNullable<Workshop["carries"]>): number | null {
  const [shorter, longer] = [min(carries.width, carries.length), max(carries.width, carries.length)];
  const fits = ({ width, length }: Rectangle): boolean =>
    !less(shorter, min(width, length)) && !less(longer, max(width, length));
  let pieces: readonly Rectangle[] = [{ ...corner(layout), width: layout.width, length: layout.length }];
  if (pieces.every(fits)) return 0;
  const { squaring } = layout;
  pieces = [
    {
      ...{ x: squaring, y: squaring },
      ...{ width: subtract(layout.width, squaring), length: subtract(layout.length, squaring) },
    },
  ];
  for (const [i, cut] of layout.cuts.entries()) {
    pieces = pieces.flatMap((piece) => halves(piece, cut, layout.kerf));
    if (pieces.every(fits)) return i + 1;
  }
  return null;
}

const corner = ({ squaring }: Layout): Pick<Rectangle, "x" | "y"> => {
  const zero = subtract(squaring, squaring);
  return { x: zero, y: zero };
};

/** The two pieces that a cut makes of the one that it divides; the others stay. */
function halves(piece: Rectangle, { kind, from, to }: Cut, kerf: Length): readonly Rectangle[] {
  const rip = kind === "rip";
  const [start, size, at] = rip ? [piece.x, piece.width, from[0]] : [piece.y, piece.length, from[1]];
  const [across, wide, near, far] = rip
    ? [piece.y, piece.length, from[1], to[1]]
    : [piece.x, piece.width, from[0], to[0]];
  const end = add(start, size);
  const divides = !less(at, start) && less(at, end) && equal(near, across) && equal(far, add(across, wide));
  if (!divides) return [piece];
  const beyond = add(at, kerf);
  const [first, rest] = [subtract(at, start), subtract(end, beyond)];
  const sized = (begin: Length, long: Length): Rectangle =>
    rip ? { ...piece, x: begin, width: long } : { ...piece, y: begin, length: long };
  return [sized(start, first), ...(less(beyond, end) ? [sized(beyond, rest)] : [])];
}
