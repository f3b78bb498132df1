/** What drawers run in: how wide their boxes come out, and the room between the walls that carry them. */
import type { Length } from "../../../../units/length.ts";
import { equal, less, max, min, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, INDICES } from "../../../design/space.ts";
import type { Joint, Part } from "../../../design.ts";
import { fastBodies } from "../../order/links.ts";
import { called, type Work } from "../draft.ts";

interface Run {
  readonly axis: AxisIndex;
  /** The sides of the box, and what carries them. */
  readonly sides: readonly string[];
  readonly walls: readonly [string, string];
  /** Over both sides, and between the walls. */
  readonly outside: Length;
  readonly room: Length;
  readonly method: Joint["method"];
}

/** Of each body that runs between two walls. */
function runsOf({ design, part }: Work): readonly Run[] {
  return fastBodies(design).flatMap((places): readonly Run[] => {
    const ids = new Set(places.flatMap((place) => design.parts[place]?.id ?? []));
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
    const bodies = sides.map((id) => part(id).body);
    const outside = subtract(
      bodies.map(({ high }) => high[axis]).reduce(max),
      bodies.map(({ low }) => low[axis]).reduce(min),
    );
    const sorted = less(one.body.low[axis], two.body.low[axis]) ? [one.id, two.id] : [two.id, one.id];
    return [{ axis, sides, walls: sorted as [string, string], outside, room: between, method: first.method }];
  });
}

function room({ body: a }: Part, { body: b }: Part, i: AxisIndex): Length | null {
  const gap = less(a.low[i], b.low[i]) ? subtract(b.low[i], a.high[i]) : subtract(a.low[i], b.high[i]);
  return gap.n > 0n ? gap : null;
}

/** Of a box that is closed now: the width that its run wants. */
export function boxTexts(work: Work, before: readonly string[], after: readonly string[]): readonly string[] {
  const run = runsOf(work).find(
    ({ sides }) =>
      sides.length > 1 && sides.every((id) => after.includes(id)) && !sides.every((id) => before.includes(id)),
  );
  if (!run || !less(run.outside, run.room)) return [];
  const [one, two] = run.walls.map((id) => called(work, id));
  const between =
    one === two ? `between its walls (${work.line(run.walls[0]).mark})` : `between the ${one} and the ${two}`;
  const slides = run.method.endsWith("slides");
  return [
    `Measure over both sides, in front and behind, before the glue grabs: ${work.print(subtract(run.room, run.outside))} less, for ${slides ? "both slides" : "play"}, than you measured ${between}; ${work.print(run.outside)} where that is ${work.print(run.room)}, as drawn. ${slides ? "A little less is made up with card behind a slide; what is wider binds, and" : "What is wider binds, and"} has to be planed.`,
  ];
}

/** Of a case that has both walls now: the room, which may not narrow towards the back. What is glued can be moved until that has set. */
export function roomTexts(
  work: Work,
  before: readonly string[],
  after: readonly string[],
  glued: boolean,
): readonly string[] {
  const fresh = runsOf(work).filter(
    ({ walls }) => walls.every((id) => after.includes(id)) && !walls.every((id) => before.includes(id)),
  );
  const told = fresh.filter(
    (run, i) =>
      fresh.findIndex(({ walls, room: own }) => walls.join() === run.walls.join() && equal(own, run.room)) === i,
  );
  return told.map(({ walls, room: own }) => {
    const [one, two] = walls.map((id) => called(work, id));
    return `Where drawers run, measure from the ${one} to the ${two} in front, in the middle and behind, above and below: ${work.place(own)} everywhere. ${glued ? "Where it is less or more, shift the clamps or wedge it apart with a stick of that length until the glue has set." : "Where it is less, plane what was just put on; where it is more, lay card behind it."}`;
  });
}
