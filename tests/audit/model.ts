/** A record made ready for the checks: bodies built, everything found by its id. */
import { type Convex, convexOf } from "./convex.ts";
import type { BoxFeature, BuildRecord, Fastener, Joint, Part, PlaneFeature } from "./record.ts";
import { type V3, ZERO } from "./vector.ts";

export interface Model {
  readonly record: BuildRecord;
  readonly parts: ReadonlyMap<string, Part>;
  readonly joints: ReadonlyMap<string, Joint>;
  readonly fasteners: ReadonlyMap<string, Fastener>;
  /** Joint of each fastener. */
  readonly jointOf: ReadonlyMap<string, Joint>;
  /** Pieces of a part or of a piece of hardware. */
  readonly solid: (id: string) => readonly Convex[];
}

export function modelOf(record: BuildRecord): Model {
  const bodies = [...record.parts, ...record.hardware];
  const solids = new Map(bodies.map((body) => [body.id, body.solids.map(convexOf)]));
  return {
    record,
    parts: byId(record.parts),
    joints: byId(record.joints),
    fasteners: byId(record.fasteners),
    jointOf: new Map(record.joints.flatMap((joint) => joint.fasteners.map((id) => [id, joint] as const))),
    solid: (id) => solids.get(id) ?? [],
  };
}

const byId = <T extends { id: string }>(list: readonly T[]) => new Map(list.map((item) => [item.id, item]));

export const isBox = (feature: BoxFeature | PlaneFeature): feature is BoxFeature => "size" in feature;

/** Each pair of different members, once. */
export const pairsOf = <T>(list: readonly T[]): (readonly [T, T])[] =>
  list.flatMap((a, i) => list.slice(i + 1).map((b) => [a, b] as const));

/** Lowest and highest corner of bodies; both zero for none. */
export function bounds(bodies: readonly Convex[]): readonly [V3, V3] {
  const of = (choose: (...n: number[]) => number, corner: "low" | "high"): V3 => [
    choose(...bodies.map((body) => body[corner][0])),
    choose(...bodies.map((body) => body[corner][1])),
    choose(...bodies.map((body) => body[corner][2])),
  ];
  return bodies.length === 0 ? [ZERO, ZERO] : [of(Math.min, "low"), of(Math.max, "high")];
}

export const actionsOf = (record: BuildRecord) =>
  record.steps.flatMap((step) => step.actions.map((action) => ({ step, action })));

export const count = <T>(list: readonly T[], item: T): number => list.filter((other) => other === item).length;
export const near = (a: number, b: number, within = 0.01): boolean => Math.abs(a - b) <= within;
