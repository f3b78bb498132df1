/** How many clamps a glue-up needs, and how far they open. Common practice, no source. */

import { once } from "../../../geometry/index.ts";
import {
  add,
  compare,
  equal,
  inches,
  isSame,
  type Length,
  less,
  millimetres,
  roundTo,
  subtract,
  toNumber,
} from "../../../units/index.ts";
import type { Clamping } from "../../build.ts";
import { type AxisIndex, INDICES, indexOf } from "../../design/space.ts";
import type { Box, Direction, Fastener, Joint, Part } from "../../design.ts";
import { besidePosts } from "./beside-posts.ts";
import { type ClampAt, clampEnds, openingOver, partsOf, reachOf } from "./clamp-ends.ts";
import { longest, NARROW, pointsOver } from "./clamp-points.ts";
import { barReaches, type ClampLine, type Reached, reachedOf } from "./clamp-reach.ts";
import { FIRST, type Work } from "./draft.ts";
import { isMitre, type Move } from "./moves.ts";
import { pressesToo } from "./presses-too.ts";
import type { Sentence } from "./sentence.ts";

/** Two cauls or pads, and play to set the clamp over them. */
const CAULS = inches(3, 2);
/** Two stiff cauls that bring pressure where no jaws reach. */
const STIFF = inches(3);
/** Few workshops have more. */
const MANY = 10;

/** Whether a joint is closed by clamps. A peg pulls only where its holes are offset. */
export const isClamped = (work: Work, { joint, drives }: Move["work"][number]): boolean =>
  joint.glue && drives.every(({ fastener }) => fastener.kind === "peg" && !isOffset(work, fastener));

function isOffset(work: Work, { id, direction }: Fastener): boolean {
  const [first, ...more] = work.plan.holes.filter((hole) => hole.for === id);
  return INDICES.some(
    (i) => Math.abs(direction[i]) < 0.5 && more.some(({ at }) => first && !isSame(at[i], first.at[i])),
  );
}

interface Place extends ClampAt {
  /** What it presses on, so that its joint closes. */
  readonly part: string;
  readonly caul: boolean;
}

/** For what is glued and not pulled together by screws, nails or pegs in offset holes. */
function linesOf(work: Work, moves: readonly Move[]): readonly ClampLine[] {
  const wanted = moves.flatMap(({ along, work: joints }) => {
    const held = joints.filter((each) => isClamped(work, each)).map(({ joint }) => joint);
    const isLong = (joint: Joint): boolean => !less(longest(work, joint, pressedAlong(joint, along)), NARROW);
    const long = held.filter(isLong);
    // What is clamped along its length is held at its ends too, where it reaches over what stands beside.
    const also = (joint: Joint): boolean => joint.parts.some((id) => long.some(({ parts: [own] }) => own === id));
    const own = held.filter((joint) => long.includes(joint) || !also(joint));
    return own.flatMap((joint): readonly Omit<ClampLine, "points" | "long">[] =>
      isBothWays(joint) ? mitredOf(work, joint) : [{ axis: pressedAlong(joint, along), joint, part: joint.parts[0] }],
    );
  });
  return wanted.map((line) => ({ ...line, ...pointsOver(work, line.joint, line.axis) }));
}

/** What goes face to face, or into a rabbet, touches by one face and perhaps a smaller one. */
const BY_FACES: ReadonlySet<Joint["method"]> = new Set<Joint["method"]>(["glue", "rabbet"]);

/** Square to the largest face that has glue; of what is let in, the way it goes in. */
function pressedAlong({ method, contact }: Joint, along: Direction): AxisIndex {
  const largest = (size: (i: AxisIndex) => number): AxisIndex =>
    INDICES.reduce<AxisIndex>((best, i) => (size(i) > size(best) + 1e-9 ? i : best), 0);
  const way = largest((i) => Math.abs(along[i]));
  if (!BY_FACES.has(method)) return way;
  // What is held on both sides in a notch needs no pressing there.
  const areas = INDICES.map((i) =>
    Math.abs(contact.reduce((so, { normal, area }) => (Math.abs(normal[i]) > FACE ? so + normal[i] * area : so), 0)),
  );
  const across = largest((i) => areas[i] as number);
  return (areas[across] as number) > (areas[way] as number) + 1e-6 ? across : way;
}

/** The share of a direction along an axis above which it counts as lying along that. */
const FACE = 0.99;

/** A mitre slides open, and fingers stay off the bottom of their sockets, unless both parts are pressed along their lengths. */
const isBothWays = (joint: Joint): boolean => isMitre(joint) || joint.method === "box joint";

