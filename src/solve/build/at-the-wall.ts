/** What is fixed to a wall with screws: how far it stands clear of the wall, and how many studs can lie behind it. */
import { inches, type Length, millimetres } from "../../units/length.ts";
import { add, equal, less, max, min, multiply, rational, subtract, ZERO } from "../../units/rational.ts";
import { END } from "../design/hardware/at-studs.ts";
import { extent, faceAxis, isHigh } from "../design/space.ts";
import { wallOf } from "../design/use/wall.ts";
import type { Design, Part } from "../design.ts";

type Fitting = Design["fittings"][number];
type Given = Pick<Design, "fittings" | "parts" | "wall" | "units">;

const isWallScrew = ({ hardware }: Fitting): boolean => hardware[0]?.item.kind === "wall screw";

/** How far what a wall screw passes ends before the plane in which the piece lies against the wall. */
export function clearOfWall({ part, through, face }: Fitting, { parts }: Pick<Design, "parts">): Length {
  const [axis, passed] = [faceAxis(face), new Set([part, ...through])];
  const own = parts.filter(({ id }) => passed.has(id));
  // The screw goes from the face that it is put on to the other side.
  const ends = (of: Given["parts"]): readonly Length[] =>
    of.map(({ body }) => (isHigh(face) ? body.low : body.high)[axis]);
  const [mine, all] = [ends(own), ends(parts)];
  const [first, wall] = isHigh(face) ? [mine.reduce(min), all.reduce(min)] : [mine.reduce(max), all.reduce(max)];
  return isHigh(face) ? subtract(first, wall) : subtract(wall, first);
}

/** What is held off the wall, each part once, and by how much. */
export function heldOff(design: Given): readonly { readonly part: string; readonly by: Length }[] {
  const found = new Map(
    design.fittings.filter(isWallScrew).map((fitting) => [fitting.part, clearOfWall(fitting, design)] as const),
  );
  return [...found].flatMap(([part, by]) => (less(SEEN, by) ? [{ part, by }] : []));
}

/** What a screw draws together without harm. */
const SEEN = millimetres(1, 2);

const usualApart = ({ wall, units }: Pick<Design, "wall" | "units">): Length =>
  wall?.studs ?? wallOf(undefined, units, () => null).studs ?? ZERO;

/** How far apart the studs are that a plan is drawn for; null before solid masonry. */
export const studsApart = (design: Pick<Design, "wall" | "units">): Length | null =>
  design.wall?.studs === null ? null : usualApart(design);

/** What is screwed to a wall is so short that two studs, as far apart as usual, cannot both lie behind it. */
export function tooShortForTwoStuds(design: Given): boolean {
  const least = add(usualApart(design), multiply(END, rational(2)));
  const screws = design.fittings.filter(isWallScrew);
  const fixed = new Set(screws.map(({ part }) => part));
  const own = design.parts.filter(({ id }) => fixed.has(id));
  const several = screws.flatMap(({ hardware }) => hardware).length > 1;
  return several && own.length > 0 && own.every(({ body }) => less(max(extent(body, 0), extent(body, 1)), least));
}

/** Where the first of two studs may lie, from the left end of what is screwed to them, or from a part that stands there before it. */
export interface FirstOfTwo {
  /** What is screwed to them, and how far its left end lies inside that of the piece. */
  readonly part: string;
  readonly inside: Length;
  readonly from: Length;
  readonly to: Length;
  /** What stands at its left end: a rule lies against that, and the end itself is hidden. */
  readonly beside: string | null;
}

/** Where what is screwed to studs has two behind it only in some places. */
export function firstOfTwoStuds(design: Given): FirstOfTwo | null {
  const apart = studsApart(design);
  const screws = design.fittings.filter(isWallScrew);
  const fixed = new Set(screws.map(({ part }) => part));
  const [own, ...more] = design.parts.filter(({ id }) => fixed.has(id));
  const [first] = screws;
  if (!apart || !own || !first || more.length > 0 || less(extent(own.body, 0), extent(own.body, 1))) return null;
  const long = extent(own.body, 0);
  const [left, right] = [false, true].map((high) => standsBeside(own, first, high, design.parts));
  const [from, end] = [left, right].map((each) => (each ? max(END, TOOL[design.units]) : END)) as [Length, Length];
  const to = subtract(subtract(long, apart), end);
  return less(long, multiply(apart, rational(2))) && less(from, to)
    ? { part: own.id, inside: subtract(own.body.low[0], leftmost(design.parts)), from, to, beside: left ?? null }
    : null;
}

const leftmost = (parts: Given["parts"]): Length => parts.map(({ body }) => body.low[0]).reduce(min);

/** Half of what a drill and the hand round it need beside a screw. Common practice, no source. */
const TOOL = { inch: inches(5, 4), mm: millimetres(30) } as const;

/** What touches an end of a rail and stands out before the face that its screws go into, so that a drill has to pass it. */
function standsBeside(own: Part, { face }: Fitting, high: boolean, parts: Given["parts"]): string | undefined {
  const [axis, end] = [faceAxis(face), high ? own.body.high[0] : own.body.low[0]];
  return parts.find(({ id, body }) => {
    const meets = equal(high ? body.low[0] : body.high[0], end) && less(body.low[2], own.body.high[2]);
    const out = isHigh(face)
      ? subtract(body.high[axis], own.body.high[axis])
      : subtract(own.body.low[axis], body.low[axis]);
    return id !== own.id && meets && less(own.body.low[2], body.high[2]) && less(millimetres(25), out);
  })?.id;
}

/** What to do before a wall on studs where at most one of them lies behind the piece. Common practice, no source. */
export const ONE_STUD =
  "one screw goes into the middle of the stud, and where the other meets none, it goes into a hollow-wall anchor that its maker rates for the whole weight with all that is in it; or screw a board across two studs first, and fix it on that";
