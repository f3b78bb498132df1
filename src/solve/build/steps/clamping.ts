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
import type { Box, Fastener, Joint } from "../../design.ts";
import { once } from "../once.ts";
import { boxOf, clampEnds, partsOf, pastTheWhole, wholeOf } from "./clamp-ends.ts";
import { barReaches, type ClampLine, isNear, type Reached, reachedOf } from "./clamp-reach.ts";
import { FIRST, type Work } from "./draft.ts";
import type { Move } from "./moves.ts";
import { standingOut } from "./standing-out.ts";

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

interface Place {
  readonly axis: AxisIndex;
  readonly at: readonly Length[];
  /** What it presses on, so that its joint closes. */
  readonly part: string;
  readonly caul: boolean;
}

/** For what is glued and not pulled together by screws, nails or pegs in offset holes. */
function linesOf(work: Work, moves: readonly Move[]): readonly ClampLine[] {
  const wanted = moves.flatMap(({ along, work: joints }) => {
    const axis = INDICES.reduce<AxisIndex>((best, i) => (Math.abs(along[i]) > Math.abs(along[best]) ? i : best), 0);
    const held = joints.filter((each) => isClamped(work, each)).map(({ joint }) => joint);
    const long = held.filter((joint) => !less(longest(work, joint, axis), NARROW));
    // What is clamped along its length is held at its ends too, where it reaches over what stands beside.
    const also = (joint: Joint): boolean => joint.parts.some((id) => long.some(({ parts: [own] }) => own === id));
    const own = held.filter((joint) => long.includes(joint) || !also(joint));
    return own.flatMap((joint) => [
      { axis, joint, part: joint.parts[0] },
      ...cornerOf(work, joint, axis).map((each) => ({ axis: each, joint, part: joint.parts[1] })),
    ]);
  });
  return wanted.map((line) => ({ ...line, ...pointsOver(work, line.joint, line.axis) }));
}

/** What presses on each joint, where the jaws of clamps reach. */
const pressingOf = once((work: Work) =>
  once((moves: readonly Move[]): readonly (ClampLine & Reached)[] => {
    const lines = linesOf(work, moves);
    const parts = partsOf(work, moves);
    const others = lines.flatMap(({ axis, points }) =>
      points.filter((at) => barReaches(parts, axis, at)).map((at) => ({ axis, at })),
    );
    return lines.map((line) => {
      const isPressed = (at: readonly Length[]): boolean =>
        others.some((other) => other.axis === line.axis && oneClamp(line.joint, other.at, at));
      return { ...line, ...reachedOf(parts, line, isPressed) };
    });
  }),
);
const pressing = (work: Work, moves: readonly Move[]): readonly (ClampLine & Reached)[] => pressingOf(work)(moves);

/** A clamp that reaches over the whole body holds all joints in its line. Those on the ends of cauls stand where these are. */
export function placesOfClamps(work: Work, moves: readonly Move[]): readonly Place[] {
  const all = pressing(work, moves).flatMap(({ spots, ...line }) => spots.map((spot) => ({ ...line, ...spot })));
  const places: Place[] = [];
  for (const { axis, joint, part, at, caul } of [
    ...all.filter((each) => each.caul),
    ...all.filter((each) => !each.caul),
  ])
    if (!places.some((other) => other.axis === axis && oneClamp(joint, other.at, at)))
      places.push({ axis, at, part, caul });
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

/**
 * A rabbet at the end of a part holds its mate by two faces: the second wants to be pressed as well, along that part. A mitre slides open unless both parts
 * are pressed along their lengths.
 */
function cornerOf(work: Work, { method, parts: [id, mate], contact }: Joint, axis: AxisIndex): readonly AxisIndex[] {
  const [part, other] = [work.part(id), work.part(mate)];
  if (method === "mitre") return [part, other].map(({ axes }) => indexOf(axes.length)).filter((each) => each !== axis);
  const along = indexOf(other.axes.length);
  if (method !== "rabbet" || indexOf(part.axes.length) !== axis || along === axis) return [];
  return contact.some(({ normal }) => Math.abs(normal[along]) > 0.99) ? [along] : [];
}

/** By direction. */
export function clampingOf(work: Work, moves: readonly Move[]): readonly Clamping[] {
  const whole = wholeOf(work, moves);
  if (!whole) return [];
  const places = placesOfClamps(work, moves);
  return INDICES.flatMap((axis): readonly Clamping[] => {
    const across = add(subtract(whole.high[axis], whole.low[axis]), add(CAULS, standingOut(work, moves, axis)));
    const openings = places
      .filter((one) => one.axis === axis)
      .map(({ at, caul }) => {
        const over = add(across, pastTheWhole(clampEnds(work, moves, axis, at)));
        return roundedUp(work, caul ? add(over, STIFF) : over);
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
