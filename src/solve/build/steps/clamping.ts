/** How many clamps a glue-up needs, and how far they open. Common practice, no source. */
import {
  add,
  compare,
  equal,
  half,
  inches,
  isSame,
  type Length,
  less,
  max,
  millimetres,
  multiply,
  rational,
  roundTo,
  subtract,
  toNumber,
  ZERO,
} from "../../../units/index.ts";
import type { Clamping } from "../../build.ts";
import { type AxisIndex, common, extent, INDICES, indexOf, otherAxes, triple } from "../../design/space.ts";
import type { Box, Direction, Fastener, Joint, Part } from "../../design.ts";
import { once } from "../once.ts";
import { besidePosts } from "./beside-posts.ts";
import { boxOf } from "./box-of.ts";
import { type ClampAt, clampEnds, openingOver, partsOf, reachOf } from "./clamp-ends.ts";
import { barReaches, type ClampLine, isNear, type Reached, reachedOf } from "./clamp-reach.ts";
import { FIRST, type Work } from "./draft.ts";
import type { Move } from "./moves.ts";

/** Two cauls or pads. */
const CAULS = inches(1);
/** Two stiff cauls that bring pressure where no jaws reach. */
const STIFF = inches(3);
/** One at each end of a long joint, 2 in from it, and others 8 in apart; one for a joint as narrow as a rail. */
const NARROW = inches(6);
const END = inches(4);
const APART = inches(8);

/** Few workshops have more. */
const MANY = 10;

/** Clamps over a joint of some length. */
export const clampsOver = (length: Length): number =>
  less(length, NARROW) ? 1 : Math.ceil(toNumber(subtract(length, END)) / toNumber(APART)) + 1;

/** Whether a joint is closed by clamps. A peg pulls only where its holes are offset. */
export const isClamped = (work: Work, { joint, drives }: Move["work"][number]): boolean =>
  joint.glue && drives.every(({ fastener }) => fastener.kind === "peg" && !isOffset(work, fastener));

function isOffset(work: Work, { id, direction }: Fastener): boolean {
  const [first, ...more] = work.plan.holes.filter((hole) => hole.for === id);
  return INDICES.some(
    (i) => Math.abs(direction[i]) < 0.5 && more.some(({ at }) => first && !isSame(at[i], first.at[i])),
  );
}

/** A tongue with glue in its middle only: a clamp there, and one at each end. */
const BREADBOARD = 3;

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
      BOTH_WAYS.has(joint.method)
        ? mitredOf(work, joint)
        : [{ axis: pressedAlong(joint, along), joint, part: joint.parts[0] }],
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
const BOTH_WAYS: ReadonlySet<Joint["method"]> = new Set<Joint["method"]>(["mitre", "box joint"]);

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
        others.some((other) => pressesToo(parts, other, { ...line, at, whole: false }));
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
    if (!places.some((other) => pressesToo(parts, other, place))) places.push(place);
  return places;
}

/** Whether a clamp that is there presses on what another one would. */
function pressesToo(parts: readonly Part[], there: ClampAt, own: ClampAt): boolean {
  if (there.axis !== own.axis || !oneClamp(own.joint, there.at, own.at)) return false;
  const [one, other] = [reachOf(parts, there), reachOf(parts, own)];
  return one === null || other === null || (!less(other.low.at, one.low.at) && !less(one.high.at, other.high.at));
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

/** How far two parts lie against each other along each axis: what leans, as it touches. */
function overlapOf(work: Work, { parts: [a, b], contact }: Joint): Box {
  const [one, two] = [work.part(a), work.part(b)];
  if (!one.turned && !two.turned) return common(one.body, two.body);
  const points = contact.flatMap(({ polygons }) => polygons.flat());
  if (points.length === 0) return common(boxOf(one), boxOf(two));
  const bound = (choose: (...values: number[]) => number): Box["low"] =>
    triple((i) => rational(Math.round(points.map((p) => p[i]).reduce((x, y) => choose(x, y)))));
  return { low: bound(Math.min), high: bound(Math.max) };
}

/** Where clamps press on a joint, as they look along an axis: at even distances along its longer side. */
function pointsOver(work: Work, joint: Joint, axis: AxisIndex): Pick<ClampLine, "points" | "long"> {
  const shared = overlapOf(work, joint);
  const meets = otherAxes(axis).map((i) => ({ low: shared.low[i], high: shared.high[i] }));
  const size = ({ low, high }: (typeof meets)[number]): Length => subtract(high, low);
  const long = meets.findIndex((each) => meets.every((other) => !less(size(each), size(other))));
  const all = clampsOver(size(meets[long] as (typeof meets)[number]));
  const n = joint.method === "breadboard end" ? Math.min(all, BREADBOARD) : all;
  const points = Array.from({ length: n }, (_, k) =>
    meets.map(({ low, high }, i) => {
      const [from, to] = i === long && n > 1 ? [add(low, half(END)), subtract(high, half(END))] : [low, high];
      const share = i === long && n > 1 ? rational(k, n - 1) : rational(1, 2);
      return add(from, multiply(subtract(to, from), share));
    }),
  );
  return { points, long };
}

/** These are pressed one by one: a clamp on one leaves the next open. */
const ONE_BY_ONE: ReadonlySet<Joint["method"]> = new Set<Joint["method"]>(["half lap", "bridle"]);

/** The clamp that is there presses on this as well. */
const oneClamp = ({ method }: Joint, there: readonly Length[], at: readonly Length[]): boolean =>
  ONE_BY_ONE.has(method) ? there.every((value, i) => equal(value, at[i] as Length)) : isNear(there, at);

/** What is said of a clamp's length: whole inches, or centimetres. */
export const roundedUp = (work: Work, length: Length): Length =>
  roundTo(length, work.design.units === "inch" ? inches(1) : millimetres(10), "up");

/** How far two parts lie against each other, across the direction of the clamp. */
function longest(work: Work, joint: Joint, axis: AxisIndex): Length {
  const shared = overlapOf(work, joint);
  return otherAxes(axis)
    .map((i) => extent(shared, i))
    .reduce(max, ZERO);
}

/** "First: set 4 clamps that open 26 in, and try everything dry": before there is glue on anything. */
export function dryText(work: Work, clamps: readonly Clamping[], blocks: readonly string[] = []): readonly string[] {
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
