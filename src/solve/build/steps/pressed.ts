/** What is screwed on from behind what it lies against: the drill pushes it off while nothing holds it there. */
import { dot } from "../../../geometry/vec.ts";
import { inches, less, subtract, toNumber, UNITS_PER_MM } from "../../../units/index.ts";
import { extent, INDICES, indexOf } from "../../design/space.ts";
import type { Direction, Part } from "../../design.ts";
import { lieBeside } from "./bounding.ts";
import { boxOf } from "./box-of.ts";
import { definite, type Work } from "./draft.ts";
import { LEVEL, STEEP } from "./lying.ts";
import type { Move } from "./moves.ts";

/** Nearer, two faces touch. */
const NEAR = UNITS_PER_MM / 10;

/** What is shorter and narrower one hand holds, the other drives. Common practice, no source. */
const HAND = inches(12);

/** Common practice, no source. */
export function pressedTexts(work: Work, moves: readonly Move[], up: Direction): readonly string[] {
  const loose = moves.filter((move) => isPushedOff(work, move, up));
  const ids = loose.flatMap(({ arriving }) => arriving);
  if (ids.length === 0) return [];
  const them = ids.length > 1 ? "them" : "it";
  const mates = [...new Set(loose.flatMap((move) => drivesOf(move).flatMap(({ fastener }) => fastener.through)))];
  return [
    `The drill pushes ${definite(work, ids)} off ${definite(work, mates)}: have a second person press ${them} against ${mates.length > 1 ? "these" : "that"} from the other side, or clamp ${them} there, until the first screws hold.`,
  ];
}

const drivesOf = ({ work }: Move) => work.flatMap(({ drives }) => drives);

/** Whether all that fastens what comes goes into it level, from behind what it lies against, and nothing stands behind it. */
function isPushedOff(work: Work, move: Move, up: Direction): boolean {
  const { starts, arrivesBuilt, arriving, present, work: joined } = move;
  const drives = drivesOf(move);
  const [id] = arriving;
  if (
    starts ||
    arrivesBuilt ||
    !id ||
    drives.length === 0 ||
    joined.some(({ joint }) => joint.glue || joint.setWith !== undefined)
  )
    return false;
  const part = work.part(id);
  const [first] = drives as [(typeof drives)[number]];
  const way = first.fastener.direction;
  return (
    drives.every(
      ({ tool, fastener }) =>
        fastener.kind.endsWith("screw") &&
        tool !== "hand" &&
        fastener.into === id &&
        fastener.head.seat !== "pocket" &&
        dot(fastener.direction, way) > STEEP &&
        Math.abs(dot(fastener.direction, up)) < LEVEL,
    ) &&
    less(HAND, extent(part.body, indexOf(part.axes.length))) &&
    !present.some((other) => stopsIt(part, work.part(other), way))
  );
}

/** Whether one touches the other on the side to which it is pushed. */
function stopsIt(part: Part, other: Part, way: Direction): boolean {
  const axis = INDICES.find((i) => Math.abs(way[i]) > STEEP);
  if (axis === undefined) return true;
  const [own, behind] = [boxOf(part), boxOf(other)];
  const gap = way[axis] > 0 ? subtract(behind.low[axis], own.high[axis]) : subtract(own.low[axis], behind.high[axis]);
  return Math.abs(toNumber(gap)) < NEAR && lieBeside(own, behind, axis);
}
