import type { Blank, Cut, Layout, Placement, Rectangle } from "../../../src/solve/build.ts";
import { add, equal, type Length, less, subtract } from "../../../src/units/index.ts";

/** Carries the cuts of a layout out, and says everything that does not come out as drawn. Knows nothing of how it was found. */
export function faultsOf(layout: Layout, blanks: ReadonlyMap<string, Blank>): string[] {
  const faults: string[] = [];
  const { squaring, width, length, kerf } = layout;
  let pieces: Rectangle[] = [
    { x: squaring, y: squaring, width: subtract(width, squaring), length: subtract(length, squaring) },
  ];
  layout.cuts.forEach((cut, index) => {
    if (cut.number !== index + 1) faults.push(`cut ${cut.number} is number ${index + 1}`);
    const hit = pieces.filter((piece) => divides(cut, piece));
    const [piece] = hit;
    if (hit.length !== 1 || piece === undefined) faults.push(`cut ${cut.number} divides ${hit.length} pieces`);
    else pieces = pieces.flatMap((p) => (p === piece ? halves(cut, p, kerf, faults) : [p]));
  });
  for (const placement of layout.placements) {
    const own = pieces.filter((piece) => same(piece, placement));
    if (own.length !== 1) faults.push(`${placement.blank} is ${own.length} pieces`);
    pieces = pieces.filter((piece) => !same(piece, placement));
    faults.push(...misfits(placement, blanks.get(placement.blank), kerf));
    if (less(width, add(placement.x, placement.width)) || less(length, add(placement.y, placement.length)))
      faults.push(`${placement.blank} lies over the edge`);
  }
  for (const offcut of layout.offcuts)
    if (!pieces.some((piece) => same(piece, offcut))) faults.push("an offcut is no piece that is left over");
  layout.placements.forEach((a, i) => {
    for (const b of layout.placements.slice(i + 1))
      if (!clear(a, b, kerf)) faults.push(`${a.blank} and ${b.blank} lie closer than a kerf`);
  });
  return faults;
}

const end = (r: Rectangle): readonly [Length, Length] => [add(r.x, r.width), add(r.y, r.length)];
const same = (a: Rectangle, b: Rectangle): boolean =>
  equal(a.x, b.x) && equal(a.y, b.y) && equal(a.width, b.width) && equal(a.length, b.length);

/** A cut runs from edge to edge of the piece, strictly inside it. */
function divides({ kind, from, to }: Cut, piece: Rectangle): boolean {
  const [right, top] = end(piece);
  return kind === "rip"
    ? equal(from[0], to[0]) &&
        less(piece.x, from[0]) &&
        less(from[0], right) &&
        equal(from[1], piece.y) &&
        equal(to[1], top)
    : equal(from[1], to[1]) &&
        less(piece.y, from[1]) &&
        less(from[1], top) &&
        equal(from[0], piece.x) &&
        equal(to[0], right);
}

function halves({ kind, from, fence, number }: Cut, piece: Rectangle, kerf: Length, faults: string[]): Rectangle[] {
  const [right, top] = end(piece);
  const rip = kind === "rip";
  const [near, beyond] = rip ? [piece.x, right] : [piece.y, top];
  const at = rip ? from[0] : from[1];
  if (!equal(fence, subtract(at, near))) faults.push(`the fence of cut ${number} is not set to its distance`);
  const start = add(at, kerf);
  const first = rip ? { ...piece, width: subtract(at, near) } : { ...piece, length: subtract(at, near) };
  if (!less(start, beyond)) return [first];
  const rest = subtract(beyond, start);
  return [first, rip ? { ...piece, x: start, width: rest } : { ...piece, y: start, length: rest }];
}

function misfits(placement: Placement, blank: Blank | undefined, kerf: Length): string[] {
  if (blank === undefined) return [`${placement.blank} is no blank`];
  const [across, along] = placement.turned ? [blank.length, blank.width] : [blank.width, blank.length];
  // What is cut to size later may be a shaving larger.
  const fits = (size: Length, least: Length): boolean =>
    equal(size, least) || (blank.why === "cut later" && less(least, size) && less(subtract(size, least), kerf));
  return [
    ...(fits(placement.width, across) && fits(placement.length, along) ? [] : [`${blank.id} has another size`]),
    ...(blank.grain === "length" && placement.turned ? [`${blank.id} lies across the grain`] : []),
    ...(blank.grain === "width" && !placement.turned ? [`${blank.id} lies across the grain`] : []),
    ...(blank.mark === placement.mark ? [] : [`${blank.id} has another mark`]),
  ];
}

function clear(a: Rectangle, b: Rectangle, kerf: Length): boolean {
  const apart = (p: Length, size: Length, q: Length): boolean => !less(q, add(add(p, size), kerf));
  return apart(a.x, a.width, b.x) || apart(b.x, b.width, a.x) || apart(a.y, a.length, b.y) || apart(b.y, b.length, a.y);
}
