/** A board that lies flat, as a beam. Millimetres, newtons. */
import { toMillimetres } from "../../../../units/length.ts";
import { type AxisIndex, indexOf } from "../../../design/space.ts";
import type { Design, Part, Stock } from "../../../design.ts";
import { evenSag, type Rectangle, rigidity } from "./beam.ts";
import { bodyOf } from "./body.ts";
import { edgesOf } from "./edges.ts";
import { type Span, spanOfEdges, spanOfMiddle } from "./span.ts";

export interface Shelf {
  readonly along: AxisIndex;
  readonly span: Span;
  /** Length of the span. */
  readonly reach: number;
  /** Whole extent in the direction of the span, and across it. */
  readonly long: number;
  readonly broad: number;
  readonly thick: number;
  /** The board itself, and after it what is glued along it. */
  readonly section: readonly [Rectangle, ...Rectangle[]];
}

export const isFlat = (part: Part): boolean => part.axes.thickness === "up";

/**
 * How a flat part reaches from support to support: in the direction in which it is stiffer. What is held at its corners only bends between
 * them. Null where nothing holds it up.
 */
export function shelfOf(part: Part, stock: Stock, design: Design): Shelf | null {
  if (!isFlat(part)) return null;
  const [first, second] = ways(part, stock, design, spanOfMiddle);
  if (first !== undefined && second !== undefined) return sagUnder(1, second) < sagUnder(1, first) ? second : first;
  if (first !== undefined) return first;
  const corners = ways(part, stock, design, spanOfEdges).filter(({ reach }) => reach > 0);
  return corners.toSorted((a, b) => b.reach - a.reach)[0] ?? null;
}

function ways(part: Part, { stiffness }: Stock, design: Design, reachOf: typeof spanOfMiddle): readonly Shelf[] {
  if (stiffness === undefined) return [];
  return (["length", "width"] as const).flatMap((size): Shelf[] => {
    const along = indexOf(part.axes[size]);
    const span = reachOf(part, along, design);
    if (span === null) return [];
    const beside = indexOf(part.axes[size === "length" ? "width" : "length"]);
    const [from, to] = bodyOf(part, along);
    const [low, high] = bodyOf(part, beside);
    const [broad, thick, [top]] = [high - low, toMillimetres(part.thickness), bodyOf(part, 2).toReversed() as [number]];
    const modulus = 1000 * (size === "length" ? stiffness.along : stiffness.across);
    const board: Rectangle = { broad, low: top - thick, high: top, modulus };
    const section = [board, ...edgesOf(part, along, span, design)] as const;
    return [{ along, span, reach: span.to - span.from, long: to - from, broad, thick, section }];
  });
}

/** How far its middle goes down at first under a force spread over the whole board. */
export const sagUnder = (force: number, { reach, long, section }: Shelf): number =>
  evenSag((force * reach) / long, reach, rigidity(section));
