/** Shelves that come out past what stands before them only while their pins are out. */
import { toNumber } from "../../../../units/rational.ts";
import { faceOf, INDICES } from "../../../design/space.ts";
import type { Removable } from "../../order/index.ts";
import { tiltOf } from "../../order/tilt.ts";
import { listed, series, type Work } from "../draft.ts";
import { calledAmong } from "../words/by-place.ts";

/** The pins of some joints, as fasteners. */
export const pinsOf = ({ plan }: Work, joints: readonly string[]): readonly string[] =>
  joints.flatMap((id) => plan.chosen.get(id)?.fasteners ?? []).map(({ id }) => id);

const pulledFor = (bodies: readonly Removable[]): readonly Removable[] => bodies.filter(({ pulled }) => pulled);

/** What lies on pins and comes off them straight. */
const lyingOn = ({ design }: Work, bodies: readonly Removable[]): readonly Removable[] =>
  bodies.filter(
    ({ pulled, joints }) =>
      !pulled && design.joints.some(({ id, method }) => method === "shelf pins" && joints.includes(id)),
  );

const pinsOfThem = (work: Work, bodies: readonly Removable[]): string =>
  `pins of ${shelvesOf(work, bodies, lyingOn(work, bodies))}`;

/** Pins that stayed in would be finished with what they are in. */
export const pinsAfterTexts = (work: Work, bodies: readonly Removable[]): readonly string[] =>
  lyingOn(work, bodies).length === 0 ? [] : [`Pull the ${pinsOfThem(work, bodies)} out too, and put them in a bag.`];

export const pinsBeforeTexts = (work: Work, bodies: readonly Removable[]): readonly string[] =>
  lyingOn(work, bodies).length === 0
    ? []
    : [`When the finish is hard, push the ${pinsOfThem(work, bodies)} into their holes, all of one at one height.`];

/** In the order in which they come off. */
export function pinsOutTexts(work: Work, bodies: readonly Removable[]): readonly string[] {
  const own = pulledFor(bodies);
  const [first] = own;
  if (!first) return [];
  const one = own.length === 1;
  const degrees = own.map(({ legs = [] }) => Math.round(tiltOf(legs)?.degrees ?? 0));
  const [least, most] = [Math.min(...degrees), Math.max(...degrees)];
  const slope = least === most ? `${most}°` : `${least}° to ${most}°`;
  const raised = most === 0 ? "" : `raise one end until it slopes about ${slope}, `;
  const what = shelvesOf(work, bodies, own);
  return [
    `The way out of ${what} is past what stands before ${one ? "it" : "them"}: hold ${one ? "it" : "each"} up, pull its pins, ${raised}and take it out at the ${sideOf(first)}${one ? "" : `, ${inTurn(work, own)}`}. Put the pins in a bag.`,
  ];
}

export function pinsInTexts(work: Work, bodies: readonly Removable[]): readonly string[] {
  const own = pulledFor(bodies);
  if (own.length === 0) return [];
  const what = shelvesOf(work, bodies, own);
  const before = own.length < bodies.length;
  return [
    `${before ? "Before all else bring" : "Bring"} ${what} in as ${own.length === 1 ? "it" : "they"} came out, one end raised: level it inside, hold it up, push its pins in below it, and lower it on them${own.length === 1 ? "" : `, ${inTurn(work, own)}`}${before ? "; what is hung or run in before is in the way" : ""}.`,
  ];
}

/** Where others of their mark come off straight, which of them. */
function shelvesOf(work: Work, bodies: readonly Removable[], own: readonly Removable[]): string {
  const ids = own.flatMap(({ parts }) => parts);
  const all = bodies.flatMap(({ parts }) => parts);
  const marks = new Set(ids.map((id) => work.line(id).mark));
  const apart = all.some((id) => !ids.includes(id) && marks.has(work.line(id).mark));
  return apart ? series(ids.map((id) => `the ${calledAmong(work, id, all)}`)) : listed(work, ids);
}

/** Of shelves one above another. */
function inTurn(work: Work, bodies: readonly Removable[]): string {
  const heights = bodies.map(({ parts }) => toNumber(work.part(parts[0] as string).body.low[2]));
  const up = heights.every((at, i) => i === 0 || at >= (heights[i - 1] as number));
  const down = heights.every((at, i) => i === 0 || at <= (heights[i - 1] as number));
  return up ? "the lowest first" : down ? "the highest first" : "one after another";
}

/** From where it came. */
function sideOf({ legs = [], along }: Removable): string {
  const far = legs.find((leg) => "along" in leg && leg.distance === null);
  const way = far && "along" in far ? far.along : along;
  const axis = INDICES.find((i) => Math.abs(way[i]) > 0.7) ?? 1;
  return faceOf(axis, way[axis] < 0);
}
