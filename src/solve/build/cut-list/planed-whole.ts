/** Sticks too narrow or too short to be planed one by one: sawn together as a piece that a machine takes, and parted when it is planed. */
import type { Units } from "../../../parse/draft.ts";
import {
  add,
  compare,
  inches,
  type Length,
  less,
  max,
  millimetres,
  multiply,
  rational,
  roundTo,
} from "../../../units/index.ts";
import type { Blank, PlanedWhole } from "../../build.ts";
import type { Design, Stock } from "../../design.ts";
import { plainSupply, sizesOf } from "../cutting/sizes.ts";
import { TRIM } from "../cutting/trim.ts";
import { ownKey } from "../steps/wishes/own-key.ts";
import { supplyOf } from "../supply.ts";

/** No smaller piece goes over a jointer or through a planer by itself. Common practice, no source. */
const LEAST: Readonly<Record<Units, { readonly width: Length; readonly length: Length }>> = {
  inch: { width: inches(3, 2), length: inches(12) },
  mm: { width: millimetres(40), length: millimetres(300) },
};

type Sizes = Pick<Blank, "width" | "length">;
type Sawn = Omit<Blank, "id">;

/** In which of its sizes a piece is too small to be planed by itself. */
export const tooSmall = (
  { width, length }: Sizes,
  units: Units,
): { readonly narrow: boolean; readonly short: boolean } => ({
  narrow: less(width, LEAST[units].width),
  short: less(length, LEAST[units].length),
});

/**
 * Rough blanks with those that are too small put together, each group where its first stood: parts of one line only, for they have one
 * thickness and are worked on together. What no board has room for stays apart.
 */
export function inWholePieces(design: Design, blanks: readonly Sawn[]): readonly Sawn[] {
  const groups = new Map<string, Sawn[]>();
  for (const blank of blanks) {
    const key = keyOf(design, blank);
    if (key !== null) groups.set(key, [...(groups.get(key) ?? []), blank]);
  }
  const first = new Map([...groups.values()].map((group) => [group[0], group]));
  const gone = new Set([...groups.values()].flatMap((group) => group.slice(1)));
  return blanks.flatMap((blank) => {
    const group = first.get(blank);
    if (group) return together(design, group);
    return gone.has(blank) ? [] : [blank];
  });
}

/** What is alike may be sawn as one; null for what is planed by itself, or not at all. */
function keyOf(design: Design, blank: Sawn): string | null {
  const { why, alsoParts, grain, part, width, length, mark, stock, alike = "" } = blank;
  const small = tooSmall(blank, design.units);
  if (why !== "rough" || alsoParts || grain !== "length" || !(small.narrow || small.short)) return null;
  const wishes = (["cut", "plane"] as const).map((verb) => ownKey({ design }, { verb }, [part]));
  return JSON.stringify([mark, stock, alike, ...[width, length].map(({ n, d }) => `${n}/${d}`), ...wishes]);
}

interface Piece extends Sizes {
  readonly planedWhole: PlanedWhole;
}

function together(design: Design, group: readonly Sawn[]): readonly Sawn[] {
  const [one] = group as [Sawn];
  const pieces = piecesOf(design, one, group.length);
  if (pieces === null) return group;
  let at = 0;
  return pieces.map(([piece, count]) => {
    const [first, ...others] = group.slice(at, at + count) as [Sawn, ...Sawn[]];
    at += count;
    return { ...first, ...piece, ...(others.length > 0 && { alsoParts: others.map(({ part }) => part) }) };
  });
}

/** Of divisions that take up about the same wood an even one, then that with the most pieces: they find room more easily, and cup less. */
const ABOUT = rational(21, 20);

/** Each piece with how many it gives; null where there is no room for any. */
function piecesOf(design: Design, one: Sawn, n: number): readonly (readonly [Piece, number])[] | null {
  const stock = design.stock.find(({ name }) => name === one.stock);
  if (!stock) return null;
  const fits = roomsOf(design, stock);
  const divisions = Array.from({ length: n }, (_, i) => n - i).flatMap((pieces) => {
    const counts = Array.from({ length: pieces }, (_, i) => Math.floor(n / pieces) + (i < n % pieces ? 1 : 0));
    const made = counts.flatMap((count) => {
      const piece = smallest(design, one, count, fits);
      return piece ? [[piece, count] as const] : [];
    });
    const area = made.reduce((so, [piece]) => add(so, grossArea(piece, design.kerf)), rational(0));
    return made.length === pieces ? [{ made, area }] : [];
  });
  const [least] = divisions.map(({ area }) => area).toSorted(compare);
  if (!least) return null;
  const good = divisions.filter(({ area }) => !less(multiply(least, ABOUT), area)).map(({ made }) => made);
  return good.find((made) => n % made.length === 0) ?? good[0] ?? null;
}

const grossArea = ({ width, length }: Sizes, kerf: Length): Length => multiply(add(width, kerf), add(length, kerf));

/** So many side by side and in line, as little wood as can be. */
function smallest(design: Design, one: Sawn, count: number, fits: (piece: Sizes) => boolean): Piece | undefined {
  const { narrow, short } = tooSmall(one, design.units);
  const least = LEAST[design.units];
  const row = (size: Length, n: number): Length =>
    roundTo(add(multiply(size, rational(n)), multiply(design.kerf, rational(n - 1))), design.precision, "up");
  return Array.from({ length: count }, (_, i) => i + 1)
    .filter((beside) => (narrow || beside === 1) && (short || beside === count))
    .map((beside): Piece => {
      const inLine = Math.ceil(count / beside);
      return {
        width: max(least.width, row(one.width, beside)),
        length: max(least.length, row(one.length, inLine)),
        planedWhole: { beside, inLine, width: one.width, length: one.length },
      };
    })
    .filter(fits)
    .toSorted((a, b) => compare(grossArea(a, design.kerf), grossArea(b, design.kerf)))[0];
}

function roomsOf(design: Design, stock: Stock): (piece: Sizes) => boolean {
  const supply = supplyOf(design).supply?.get(stock.name) ?? plainSupply(stock);
  const rooms = sizesOf(stock, supply, design.kerf, TRIM[design.units]).map(({ usable }) => usable);
  return ({ width, length }) => rooms.some((room) => !less(room.width, width) && !less(room.length, length));
}
