/** Drawers, and the walls that they run between. */
import type { Length } from "../../../../units/length.ts";
import { equal, less, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, enclosing, extent, INDICES } from "../../../design/space.ts";
import type { Box, Joint, Part } from "../../../design.ts";
import { fastIds } from "../../order/links.ts";
import type { Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { theWhich, whichOf } from "./which.ts";

export interface Run {
  /** The sides of the box, and what carries them. */
  readonly sides: readonly string[];
  readonly walls: readonly [string, string];
  /** Over both sides, and between the walls. */
  readonly outside: Length;
  readonly room: Length;
  /** As much room on one side as on the other. */
  readonly even: boolean;
  readonly box: Box;
  readonly method: Joint["method"];
}

/** Of each body that runs between two walls. */
export function runsOf({ design, part }: Work): readonly Run[] {
  return fastIds(design).flatMap((body): readonly Run[] => {
    const ids = new Set(body);
    const own = design.joints.filter(
      ({ kind, parts: [side, wall] }) => kind === "running" && ids.has(side) && !ids.has(wall),
    );
    const walls = [...new Set(own.map(({ parts: [, wall] }) => wall))].map(part);
    const sides = [...new Set(own.map(({ parts: [side] }) => side))];
    const [one, two] = walls;
    const [first] = own;
    if (!one || !two || !first || walls.length !== 2 || [...walls, ...sides.map(part)].some(({ turned }) => turned))
      return [];
    const axis = INDICES.find((i) => room(one, two, i) !== null);
    const between = axis === undefined ? null : room(one, two, axis);
    if (axis === undefined || between === null) return [];
    const box = sides.map((id) => part(id).body).reduce(enclosing);
    const outside = extent(box, axis);
    const [low, high] = less(one.body.low[axis], two.body.low[axis]) ? [one, two] : [two, one];
    const even = equal(subtract(box.low[axis], low.body.high[axis]), subtract(high.body.low[axis], box.high[axis]));
    const { method } = first;
    return [{ sides, walls: [low.id, high.id], outside, room: between, even, box, method }];
  });
}

function room({ body: a }: Part, { body: b }: Part, i: AxisIndex): Length | null {
  const gap = less(a.low[i], b.low[i]) ? subtract(b.low[i], a.high[i]) : subtract(a.low[i], b.high[i]);
  return gap.n > 0n ? gap : null;
}

/** Some runs, with the word that tells each of them from all others; null where none are needed, or none do. */
export function whichRuns(all: readonly Run[]): (some: readonly Run[]) => string | null {
  const words = whichOf(all.map(({ box }) => box));
  return (some) =>
    words && some.length < all.length
      ? theWhich(
          some.map((run) => words[all.indexOf(run)] as string),
          "drawer",
        )
      : null;
}

/** The drawers that some joints let run, in groups of those with the same room beside them, each with the words for it. */
export function besideDrawers(work: Work, joints: readonly Joint[]): readonly Beside[] {
  const sides = new Set(joints.map(({ parts: [side] }) => side));
  const all = runsOf(work);
  const own = all.filter((run) => run.sides.some((id) => sides.has(id)));
  const which = whichRuns(all);
  return groupedBy(own, (run) => work.print(subtract(run.room, run.outside))).map((runs) => {
    const { room: between, outside } = runs[0] as Run;
    return { both: subtract(between, outside), even: runs.every(({ even }) => even), of: which(runs) };
  });
}

/** Room beside some drawers. */
export interface Beside {
  /** On both sides together. */
  readonly both: Length;
  /** As much on one side as on the other. */
  readonly even: boolean;
  /** "the left and the right drawer"; null for all, or where no words tell them apart. */
  readonly of: string | null;
}
