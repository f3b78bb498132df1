/** What is screwed on by its end, or between others, and lies on nothing meanwhile: blocks hold it at its height. */
import { dot } from "../../../geometry/vec.ts";
import { type Length, UNITS_PER_MM } from "../../../units/length.ts";
import { less, max, min, sign, subtract, toNumber } from "../../../units/rational.ts";
import { type AxisIndex, extent, INDICES } from "../../design/space.ts";
import type { Direction, Part } from "../../design.ts";
import { LOOSE } from "../order/links.ts";
import { definite, type Work } from "./draft.ts";
import { LEVEL, STEEP } from "./lying.ts";
import { type Move, togetherAfter } from "./moves.ts";
import { BLOCKS, standingOn } from "./resting.ts";

/** Nearer, two faces touch. */
const NEAR = UNITS_PER_MM / 10;

/** A sentence for those at one height; common practice, no source. */
export function proppedTexts(work: Work, moves: readonly Move[], up: Direction): readonly string[] {
  const hanging = moves.flatMap((move) => (hangsFree(work, move, moves, up) ? move.arriving : []));
  const heights = [...new Set(hanging.map((id) => work.print(heightOf(work, moves, id, up))))];
  const on = standingOn(work, (moves[0] as Move).present, up);
  return heights.flatMap((height) => {
    const ids = hanging.filter((id) => work.print(heightOf(work, moves, id, up)) === height);
    const [nothing, is] = ids.length > 1 ? ["They lie", "they are"] : ["It lies", "it is"];
    const later = laterMates(work, moves, ids);
    const until =
      later.length > 0
        ? `, and leave them there until ${definite(work, later)} ${later.length > 1 ? "hold" : "holds"} the other end`
        : "";
    // On blocks the work is told to stand by itself.
    const high = !on || on.blocks < NEAR ? ` ${height} high, or offcuts cut to that,` : "";
    return [
      `${nothing} on nothing yet: set blocks${high} under ${definite(work, ids)}${until ? " at the free end" : ""} while ${is} screwed${until}.`,
    ];
  });
}

/** Whether it is driven level into its length or width, far from the bench, and nothing that is there is under it. */
function hangsFree(work: Work, move: Move, moves: readonly Move[], up: Direction): boolean {
  const { starts, arrivesBuilt, arriving, work: joined } = move;
  const drives = joined.flatMap((each) => each.drives);
  const [id] = arriving;
  if (starts || arrivesBuilt || !id || drives.length === 0 || joined.some(({ joint }) => joint.glue)) return false;
  const part = work.part(id);
  const along = INDICES.find((i) => drives.every(({ fastener }) => Math.abs(fastener.direction[i]) > STEEP));
  return (
    along !== undefined &&
    drives.every(({ fastener }) => Math.abs(dot(fastener.direction, up)) < LEVEL) &&
    less(BLOCKS, extent(part.body, along)) &&
    sign(heightOf(work, moves, id, up)) > 0 &&
    !joined.some(({ joint }) => joint.contact.some(({ normal }) => Math.abs(dot(normal, up)) > STEEP)) &&
    !togetherAfter(moves).some((other) => other !== id && isUnder(work.part(other), part, up))
  );
}

const axisOf = (up: Direction): AxisIndex => INDICES.find((i) => up[i] !== 0) as AxisIndex;

function isUnder(other: Part, part: Part, up: Direction): boolean {
  const axis = axisOf(up);
  const gap =
    up[axis] > 0
      ? subtract(part.body.low[axis], other.body.high[axis])
      : subtract(other.body.low[axis], part.body.high[axis]);
  const meets = INDICES.every(
    (i) => i === axis || (less(part.body.low[i], other.body.high[i]) && less(other.body.low[i], part.body.high[i])),
  );
  return meets && Math.abs(toNumber(gap)) < NEAR;
}

/** Above what lies lowest of the work. */
function heightOf(work: Work, moves: readonly Move[], id: string, up: Direction): Length {
  const axis = axisOf(up);
  const bodies = togetherAfter(moves).map((each) => work.part(each).body);
  const { low, high } = work.part(id).body;
  return up[axis] > 0
    ? subtract(low[axis], bodies.map((body) => body.low[axis]).reduce(min))
    : subtract(bodies.map((body) => body.high[axis]).reduce(max), high[axis]);
}

/** What they are joined to later. */
function laterMates({ design }: Work, moves: readonly Move[], ids: readonly string[]): readonly string[] {
  const here = new Set(togetherAfter(moves));
  const mates = design.joints
    .filter(({ parts, kind }) => !LOOSE.includes(kind) && parts.some((id) => ids.includes(id)))
    .flatMap(({ parts }) => parts.filter((id) => !here.has(id)));
  return [...new Set(mates)];
}
