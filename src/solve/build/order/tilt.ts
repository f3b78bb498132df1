/**
 * A way out with one tilt, or with none where it is only moved up, down or aside first: lifted, turned about the line along which it then leaves, and moved aside. So a shelf goes in behind a face
 * frame, or on end beside a stile that stands in the middle of it.
 */
import type { Convex, Solid, Vec } from "../../../geometry/index.ts";
import { plus } from "../../../geometry/vec.ts";
import { type Length, millimetres, toNumber, UNITS_PER_MM } from "../../../units/index.ts";
import type { Leg } from "../../build.ts";
import type { Direction } from "../../design.ts";
import { movedPieces, moveOf } from "../motions/move.ts";
import { type Obstacles, obstacles } from "./obstacles.ts";
import { reversed } from "./pegs.ts";
import { LIFT, type Shift, shiftOut } from "./shift-out.ts";

/** Towards the reader first. */
const WAYS: readonly Direction[] = [
  [0, -1, 0],
  [0, 1, 0],
  [-1, 0, 0],
  [1, 0, 0],
];
/** Degrees: how far it is turned at most, in which steps that is tried, and how closely the turn is looked at in the end. */
const TURN = { most: 86, step: 2, close: 0.25 } as const;

/** The way out, in order; or else all that stood in some way: while that stays, the body does, whatever else is taken off. */
export type Tilted = { readonly legs: readonly Leg[] } | { readonly inTheWay: ReadonlySet<Solid> };

/** Solids of what moves and of what stays. */
export function tiltOut(moving: readonly Solid[], others: readonly Solid[]): Tilted {
  const middle = middleOf(moving);
  const staying = obstacles(others);
  // Lifted off what it lies on, or lowered, where nothing is under it.
  for (const out of WAYS)
    for (const sign of [1, -1])
      for (let by = sign === 1 ? 0 : LIFT.step; by <= LIFT.most; by += LIFT.step) {
        const up: Vec = [0, 0, sign * by * UNITS_PER_MM];
        if (by > 0 && staying.sweptBy(hulls(moving, [0, 0, 0], middle, out, 0), up)) break;
        const turned = turnOut(moving, staying, { middle: plus(middle, up), up, out });
        if (turned !== null) return { legs: legs(sign * by, turned, out, plus(middle, up)) };
      }
  return { inTheWay: staying.met };
}

interface Lifted {
  readonly middle: Vec;
  readonly up: Vec;
  readonly out: Direction;
}

/** The least turn with which the lifted body leaves along `out`, in degrees, and how far it is moved up, down or aside before; null where there is none. */
function turnOut(moving: readonly Solid[], staying: Obstacles, { middle, up, out }: Lifted): Turned | null {
  const at = (degrees: number): readonly Convex[] => hulls(moving, up, middle, out, degrees);
  const hits = (degrees: number): boolean => staying.hitBy(at(degrees)) !== null;
  // What only has to be lifted is not turned besides.
  const level = shiftOut(at(0), staying, out);
  if (level !== null) return { degrees: 0, after: level };
  for (const sign of [1, -1]) {
    for (let angle: number = TURN.step; angle <= TURN.most; angle += TURN.step) {
      const degrees = sign * angle;
      const there = at(degrees);
      if (staying.hitBy(there)) break;
      const after = shiftOut(there, staying, out);
      if (after === null) continue;
      const steps = Array.from({ length: angle / TURN.close }, (_, i) => sign * i * TURN.close);
      if (!steps.some(hits)) return { degrees, after };
      break;
    }
  }
  return null;
}

interface Turned {
  readonly degrees: number;
  readonly after: readonly Shift[];
}

/** What moves, first lifted, then turned. */
function hulls(moving: readonly Solid[], up: Vec, middle: Vec, out: Direction, degrees: number): readonly Convex[] {
  const lifted = moveOf({ at: 0, rotate: { about: [[0, 0, 0], out], degrees: 0 }, shift: up });
  const turned = moveOf({ at: 0, rotate: { about: [middle, out], degrees }, shift: [0, 0, 0] });
  const both = { point: (p: Vec) => turned.point(lifted.point(p)), way: (w: Vec) => turned.way(w) };
  return moving.flatMap((solid) => movedPieces(solid, both));
}

const middleOf = (solids: readonly Solid[]): Vec => {
  const at = (i: 0 | 1 | 2): number =>
    (Math.min(...solids.map(({ low }) => low[i])) + Math.max(...solids.map(({ high }) => high[i]))) / 2;
  return [at(0), at(1), at(2)];
};

function legs(lift: number, { degrees, after }: Turned, out: Direction, middle: Vec): readonly Leg[] {
  const up: Shift = { along: [0, 0, lift > 0 ? 1 : -1], by: Math.abs(lift) };
  return [
    ...(lift === 0 ? [] : [legOf(up)]),
    ...(degrees === 0 ? [] : [{ about: [middle, out] as const, degrees }]),
    ...after.map(legOf),
    { along: out, distance: null },
  ];
}

const legOf = ({ along, by }: Shift): Leg => ({ along, distance: millimetres(by) });

/** The same way, in. */
export const wayIn = (out: readonly Leg[]): readonly Leg[] =>
  out
    .toReversed()
    .map(
      (leg): Leg =>
        "about" in leg
          ? { about: leg.about, degrees: -leg.degrees }
          : { along: reversed(leg.along), distance: leg.distance },
    );

/** By how much a way in is lowered in the end and turned before: mm and degrees, for words; and whether it is moved aside. */
export function tiltOf(
  legs: readonly Leg[],
): { readonly lift: number; readonly degrees: number; readonly aside: boolean } | null {
  const turn = legs.find((leg) => "about" in leg);
  const at = turn ? legs.indexOf(turn) : legs.length;
  const [before, after] = [shiftsOf(legs.slice(0, at)), shiftsOf(legs.slice(at))];
  if (before.length + after.length + (turn ? 1 : 0) === 0) return null;
  const falls = (turn ? after : before).find(({ along }) => along[2] < 0);
  return {
    lift: falls ? toNumber(falls.distance) / UNITS_PER_MM : 0,
    degrees: turn && "about" in turn ? Math.abs(turn.degrees) : 0,
    aside: before.some(({ along }) => along[2] === 0),
  };
}

const shiftsOf = (legs: readonly Leg[]): readonly { readonly along: Direction; readonly distance: Length }[] =>
  legs.flatMap((leg) =>
    "along" in leg && leg.distance !== null ? [{ along: leg.along, distance: leg.distance }] : [],
  );
