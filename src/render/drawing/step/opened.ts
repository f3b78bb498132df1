/** What hides inside a piece that is shut is shown with the doors, lids and drawers open that stand before it. */
import {
  aboutPoint,
  type Placed,
  type Placement,
  placedSolid,
  Stage,
  turnAbout,
  type Vec,
} from "../../../geometry/index.ts";
import type { BuiltMotion } from "../../../solve/build.ts";
import type { Pose } from "../../../solve/design.ts";
import { add, rational } from "../../../units/index.ts";
import type { Marked } from "../labels.ts";
import { shareSeen } from "../visibility.ts";
import { candidates } from "./views.ts";

/** Less of a thing than this is not seen. */
const ENOUGH = 0.15;
/** Degrees: a door that stands square to its case hides least on either side. */
const SQUARE = 90;

/** The things, and which of the motions are open. */
export interface Opened {
  readonly items: readonly Marked[];
  readonly motions: readonly BuiltMotion[];
}

/** `fresh`: ids of what has to be seen; `ceiling`: what points up the page. */
export function opened(
  items: readonly Marked[],
  fresh: ReadonlySet<string>,
  motions: readonly BuiltMotion[],
  ceiling: Vec,
): Opened {
  const shut: Opened = { items, motions: [] };
  const there = new Set(items.map(({ id }) => id));
  const mounted = motions.filter(({ moves }) => moves.some((id) => there.has(id)));
  if (mounted.length === 0) return shut;
  const hidden = hiddenOf(items, fresh, ceiling);
  if (hidden.length === 0) return shut;
  // What is fitted to a door is reached when that door is open; else whatever opens may stand before it.
  const own = mounted.filter(({ moves }) => hidden.some((id) => moves.includes(id)));
  const open = own.length > 0 ? own : mounted;
  const seen = { items: open.reduce(withOpen, items), motions: open };
  return hiddenOf(seen.items, fresh, ceiling).length < hidden.length ? seen : shut;
}

const hiddenOf = (items: readonly Placed[], fresh: ReadonlySet<string>, ceiling: Vec): readonly string[] => {
  const stages = candidates(ceiling).map((view) => new Stage(items, view));
  return items
    .filter((item) => fresh.has(item.id) && stages.every((stage) => shareSeen(item, stage) < ENOUGH))
    .map(({ id }) => id);
};

function withOpen(items: readonly Marked[], { kind, moves, poses, range }: BuiltMotion): readonly Marked[] {
  const wanted = kind === "swing" ? Math.min(SQUARE, range) : range / 2;
  const pose = poses.findLast(({ at }) => at <= wanted);
  const placement = pose && placementOf(pose);
  if (!placement) return items;
  return items.map((item) => (moves.includes(item.id) ? { ...item, solid: placedSolid(item.solid, placement) } : item));
}

/** Null where it turns about a line that is square to no face of the piece. */
export function placementOf({ rotate: { about, degrees }, shift }: Pose): Placement | null {
  const [through, line] = about;
  const axis = ([0, 1, 2] as const).find((i) => Math.abs(line[i]) > 1 - 1e-9);
  if (axis === undefined) return null;
  const turn = turnAbout(axis, rational(Math.round(FINE * degrees * Math.sign(line[axis])), FINE));
  const there = aboutPoint(turn, exact(through));
  const by = exact(shift);
  return { ...there, shift: [add(there.shift[0], by[0]), add(there.shift[1], by[1]), add(there.shift[2], by[2])] };
}

/** Parts of a degree that a turn is drawn to. */
const FINE = 8;

const exact = ([x, y, z]: Vec) => [rational(Math.round(x)), rational(Math.round(y)), rational(Math.round(z))] as const;
