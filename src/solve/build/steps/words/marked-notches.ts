/** Notches that are marked from the posts they go round, as those stand. */
import { absolute, type Length, less, subtract, ZERO } from "../../../../units/index.ts";
import { makingOf } from "../../../design/making/plain.ts";
import { type AxisIndex, indexOf } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import { notchFor } from "../../notched.ts";
import { called, listed, series, type Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { spanOf } from "./boxes.ts";

export function notchTexts(work: Work, part: Part, brief: boolean): readonly string[] {
  const round = makingOf(part).notchedRound ?? [];
  if (round.length === 0) return [];
  if (brief) return [`Notches: marked from ${listed(work, round)}, as its step tells.`];
  const plays = (["length", "width"] as const).flatMap((size) => {
    const own = round.map((id) => ({ id, play: playAt(part, work.part(id), indexOf(part.axes[size])) }));
    const free = own.filter(({ play }) => less(ZERO, play));
    return groupedBy(free, ({ play }) => work.print(play)).map((alike) => {
      const [{ play }] = alike as [(typeof free)[number]];
      const which =
        alike.length === round.length
          ? ""
          : `those for ${listed(
              work,
              alike.map(({ id }) => id),
            )} `;
      return `${which}${work.print(play)} ${size === "length" ? "along its length" : "across its width"}`;
    });
  });
  const play = plays.length > 0 ? ` Saw them larger than that by their play: ${series(plays)}.` : "";
  const own = called(work, part.id);
  const posts = listed(work, round);
  const counts = "not by the figures of the next step";
  return round.every((id) => endsAbove(part, work.part(id)))
    ? [
        `Notches: mark them from ${posts} as they stand, ${counts}. Lay the ${own} on their ends, over where it will come, standing out on every side as much as it will, and draw round each from below.${play}`,
      ]
    : [
        `Notches: before it has them it does not get to its place. Measure how far ${posts} stand into that from where the ends and the edges of the ${own} will lie, and mark that on it, ${counts}.${play}`,
      ];
}

/** Whether a part that lies flat can be laid on the end of a post that it is notched round, as near above its place as it is thick. */
const endsAbove = ({ body, axes, thickness }: Part, { body: post }: Part): boolean =>
  indexOf(axes.thickness) === 2 &&
  !less(post.high[2], body.high[2]) &&
  less(subtract(post.high[2], body.high[2]), thickness);

/** How far the inner wall of a notch stays off what goes through it. */
function playAt(part: Part, other: Part, axis: AxisIndex): Length {
  const notch = notchFor(part, other);
  if (!notch) return ZERO;
  const { low, high } = spanOf(notch, axis);
  // The inner wall is that which is not an edge of the part.
  const atLow = !less(part.body.low[axis], low);
  return absolute(atLow ? subtract(high, other.body.high[axis]) : subtract(other.body.low[axis], low));
}
