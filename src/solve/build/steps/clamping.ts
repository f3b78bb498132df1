/** How many clamps a glue-up needs, and how far they open. Common practice, no source. */
import {
  add,
  compare,
  equal,
  half,
  inches,
  type Length,
  less,
  max,
  millimetres,
  min,
  multiply,
  rational,
  roundTo,
  subtract,
  toNumber,
  ZERO,
} from "../../../units/index.ts";
import type { Clamping } from "../../build.ts";
import { type AxisIndex, enclosing, INDICES, indexOf } from "../../design/space.ts";
import type { Joint } from "../../design.ts";
import { clampEnds, pastTheWhole } from "./clamp-ends.ts";
import { FIRST, type Work } from "./draft.ts";
import type { Move } from "./moves.ts";
import { standingOut } from "./standing-out.ts";

/** Two cauls or pads. */
const CAULS = inches(1);
/** One at each end of a long joint, 2 in from it, and others 8 in apart; one for a joint as narrow as a rail. */
const NARROW = inches(6);
const END = inches(4);
const APART = inches(8);

/** Few workshops have more. */
const MANY = 10;

/** Clamps over a joint of some length. */
export const clampsOver = (length: Length): number =>
  less(length, NARROW) ? 1 : Math.ceil(toNumber(subtract(length, END)) / toNumber(APART)) + 1;

interface Place {
  readonly axis: AxisIndex;
  readonly at: readonly Length[];
  /** What it presses on, so that its joint closes. */
  readonly part: string;
}

/** For what is glued and not pulled together by screws or nails. A clamp that reaches over the whole body holds all joints in its line. */
export function placesOfClamps(work: Work, moves: readonly Move[]): readonly Place[] {
  const wanted = moves.flatMap(({ along, work: joints }) => {
    const axis = INDICES.reduce<AxisIndex>((best, i) => (Math.abs(along[i]) > Math.abs(along[best]) ? i : best), 0);
    const held = joints.filter(({ joint, drives }) => joint.glue && drives.length === 0).map(({ joint }) => joint);
    const long = held.filter((joint) => !less(longest(work, joint, axis), NARROW));
    // What is clamped along its length is held at its ends too, where it reaches over what stands beside.
    const also = (joint: Joint): boolean => joint.parts.some((id) => long.some(({ parts: [own] }) => own === id));
    const own = held.filter((joint) => long.includes(joint) || !also(joint));
    return own.flatMap((joint) => [
      { axis, joint, part: joint.parts[0] },
      ...cornerOf(work, joint, axis).map((each) => ({ axis: each, joint, part: joint.parts[1] })),
    ]);
  });
  const places: Place[] = [];
  for (const { axis, joint, part } of wanted)
    for (const at of pointsOver(work, joint, axis))
      if (!places.some((other) => other.axis === axis && oneClamp(joint, other, at))) places.push({ axis, at, part });
  return places;
}

/** A rabbet at the end of a part holds its mate by two faces: the second wants to be pressed as well, along that part. */
function cornerOf(work: Work, { method, parts: [id, mate], contact }: Joint, axis: AxisIndex): readonly AxisIndex[] {
  const [part, other] = [work.part(id), work.part(mate)];
  const along = indexOf(other.axes.length);
  if (method !== "rabbet" || indexOf(part.axes.length) !== axis || along === axis) return [];
  return contact.some(({ normal }) => Math.abs(normal[along]) > 0.99) ? [along] : [];
}

/** By direction. */
export function clampingOf(work: Work, moves: readonly Move[]): readonly Clamping[] {
  const all = moves.flatMap(({ present, arriving }) => [...present, ...arriving]).map((id) => work.part(id).body);
  const [first, ...rest] = all;
  if (!first) return [];
  const whole = rest.reduce(enclosing, first);
  const places = placesOfClamps(work, moves);
  return INDICES.flatMap((axis): readonly Clamping[] => {
    const across = add(subtract(whole.high[axis], whole.low[axis]), add(CAULS, standingOut(work, moves, axis)));
    const openings = places
      .filter((one) => one.axis === axis)
      .map(({ at }) => roundedUp(work, add(across, pastTheWhole(clampEnds(work, moves, axis, at)))));
    const different = openings.filter((each, i) => i === openings.findIndex((other) => equal(other, each)));
    return different.map((opening) => ({ count: openings.filter((each) => equal(each, opening)).length, opening }));
  });
}

/** Where clamps press on a joint, as they look along an axis: at even distances along its longer side. */
function pointsOver(work: Work, { parts: [a, b] }: Joint, axis: AxisIndex): readonly (readonly Length[])[] {
  const [one, two] = [work.part(a).body, work.part(b).body];
  const meets = INDICES.filter((i) => i !== axis).map((i) => ({
    low: max(one.low[i], two.low[i]),
    high: min(one.high[i], two.high[i]),
  }));
  const size = ({ low, high }: (typeof meets)[number]): Length => subtract(high, low);
  const long = meets.findIndex((each) => meets.every((other) => !less(size(each), size(other))));
  const n = clampsOver(size(meets[long] as (typeof meets)[number]));
  return Array.from({ length: n }, (_, k) =>
    meets.map(({ low, high }, i) => {
      const [from, to] = i === long && n > 1 ? [add(low, half(END)), subtract(high, half(END))] : [low, high];
      const share = i === long && n > 1 ? rational(k, n - 1) : rational(1, 2);
      return add(from, multiply(subtract(to, from), share));
    }),
  );
}

/** These are pressed one by one: a clamp on one leaves the next open. */
const ONE_BY_ONE: ReadonlySet<Joint["method"]> = new Set<Joint["method"]>(["half lap", "bridle"]);

/** The clamp that is there presses on this as well. */
const oneClamp = ({ method }: Joint, there: Place, at: readonly Length[]): boolean =>
  ONE_BY_ONE.has(method) ? there.at.every((value, i) => equal(value, at[i] as Length)) : isNear(there.at, at);

/** Near enough for one clamp. */
const isNear = (a: readonly Length[], b: readonly Length[]): boolean =>
  a.every((value, i) => Math.abs(toNumber(subtract(value, b[i] as Length))) < toNumber(half(APART)));

/** What is said of a clamp's length: whole inches, or centimetres. */
export const roundedUp = (work: Work, length: Length): Length =>
  roundTo(length, work.design.units === "inch" ? inches(1) : millimetres(10), "up");

/** How far two parts lie against each other, across the direction of the clamp. */
function longest(work: Work, { parts: [a, b] }: Joint, axis: AxisIndex): Length {
  const [one, two] = [work.part(a).body, work.part(b).body];
  return INDICES.filter((i) => i !== axis)
    .map((i) => subtract(min(one.high[i], two.high[i]), max(one.low[i], two.low[i])))
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
