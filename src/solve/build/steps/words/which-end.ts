/** Which end of a part goes where that looks the same both ways but for its holes. */
import { isSame, type Length } from "../../../../units/length.ts";
import { less, min, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, faceOf, INDICES } from "../../../design/space.ts";
import type { Hole, Part } from "../../../design.ts";
import { LOCATED } from "../../jigs/spacers.ts";
import { panesOf } from "../../order/glazing.ts";
import { listed, series, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { calledAmong } from "./by-place.ts";
import { sideWord } from "./measured.ts";

/** "The holes for the side slide lie nearer to the front end of the left packing (G).": of what comes by itself, and is located by no joint. */
export function endTexts(work: Work, moves: readonly Move[]): readonly string[] {
  const panes = panesOf(work.design);
  const told = moves.flatMap((move): readonly { readonly id: string; readonly words: string }[] => {
    const [id, ...more] = move.arriving;
    // Beads have their own sentence.
    if (
      id === undefined ||
      more.length > 0 ||
      move.work.some(({ joint }) => joint.parts.some((part) => panes.has(part))) ||
      move.work.some(({ joint }) => LOCATED.has(joint.method))
    )
      return [];
    const words = nearerTo(work, work.part(id));
    return words === null ? [] : [{ id, words }];
  });
  const coming = told.map(({ id }) => id);
  return groupedBy(told, ({ id, words }) => `${work.line(id).mark} ${words}`).map((own) => {
    const [{ id, words }, ...more] = own as [(typeof told)[number]];
    const ids = own.map((each) => each.id);
    return `${words} of ${more.length > 0 ? `each of ${listed(work, ids)}` : `the ${calledAmong(work, id, coming)}`}.`;
  });
}

/** Only holes tell its ends apart, and they lie nearer to one than to the other; null where it fits one way only, or either way. */
function nearerTo(work: Work, part: Part): string | null {
  if (part.turned || part.features.length > 0) return null;
  const bored = work.plan.holes.filter((hole) => hole.part === part.id && hole.atBench);
  for (const holes of groupedBy(bored, (hole) => `${whatFor(work, [hole])} ${boredAlong(hole)}`)) {
    const sides = INDICES.filter((i) => i !== boredAlong(holes[0] as Hole)).flatMap((axis) => {
      const high = nearer(part, holes, axis);
      return high === null ? [] : [`${faceOf(axis, high)} ${sideWord(part, axis)}`];
    });
    if (sides.length > 0)
      return `The ${whatFor(work, holes)} lie${holes.length === 1 ? "s" : ""} nearer to the ${series(sides)}`;
  }
  return null;
}

/** Whether holes lie nearer to the high side than to the low one; null where they lie as near to both. */
function nearer({ body }: Part, holes: readonly Hole[], axis: AxisIndex): boolean | null {
  const least = (all: readonly Length[]): Length => all.reduce(min);
  const low = least(holes.map(({ at }) => subtract(at[axis], body.low[axis])));
  const high = least(holes.map(({ at }) => subtract(body.high[axis], at[axis])));
  return isSame(low, high) ? null : less(high, low);
}

const boredAlong = ({ direction }: Hole): AxisIndex | undefined => INDICES.find((i) => Math.abs(direction[i]) > 0.9);

function whatFor({ plan }: Work, holes: readonly Hole[]): string {
  const word = holes.length === 1 ? "hole" : "holes";
  const item = plan.hardware.find(({ id }) => id === holes[0]?.for)?.item.kind.replace(/ for an? .*$/u, "");
  if (item !== undefined) return `${word} for the ${item}`;
  const kind = plan.fasteners.find(({ id }) => id === holes[0]?.for)?.kind;
  return kind === undefined ? word : `${/screw/u.test(kind) ? "screw" : kind} ${word}`;
}
