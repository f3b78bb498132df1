import { add, type Length, less, max, sign, subtract, ZERO } from "../../../units/index.ts";
import type { Cut, Placement, Rectangle } from "../../build.ts";
import type { Item, Shape } from "./item.ts";
import { type Piece, partsIn } from "./search/problem.ts";

/** What sawing a piece gives. */
export interface Sawn {
  readonly cuts: readonly Cut[];
  readonly placements: readonly Placement[];
  /** Every piece that is left over, however small. */
  readonly rests: readonly Rectangle[];
}

/**
 * Cuts a piece as its plan says, exactly: the whole piece first, then its strips one after another, so that long cuts come early;
 * strips of one size follow one another. Strips are as narrow as what lies in them, but for shavings on what is cut to size later. `before` are cuts made before, such as squaring an end;
 * numbers follow on from them.
 */
export function saw(
  whole: Rectangle,
  plan: Piece,
  items: readonly Item[],
  kerf: Length,
  before: readonly Cut[] = [],
): Sawn {
  const cuts: Cut[] = [...before];
  const placements: Placement[] = [];
  const rests: Rectangle[] = [];
  const jobs: { readonly rectangle: Rectangle; readonly piece: Piece }[] = [{ rectangle: whole, piece: plan }];

  /** Cuts what lies near the origin off; returns it and the rest beyond the kerf, if anything is left. */
  const divide = (from: Rectangle, rip: boolean, size: Length): [Rectangle, Rectangle | null] => {
    const side = rip ? "width" : "length";
    if (!less(size, from[side])) return [from, null];
    const rest = subtract(subtract(from[side], size), kerf);
    const [x, y] = [add(from.x, size), add(from.y, size)];
    const number = cuts.length + 1;
    cuts.push(
      rip
        ? { number, kind: "rip", from: [x, from.y], to: [x, add(from.y, from.length)], fence: size }
        : { number, kind: "crosscut", from: [from.x, y], to: [add(from.x, from.width), y], fence: size },
    );
    const beyond = rip ? { x: add(x, kerf), width: rest } : { y: add(y, kerf), length: rest };
    return [{ ...from, [side]: size }, sign(rest) > 0 ? { ...from, ...beyond } : null];
  };

  /** The same, but where less than the saw takes is left on what a later step cuts to size: nothing is gained but a shaving. */
  const part = (from: Rectangle, rip: boolean, size: Length, piece: Piece): [Rectangle, Rectangle | null] => {
    const shaving = less(subtract(from[rip ? "width" : "length"], size), kerf);
    const later = shaving && partsIn(piece).every((each) => items[each]?.blank.why === "cut later");
    return later ? [from, null] : divide(from, rip, size);
  };

  for (let job = jobs.shift(); job !== undefined; job = jobs.shift()) {
    const { piece, rectangle } = job;
    if (piece.part >= 0) {
      const [item, shape] = exactWay(items, piece);
      const [near, beside] = part(rectangle, true, shape.across, piece);
      const [own, along] = part(near, false, shape.along, piece);
      placements.push({ ...own, blank: item.blank.id, mark: item.blank.mark, turned: shape.turned });
      for (const rest of [beside, along]) if (rest !== null) rests.push(rest);
      continue;
    }
    let rest: Rectangle | null = rectangle;
    for (const [kid, size] of largestFirst(piece, items, kerf)) {
      if (rest === null) throw new Error("a piece is cut into more than it holds");
      const [near, beyond]: [Rectangle, Rectangle | null] = part(rest, piece.rip, size, kid);
      jobs.push({ rectangle: near, piece: kid });
      rest = beyond;
    }
    if (rest !== null) rests.push(rest);
  }
  return { cuts, placements, rests };
}

/** The kids of a division with their exact sizes; equal ones stand together. */
function largestFirst(piece: Piece, items: readonly Item[], kerf: Length): readonly (readonly [Piece, Length])[] {
  return piece.kids
    .map((kid): readonly [Piece, Length] => [kid, extent(kid, piece.rip, items, kerf)])
    .toSorted(([, a], [, b]) => sign(subtract(b, a)));
}

/** How wide, or long, the contents of a piece are. */
function extent(piece: Piece, wide: boolean, items: readonly Item[], kerf: Length): Length {
  if (piece.part >= 0) {
    const [, { across, along }] = exactWay(items, piece);
    return wide ? across : along;
  }
  const sizes = piece.kids.map((kid) => extent(kid, wide, items, kerf));
  if (piece.rip !== wide) return sizes.reduce(max, ZERO);
  return sizes.slice(1).reduce((so, size) => add(add(so, size), kerf), sizes[0] ?? ZERO);
}

function exactWay(items: readonly Item[], { part, way }: Piece): readonly [Item, Shape] {
  const item = items[part];
  const shape = item?.shapes[way];
  if (item === undefined || shape === undefined) throw new Error(`no part ${part} that lies the way ${way}`);
  return [item, shape];
}
