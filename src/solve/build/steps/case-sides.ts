/** A case between two sides, where other parts reach past those: it has the corners of its sides. */
import { equal, less, multiply, rational, toNumber } from "../../../units/rational.ts";
import { type AxisIndex, enclosing, extent, INDICES, indexOf } from "../../design/space.ts";
import type { Box, Joint, Part } from "../../design.ts";
import { LOOSE } from "../order/links.ts";
import type { Work } from "./draft.ts";

/** Two sides that are held together at both ends; `thin`: the direction in which one looks into the case. */
export interface CaseSides {
  readonly sides: readonly [Part, Part];
  readonly thin: AxisIndex;
}

/** A side is at least so many times as wide as it is thick: a post is none. */
const BROAD = 4;
/** The sides have nearly the size of the whole; what is nearly as large as the room between them fills it. */
const FILLS = 0.85;

/** The outermost two sides of those that are held together at both ends, with nothing that fills the case. */
export function caseSidesOf(work: Work, ids: readonly string[]): CaseSides | null {
  const parts = ids.map(work.part);
  const broad = parts.filter(isBroad);
  if (broad.length < 2) return null;
  const whole = parts.map(({ body }) => body).reduce(enclosing);
  const outer = broad.flatMap((a, i) =>
    broad.slice(i + 1).flatMap((b): readonly CaseSides[] => {
      const pair: CaseSides = { sides: [a, b], thin: indexOf(a.axes.width) };
      return areOpposite(a, b) && isOuter(pair, whole) ? [pair] : [];
    }),
  );
  if (outer.length === 0) return null;
  const joints = jointsAmong(work, ids);
  // Whether they are held takes a search through the joints: it is asked of few.
  const widest = outer.toSorted((p, q) => spanOf(q) - spanOf(p)).find(({ sides: [a, b] }) => isHeld(a, b, joints));
  return widest && !isFilled(widest, parts, joints) ? widest : null;
}

/** What they enclose: in the direction in which they stand apart, and along them. */
function boundsOf({ sides: [a, b] }: CaseSides, axis: "thickness" | "length"): number {
  return toNumber(extent(enclosing(a.body, b.body), indexOf(a.axes[axis])));
}

const spanOf = (pair: CaseSides): number => boundsOf(pair, "thickness") + boundsOf(pair, "length");

/** Nearly as large as all that is there. */
function isOuter(pair: CaseSides, whole: Box): boolean {
  const { axes } = pair.sides[0];
  return (["thickness", "length"] as const).every(
    (axis) => boundsOf(pair, axis) > FILLS * toNumber(extent(whole, indexOf(axes[axis]))),
  );
}

const isBroad = ({ body, axes, turned }: Part): boolean =>
  !turned && !less(extent(body, indexOf(axes.width)), multiply(extent(body, indexOf(axes.thickness)), rational(BROAD)));

/** As mirror images are. */
const areOpposite = (a: Part, b: Part): boolean =>
  a.axes.thickness === b.axes.thickness &&
  a.axes.length === b.axes.length &&
  INDICES.every(
    (axis) =>
      axis === indexOf(a.axes.thickness) ||
      (equal(a.body.low[axis], b.body.low[axis]) && equal(a.body.high[axis], b.body.high[axis])),
  );

/** The fast joints of what is there. */
export const jointsAmong = ({ design }: Work, ids: readonly string[]): readonly Joint[] => {
  const inside = new Set(ids);
  return design.joints.filter(({ kind, parts }) => !LOOSE.includes(kind) && parts.every((id) => inside.has(id)));
};

/** Whether joints lead from one to the other in the quarters at both ends. */
export function isHeld(a: Part, b: Part, joints: readonly Joint[]): boolean {
  const along = indexOf(a.axes.length);
  const [from, to] = [toNumber(a.body.low[along]), toNumber(a.body.high[along])];
  const quarter = (to - from) / 4;
  return [true, false].every((low) => {
    const isNear = (at: number): boolean => (low ? at < from + quarter : at > to - quarter);
    const near = joints.filter(({ contact }) => contact.some(({ centre }) => isNear(centre[along])));
    const reached = new Set([a.id]);
    for (const id of reached)
      for (const { parts } of near) if (parts.includes(id)) for (const other of parts) reached.add(other);
    return reached.has(b.id);
  });
}

/** Whether a back, or boards that make one, are fast to the sides. */
function isFilled(pair: CaseSides, parts: readonly Part[], joints: readonly Joint[]): boolean {
  const {
    sides: [a, b],
    thin,
  } = pair;
  const [across, along] = [indexOf(a.axes.thickness), indexOf(a.axes.length)];
  const size = ({ body }: Part, axis: AxisIndex): number => toNumber(extent(body, axis));
  const isFast = (id: string): boolean =>
    joints.some(
      ({ parts: own, method, glue }) =>
        own.includes(id) && (own.includes(a.id) || own.includes(b.id)) && (method !== "groove" || glue),
    );
  const own = parts.filter((part) => indexOf(part.axes.thickness) === thin && isFast(part.id));
  const area = own.reduce((so, part) => so + size(part, across) * size(part, along), 0);
  return area > FILLS * boundsOf(pair, "thickness") * boundsOf(pair, "length");
}
