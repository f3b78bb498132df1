/** What a piece is like, as far as advice depends on it. Lengths in mm, masses in kg. */
import type { Build, BuiltMotion } from "../../build.ts";
import { around } from "../checks/standing/weight-and-feet.ts";

export interface Traits {
  readonly build: Build;
  /** Has hardware of one of these kinds. */
  readonly has: (...kinds: readonly string[]) => boolean;
  /** Whether one of these joints is in it. */
  readonly joined: (...methods: readonly string[]) => boolean;
  readonly doors: boolean;
  readonly drawers: boolean;
  /** Lids and flaps: what turns about a level line, or is held by a lid support. */
  readonly lids: boolean;
  /** Holds things: has doors, drawers, lids or shelves. */
  readonly stores: boolean;
  /** Screwed to a wall, and so off the floor or not. */
  readonly onWall: boolean;
  /** Of solid wood, at least in part. */
  readonly solid: boolean;
  /** A panel of solid wood that is free in its frame. */
  readonly floats: boolean;
  readonly high: number;
  readonly mass: number;
}

export function traitsOf(build: Build): Traits {
  const { design, hardware, motions, joints, parts } = build;
  const kinds = new Set(hardware.map(({ item }) => item.kind));
  const methods: ReadonlySet<string> = new Set(joints.map(({ method }) => method));
  const has = (...some: readonly string[]): boolean => some.some((kind) => kinds.has(kind));
  const joined = (...some: readonly string[]): boolean => some.some((method) => methods.has(method));
  const swings = motions.filter(({ kind }) => kind === "swing");
  const doors = swings.some(upright);
  const drawers = motions.some(({ kind }) => kind === "slide");
  const lids = swings.some((each) => !upright(each)) || has("lid support");
  const solidStock = new Set(design.stock.filter(({ movement }) => movement).map(({ name }) => name));
  const bounds = parts.length === 0 ? null : around(parts.map(({ solid }) => solid));
  return {
    ...{ build, has, joined, doors, drawers, lids },
    stores: doors || drawers || lids || joined("shelf pins"),
    onWall: has("wall screw"),
    solid: parts.some(({ stock }) => solidStock.has(stock)),
    floats: joints.some(
      ({ kind, parts: [panel] }) =>
        kind === "floating" && parts.some(({ id, stock }) => id === panel && solidStock.has(stock)),
    ),
    high: bounds === null ? 0 : bounds.high[2] - bounds.low[2],
    mass: parts.reduce((so, { mass }) => so + mass, 0),
  };
}

/** A door turns about an upright line. */
function upright({ poses }: BuiltMotion): boolean {
  const [, way] = poses.at(-1)?.rotate.about ?? [
    [0, 0, 0],
    [0, 0, 1],
  ];
  const [x, y, z] = way as readonly [number, number, number];
  return z * z > x * x + y * y;
}