function mitredOf(work: Work, joint: Joint): readonly Omit<ClampLine, "points" | "long">[] {
  return joint.parts.map((part) => ({ axis: indexOf(work.part(part).axes.length), joint, part }));
}

/** What presses on each joint, where the jaws of clamps reach. */
const pressingOf = once((work: Work) =>
  once((moves: readonly Move[]): readonly (ClampLine & Reached)[] => {
    const parts = partsOf(work, moves);
    const lines = linesOf(work, moves).map((line) => besidePosts(parts, line));
    const past = (line: Pick<ClampLine, "axis" | "joint">, at: readonly Length[]): readonly Part[] => {
      const reach = reachOf(parts, { ...line, at, whole: false });
      return reach ? parts.filter(({ body }) => isWithin(body, line.axis, reach.low.at, reach.high.at)) : parts;
    };
    const others = lines.flatMap((line) =>
      line.points
        .filter((at) => barReaches(past(line, at), line.axis, at))
        .map((at) => ({ ...line, at, whole: false })),
    );
    return lines.map((line) => {
      const isPressed = (at: readonly Length[]): boolean =>
        others.some((other) => pressesToo(work, moves, parts, other, { ...line, at, whole: false }));
      return { ...line, ...reachedOf(parts, line, isPressed, (at) => past(line, at)) };
    });
  }),
);
const pressing = (work: Work, moves: readonly Move[]): readonly (ClampLine & Reached)[] => pressingOf(work)(moves);

const isWithin = ({ low, high }: Box, axis: AxisIndex, from: Length, to: Length): boolean =>
  less(low[axis], to) && less(from, high[axis]);

/** A clamp that reaches over the whole body holds all joints in its line. Those on the ends of cauls stand where these are. */
export function placesOfClamps(work: Work, moves: readonly Move[]): readonly Place[] {
  const parts = partsOf(work, moves);
  const all = pressing(work, moves).flatMap(({ spots, ...line }) => spots.map((spot): Place => ({ ...line, ...spot })));
  const span = (place: Place): number => {
    const reach = reachOf(parts, place);
    return reach ? toNumber(subtract(reach.high.at, reach.low.at)) : 0;
  };
  const places: Place[] = [];
  for (const place of [
    ...all.filter((each) => each.caul),
    ...all.filter((each) => !each.caul).toSorted((a, b) => span(b) - span(a)),
  ])
    if (!places.some((other) => pressesToo(work, moves, parts, other, place))) places.push(place);
  return places;
}

/** Parts that no jaws reach, or not in their middle. */
export function underCauls(
  work: Work,
  moves: readonly Move[],
): readonly Pick<ClampLine & Reached, "part" | "beyond">[] {
  const all = pressing(work, moves).filter(({ beyond }) => beyond !== "none");
  return all.filter(({ part }, i) => i === all.findIndex((other) => other.part === part));
}

/** By direction. */
export function clampingOf(work: Work, moves: readonly Move[]): readonly Clamping[] {
  const places = placesOfClamps(work, moves);
  return INDICES.flatMap((axis): readonly Clamping[] => {
    const openings = places
      .filter((one) => one.axis === axis)
      .map((place) => {
        const over = add(openingOver(clampEnds(work, moves, place)), CAULS);
        return roundedUp(work, place.caul ? add(over, STIFF) : over);
      });
    const different = openings.filter((each, i) => i === openings.findIndex((other) => equal(other, each)));
    return different.map((opening) => ({ count: openings.filter((each) => equal(each, opening)).length, opening }));
  });
}

/** What is said of a clamp's length: whole inches, or centimetres. */
export const roundedUp = (work: Work, length: Length): Length =>
  roundTo(length, work.design.units === "inch" ? inches(1) : millimetres(10), "up");

/** "First: set 4 clamps that open 26 in, and try everything dry": before there is glue on anything. */
export function dryText(
  work: Work,
  clamps: readonly Clamping[],
  blocks: readonly Sentence[] = [],
): readonly Sentence[] {
  const each = clamps
    .toSorted((a, b) => compare(b.opening, a.opening))
    .map(
      ({ count, opening }) =>
        `${count} ${count === 1 ? "clamp that opens" : "clamps that open"} ${work.print(opening)}`,
    );
  const most = Math.max(0, ...clamps.map(({ count }) => count));
  const set = each.length === 0 ? "" : `set ${each.join(", and ")}, and `;
  return [
    `${FIRST}${set}try everything dry: glue grabs within minutes.${most > MANY ? " With stiff boards as cauls along the joints every second clamp does." : ""}`,
    ...blocks,
  ];
}
