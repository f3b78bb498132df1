import { inches, type Length } from "../../../../units/length.ts";
import { less, min, subtract } from "../../../../units/rational.ts";
import { indexOf } from "../../../design/space.ts";
import type { Fastener } from "../../../design.ts";
import { listed, type Work } from "../draft.ts";

/** A nail that starts nearer than this to a face of the edge that it goes into, and drifts, comes out there. Common practice, no source. */
const NEAR = inches(3, 16);

/** Nails set near to one face of the edge that they go into, like those over the ledge of a rabbet, are leant towards its middle. */
export function leanTexts(work: Work, nails: readonly Fastener[]): readonly string[] {
  if (nails[0]?.kind !== "nail" && nails[0]?.kind !== "brad") return [];
  const near = nails.flatMap((nail) => {
    const from = nearFace(work, nail);
    return from ? [{ nail, from }] : [];
  });
  const [first, ...others] = near.map(({ from }) => from);
  if (first === undefined) return [];
  const into = [...new Set(near.map(({ nail }) => nail.into))];
  const which = near.length === nails.length ? "them" : `those that go into ${listed(work, into)}`;
  const least = others.reduce(min, first);
  return [
    `Lean ${which} a little, the points towards the middle of the wood: they start only ${work.place(least)} from its face, and one that drifts comes out there.`,
  ];
}

/** How far from the nearer face of what it goes into a nail starts, where that is little and the other face lies farther; else null. */
function nearFace(work: Work, { into, head, direction }: Fastener): Length | null {
  const part = work.part(into);
  const axis = indexOf(part.axes.thickness);
  if (part.turned || Math.abs(direction[axis]) > 0.1) return null;
  const [low, high] = [subtract(head.at[axis], part.body.low[axis]), subtract(part.body.high[axis], head.at[axis])];
  const [near, far] = less(low, high) ? [low, high] : [high, low];
  return less(near, NEAR) && less(near, far) ? near : null;
}
