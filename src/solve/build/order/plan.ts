/** The order in which a piece goes together, proven possible. Types only. */
import type { Leg } from "../../build.ts";
import type { Arrangement, Direction, Fastener, Hardware, Hole, Joint } from "../../design.ts";
import type { Reached } from "../reach/index.ts";

export interface Plan {
  /** The whole piece. */
  readonly root: Assembly;
  /** In the order in which they come off. */
  readonly removable: readonly Removable[];
  /** Of the chosen arrangements, in the order of the joints. */
  readonly fasteners: readonly Fastener[];
  /** First the holes that the maker drew, in the order of the parts; then those of the chosen arrangements, in the order of the joints, and of the fittings. */
  readonly holes: readonly Hole[];
  readonly hardware: readonly Hardware[];
  /** By joint id; a joint that needs no fasteners is absent. */
  readonly chosen: ReadonlyMap<string, Arrangement>;
}

/** A body that hangs, runs or lies loose on the rest, and leaves the finished piece in a straight line. */
export interface Removable {
  /** In source order. */
  readonly parts: readonly string[];
  /** Unit vector of travel to its place. */
  readonly along: Direction;
  /** The way in where it is not straight, `along` being its first stretch. */
  readonly legs?: readonly Leg[];
  /** What it is joined to. */
  readonly to: readonly string[];
  readonly joints: readonly string[];
  /** Joints whose shelf pins are pulled before it leaves, and pushed in when it is back. Absent: none. */
  readonly pulled?: readonly string[];
  /** What is taken out before it leaves, and driven again. */
  readonly drives: readonly Drive[];
}

export type Assembly = Single | Union;

export interface Single {
  readonly kind: "part";
  readonly parts: readonly [string];
}

/** Two bodies become one: `moving` travels in a straight line from far away and is fixed to `staying`. */
export interface Union {
  readonly kind: "union";
  /** In source order. */
  readonly parts: readonly string[];
  readonly staying: Assembly;
  readonly moving: Assembly;
  /** Unit vector of travel. */
  readonly along: Direction;
  /** The way in where it is not straight, `along` being its first stretch. */
  readonly legs?: readonly Leg[];
  /** The joints that have to slide along their faces, because nothing lets them close squarely. */
  readonly sliding: readonly string[];
  /** The joints that this union closes, in source order. */
  readonly work: readonly JointWork[];
  /** Path of the group of the source that this is, if it is one. */
  readonly group: string | null;
}

export interface JointWork {
  readonly joint: Joint;
  /** Driven once both bodies are together; what travels in its part is not among them. */
  readonly drives: readonly Drive[];
}

export interface Drive extends Reached {
  readonly fastener: Fastener;
}
