/** What of a step ties the piece to a wall, and where that wall is. Types and facts only; lengths in units of 1/16 µm. */
import { bounds } from "../../../../geometry/convex.ts";
import { isEmpty, solidBox } from "../../../../geometry/solid.ts";
import type { Solid, Vec } from "../../../../geometry/types.ts";
import type { Build, Step } from "../../../../solve/build.ts";
import { measureOf } from "../../../../solve/design/hardware/items.ts";
import { faceAxis, isHigh } from "../../../../solve/design/space.ts";
import { wallOf } from "../../../../solve/design/use/wall.ts";
import type { Fitting, Hardware } from "../../../../solve/design.ts";
import { rational, toNumber, UNITS_PER_INCH } from "../../../../units/index.ts";
import type { Scene } from "../scene.ts";

export interface WallFixing {
  readonly kind: "strap" | "screw";
  /** All that are fixed in the step, and of them the one that is shown cut. */
  readonly fittings: readonly Fitting[];
  readonly one: Fitting & { readonly hardware: readonly [Hardware] };
  /** The way from the piece to the wall: its axis and sign; and the level axis along the wall. */
  readonly to: 0 | 1;
  readonly sign: 1 | -1;
  readonly along: 0 | 1;
  /** Where the wall begins, along `to`; a piece that is tied by a strap stands off it while that is done. */
  readonly wall: number;
  /** Where the floor is; null where the piece hangs. */
  readonly floor: number | null;
  /** From stud to stud; null for a solid wall. */
  readonly studs: number | null;
}

/** A piece is drawn so far off the wall that both brackets are seen. */
export const OFF = 5 * UNITS_PER_INCH;

export function wallFixing(build: Build, { actions }: Step): WallFixing | null {
  const fitted = new Set(actions.flatMap((action) => (action.do === "fit" ? action.hardware : [])));
  const fittings = build.design.fittings.filter(
    ({ hardware: [first] }) => first && fitted.has(first.id) && KINDS.has(first.item.kind),
  );
  const [one] = fittings;
  const [hardware] = one?.hardware ?? [];
  const kind = KINDS.get(hardware?.item.kind ?? "");
  if (!one || !hardware || !kind) return null;
  const axis = faceAxis(one.face);
  // What lies on top is tied to the wall behind the piece; the head of a screw is on the side away from its wall.
  const to = axis === 2 ? 1 : axis;
  const sign = axis === 2 || isHigh(one.face) === (kind === "strap") ? 1 : -1;
  const ends = build.parts.flatMap(({ solid }) => (isEmpty(solid) ? [] : [solid[sign === 1 ? "high" : "low"][to]]));
  const back = ends.reduce((a, b) => (a * sign > b * sign ? a : b));
  const { studs } = build.design.wall ?? wallOf(undefined, build.design.units, () => null);
  return {
    ...{ kind, fittings, to, sign, along: to === 1 ? 0 : 1 },
    one: { ...one, hardware: [hardware] },
    wall: back + (kind === "strap" ? sign * OFF : 0),
    floor: kind === "strap" ? lowest(build) : null,
    studs: studs && toNumber(studs),
  };
}

const KINDS: ReadonlyMap<string, WallFixing["kind"]> = new Map([
  ["wall strap", "strap"],
  ["wall screw", "screw"],
]);

const lowest = ({ parts, hardware }: Build): number =>
  Math.min(...[...parts, ...hardware].flatMap(({ solid }) => (isEmpty(solid) ? [] : [solid.low[2]])));

/** A place by how far along the wall, how far towards it, and how high. */
export const placeAt = ({ to }: WallFixing, along: number, out: number, up: number): Vec =>
  to === 1 ? [along, out, up] : [out, along, up];

/** Into the wall: how long the screw that holds in it is, and how thick what lies on the studs is. */
export function intoWall({ kind, one }: WallFixing): { readonly length: number; readonly lining: number } {
  const { item } = one.hardware[0];
  return kind === "strap"
    ? { length: toNumber(measureOf(item, "wall screw")), lining: LINING }
    : { length: toNumber(measureOf(item, "length")), lining: toNumber(measureOf(item, "plaster")) };
}

/** Board or plaster on the studs; a stud's width and depth. Common practice, no source. */
const LINING = 0.5 * UNITS_PER_INCH;
export const STUD = { wide: 1.5 * UNITS_PER_INCH, deep: 3.5 * UNITS_PER_INCH } as const;

/** What is hung on the wall later: all that is not here of a piece whose screws are driven. */
export const comingLater = ({ parts }: Build, { items }: Scene, { kind }: WallFixing): Build["parts"] => {
  const here = new Set(items.map(({ id }) => id));
  return kind === "screw" ? parts.filter(({ id }) => !here.has(id)) : [];
};

/** The box around some parts. */
export const around = (items: readonly { readonly solid: { readonly low: Vec; readonly high: Vec } }[]) =>
  bounds(items.flatMap(({ solid }) => [solid.low, solid.high]));

export const boxBetween = (low: Vec, high: Vec): Solid => solidBox(exact(low), exact(high));
const exact = ([x, y, z]: Vec) => [rational(Math.round(x)), rational(Math.round(y)), rational(Math.round(z))] as const;
