import type { Length } from "../../../units/length.ts";
import { add, less, max, multiply, rational, sign, subtract, sum, ZERO } from "../../../units/rational.ts";
import type { Cut, Placement, Rectangle } from "../../build.ts";
import type { Item, Shape } from "./item.ts";
import type { Sawn } from "./saw.ts";
import type { Piece } from "./search/problem.ts";

interface Size {
  readonly width: Length;
  readonly length: Length;
}

/**
 * Cuts a piece as its tree says, exactly: strips as wide as the widest of what is in them, all cuts of one direction that follow one another first,
 * then the strips one after another. `cuts` are those made before; numbers follow on from them.
 */
export function sawTree(
  whole: Rectangle,
  root: Piece,
  items: readonly Item[],
  kerf: Length,
  before: readonly Cut[] = [],
): Sawn {
  const cuts: Cut[] = [...before];
  const placements: Placement[] = [];
  const rests: Rectangle[] = [];
  const jobs: { readonly piece: Rectangle; readonly tree: Piece }[] = [{ piece: whole, tree: root }];
  const shapeOf = ({ part, way }: Piece): Shape => (items[part] as Item).shapes[way] as Shape;
  const sizeOf = (tree: Piece): Size => {
    if (tree.part >= 0) {
      const { across, along } = shapeOf(tree);
      return { width: across, length: along };
    }
    const kids = tree.kids.map(sizeOf);
    const kerfs = multiply(kerf, rational(Math.max(0, kids.length - 1)));
    const [widths, lengths] = [kids.map(({ width }) => width), kids.map(({ length }) => length)];
    const most = (all: readonly Length[]): Length => all.reduce(max, ZERO);
    return tree.rip
      ? { width: add(sum(widths), kerfs), length: most(lengths) }
      : { width: most(widths), length: add(sum(lengths), kerfs) };
  };

  /** Cuts what lies near the origin off the piece; returns it and the rest beyond the kerf, if anything is left. */
  const divide = (piece: Rectangle, rip: boolean, size: Length): [Rectangle, Rectangle | null] => {
    const side = rip ? "width" : "length";
    if (!less(size, piece[side])) return [piece, null];
    const rest = subtract(subtract(piece[side], size), kerf);
    const [x, y] = [add(piece.x, size), add(piece.y, size)];
    const number = cuts.length + 1;
    const far = sign(rest) > 0;
    if (rip) {
      cuts.push({ number, kind: "rip", from: [x, piece.y], to: [x, add(piece.y, piece.length)], fence: size });
      return [{ ...piece, width: size }, far ? { ...piece, x: add(x, kerf), width: rest } : null];
    }
    cuts.push({ number, kind: "crosscut", from: [piece.x, y], to: [add(piece.x, piece.width), y], fence: size });
    return [{ ...piece, length: size }, far ? { ...piece, y: add(y, kerf), length: rest } : null];
  };

  for (let job = jobs.shift(); job !== undefined; job = jobs.shift()) {
    const { tree } = job;
    if (tree.part >= 0) {
      const { across, along, turned } = shapeOf(tree);
      const [strip, aside] = divide(job.piece, true, across);
      const [near, beyond] = divide(strip, false, along);
      for (const rest of [aside, beyond]) if (rest !== null) rests.push(rest);
      const { id: blank, mark } = (items[tree.part] as Item).blank;
      placements.push({ ...near, blank, mark, turned });
      continue;
    }
    let rest: Rectangle | null = job.piece;
    // The largest first: equal settings of the fence follow one another.
    for (const kid of tree.kids.toSorted((a, b) => (tree.rip ? b.width - a.width : b.length - a.length))) {
      if (rest === null) throw new Error("a piece is too small for what is in it");
      const size: Size = sizeOf(kid);
      const [near, more]: [Rectangle, Rectangle | null] = divide(rest, tree.rip, tree.rip ? size.width : size.length);
      jobs.push({ piece: near, tree: kid });
      rest = more;
    }
    if (rest !== null) rests.push(rest);
  }
  return { cuts, placements, rests };
}
