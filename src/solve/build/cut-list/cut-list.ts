import type { Length } from "../../../units/length.ts";
import { compare } from "../../../units/rational.ts";
import type { CutLine } from "../../build.ts";
import type { Design, Hole } from "../../design.ts";
import { hingedIn } from "../order/links.ts";
import { type AlikeParts, groupAlike } from "./alike.ts";
import { markOf } from "./marks.ts";
import { toldApart } from "./name.ts";
import { notesOf } from "./notes.ts";
import { type PrintedSizes, printedSizes } from "./printed.ts";

/** One line for each kind of part: stock in the order of the source, then thickness, length and width falling, then source order. */
export function cutList(design: Design, holes: readonly Hole[], print: (length: Length) => string): readonly CutLine[] {
  const own = (id: string): readonly Hole[] => holes.filter((hole) => hole.part === id);
  const hinged = hingedIn(design);
  const groups = groupAlike(design.parts.map((part) => ({ part, holes: own(part.id) })));
  const order = new Map(design.stock.map((stock, i) => [stock.name, i]));
  const sized = groups.map((group, i) => ({
    group,
    i,
    stock: first(group).stock,
    sizes: printedSizes(first(group), design.fits),
  }));
  sized.sort(
    (a, b) =>
      (order.get(a.stock) ?? 0) - (order.get(b.stock) ?? 0) ||
      falling(a.sizes, b.sizes, "thickness") ||
      falling(a.sizes, b.sizes, "length") ||
      falling(a.sizes, b.sizes, "width") ||
      a.i - b.i,
  );
  const names = toldApart(
    sized.map(({ group, sizes }) => ({ parts: group.members.map(({ part }) => part), length: sizes.length })),
  );
  const marks = new Map(sized.map(({ group }, i) => [group, markOf(i)]));
  return sized.map(({ group, stock, sizes }, i) => ({
    mark: marks.get(group) as string,
    name: names[i] as string,
    stock,
    parts: group.members.map(({ part }) => part.id),
    ...sizes,
    mirrorOf: group.mirrors ? (marks.get(group.mirrors) ?? null) : null,
    notes: notesOf(first(group), holes, hinged, print),
  }));
}

const first = (group: AlikeParts) => (group.members[0] as AlikeParts["members"][number]).part;
const falling = (a: PrintedSizes, b: PrintedSizes, size: keyof PrintedSizes): number => compare(b[size], a[size]);
